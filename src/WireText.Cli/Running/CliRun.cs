using System.Text;
using WireText.Cli.Hosting;

namespace WireText.Cli.Running;

/// <summary>One run of the program from its first byte to its exit code: what goes wrong on the way is one line on standard error.</summary>
internal static class CliRun
{
    public static int Of(ICliHost host, Func<CliContext, int> run)
    {
        // Not disposed: that would try once more to write what a full disk refused.
        var output = WriterTo(host.Output);
        var error = WriterTo(host.Error);
        try
        {
            var code = ToItsEnd(new CliContext(host, output, error), run);
            output.Flush();
            error.Flush();
            return code;
        }
        catch (IOException e)
        {
            return TellTrouble(error, $"cannot write the output: {e.Message}");
        }
        catch (UnauthorizedAccessException)
        {
            return TellTrouble(error, "cannot write the output: it is closed");
        }
        catch (Exception e)
        {
            return TellTrouble(error, $"this is a fault of the program itself: {e.GetType().Name}: {e.Message}");
        }
    }

    private static int ToItsEnd(CliContext context, Func<CliContext, int> run)
    {
        try
        {
            return run(context);
        }
        catch (CannotException e)
        {
            return TellTrouble(context.Error, e.Message);
        }
    }

    private static StreamWriter WriterTo(Stream stream) => new(stream, new UTF8Encoding(false)) { NewLine = "\n" };

    private static int TellTrouble(TextWriter error, string message)
    {
        try
        {
            error.WriteLine($"wiretext: {message}");
            error.Flush();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // There is nobody to tell; the exit code says it.
        }

        return ExitCode.CouldNot;
    }
}
