using System.CommandLine;
using System.Reflection;
using System.Text;

namespace WireText.Cli;

/// <summary>The command line: arguments become one call to the core, and what comes back is shown.</summary>
public static class CliProgram
{
    private const string About = """
        Reads guitar wiring written as text, checks it and draws it.

        Exit code: 0 right, 1 findings that are errors (with --strict warnings too), 2 it could not be done.
        A file named - is standard input.

        Examples:
          wiretext check guitar.wiring
          wiretext draw guitar.wiring -o guitar.png
          wiretext parts lever-3way
          wiretext explain floating-ground
          wiretext format guitar.wiring
        """;

    public static int Run(string[] args, ICliHost host)
    {
        using var output = new StreamWriter(host.Output, new UTF8Encoding(false)) { NewLine = "\n" };
        using var error = new StreamWriter(host.Error, new UTF8Encoding(false)) { NewLine = "\n" };
        var context = new CliContext(host, output, error);
        var root = new RootCommand(About)
        {
            CheckCommand.Create(context),
            DrawCommand.Create(context),
            PartsCommand.Create(context),
            ExplainCommand.Create(context),
            FormatCommand.Create(context),
        };
        try
        {
            if (args is ["--version"])
            {
                output.WriteLine(Version);
                return ExitCode.Right;
            }

            var parsed = root.Parse(args);
            if (parsed.Errors.Count > 0)
            {
                foreach (var problem in parsed.Errors.Select(e => e.Message).Distinct(StringComparer.Ordinal))
                {
                    error.WriteLine($"wiretext: {problem.TrimEnd('.')}");
                }

                error.WriteLine("wiretext --help shows how it is used");
                return ExitCode.CouldNot;
            }

            return parsed.Invoke(
                new InvocationConfiguration
                {
                    Output = output,
                    Error = error,
                    EnableDefaultExceptionHandler = false,
                }
            );
        }
        catch (CannotException e)
        {
            error.WriteLine($"wiretext: {e.Message}");
            return ExitCode.CouldNot;
        }
        catch (IOException e)
        {
            // The reader of a pipe went away, or a disk is full: there may be nobody to tell.
            error.WriteLine($"wiretext: {e.Message}");
            return ExitCode.CouldNot;
        }
    }

    private static string Version =>
        typeof(CliProgram).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion
        ?? "0";
}

/// <summary>What every command writes to.</summary>
internal sealed record CliContext(ICliHost Host, TextWriter Output, TextWriter Error)
{
    /// <summary>Colour only on a terminal, and not when NO_COLOR says otherwise.</summary>
    public bool InColour => Host.IsTerminal && string.IsNullOrEmpty(Host.Variable("NO_COLOR"));
}
