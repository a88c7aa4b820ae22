using System.Globalization;

namespace WireText.Cli.Running;

/// <summary>Says on a terminal how many files are done. Where nobody looks on, it says nothing.</summary>
internal sealed class Progress(CliContext context, int count)
{
    /// <summary>Back to the start of the line, and the rest of it empty.</summary>
    private const string EmptyLine = "\r\u001b[K";

    private readonly bool isShown = count > 1 && context.Host.IsErrorTerminal;
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
            context.Error.Write(
                string.Create(CultureInfo.InvariantCulture, $"{EmptyLine}{done} of {count} files checked")
            );
            context.Error.Flush();
        }
    }

    public void Clear()
    {
        if (isShown)
        {
            context.Error.Write(EmptyLine);
            context.Error.Flush();
        }
    }
}
