using System.Globalization;

namespace WireText.Cli.Running;

/// <summary>Says on a terminal how many files are done. Where nobody looks on, it says nothing.</summary>
internal sealed class Progress(CliContext context, int count)
{
    private readonly bool isShown = count > 1 && context.ShowsProgress;
    private readonly Lock oneAtATime = new();
    private int done;

    public void CountOne()
    {
        if (!isShown)
        {
            return;
        }

        lock (oneAtATime)
        {
            done++;
            context.Error.EraseLine();
            context.Error.Write(string.Create(CultureInfo.InvariantCulture, $"{done} of {count} files checked"));
            context.Error.Flush();
        }
    }

    public void Clear()
    {
        if (isShown)
        {
            context.Error.EraseLine();
            context.Error.Flush();
        }
    }
}
