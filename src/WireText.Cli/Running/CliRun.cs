using WireText.Cli.Hosting;

namespace WireText.Cli.Running;

/// <summary>One run of the program from its first byte to its exit code: what goes wrong on the way is one line on standard error.</summary>
internal static class CliRun
{
    public static int Of(ICliHost host, Func<CliContext, int> run)
    {
        var context = new CliContext(host);
        try
        {
            var code = ToItsEnd(context, run);
            context.Data.Flush();
            context.Error.Flush();
            return code;
        }
        catch (IOException e)
        {
            return TellTrouble(context, $"cannot write the output: {e.Message}");
        }
        catch (UnauthorizedAccessException)
        {
            return TellTrouble(context, "cannot write the output: it is closed");
        }
        catch (Exception e) when (MissingLibrary(e) is { } missing)
        {
            return TellTrouble(
                context,
                $"a library of the program is missing: keep all files that came with it in one folder ({FirstSentence(missing)})"
            );
        }
        catch (Exception e)
        {
            return TellTrouble(context, $"this is a fault of the program itself: {e.GetType().Name}: {e.Message}");
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
            return TellTrouble(context, e.Message);
        }
    }

    /// <summary>The cause of a trouble, where it is a library beside the program that cannot be loaded.</summary>
    private static DllNotFoundException? MissingLibrary(Exception? trouble) =>
        trouble as DllNotFoundException ?? (trouble is null ? null : MissingLibrary(trouble.InnerException));

    private static string FirstSentence(Exception trouble) => trouble.Message.Split(". ")[0];

    private static int TellTrouble(CliContext context, string message)
    {
        try
        {
            context.Tell(message);
            context.Error.Flush();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // There is nobody to tell; the exit code says it.
        }

        return ExitCode.CouldNot;
    }
}
