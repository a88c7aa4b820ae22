using System.CommandLine;
using System.Text;
using WireText.Cli.Commands;
using WireText.Cli.Hosting;
using WireText.Text;

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
          wiretext positions guitar.wiring
          wiretext draw guitar.wiring -o guitar.png
          wiretext parts lever-3way
          wiretext explain floating-ground
          wiretext format guitar.wiring
          wiretext response guitar.wiring --sweep tone -o tone.svg
          wiretext export guitar.wiring --spice -o guitar.cir
        """;

    /// <summary>What is told to the parser of arguments: <c>@</c> starts a name like any other.</summary>
    private static readonly ParserConfiguration Parsing = new() { ResponseFileTokenReplacer = null };

    public static int Run(string[] args, ICliHost host)
    {
        // Not disposed: that would try once more to write what a full disk refused.
        var output = WriterTo(host.Output);
        var error = WriterTo(host.Error);
        try
        {
            var code = RunToItsEnd(args, new CliContext(host, output, error));
            output.Flush();
            error.Flush();
            return code;
        }
        catch (IOException e)
        {
            return TellTrouble(error, $"cannot write the output: {e.Message}");
        }
    }

    private static int RunToItsEnd(string[] args, CliContext context)
    {
        try
        {
            return Run(args, context);
        }
        catch (CannotException e)
        {
            return TellTrouble(context.Error, e.Message);
        }
    }

    private static int Run(string[] args, CliContext context)
    {
        if (args is ["--version"])
        {
            context.Output.WriteLine(ProgramVersion.Text);
            return ExitCode.Right;
        }

        var parsed = Commands(context).Parse(args, Parsing);
        if (parsed.Errors.Count > 0)
        {
            foreach (var problem in Problems(parsed))
            {
                context.Error.WriteLine($"wiretext: {problem}");
            }

            context.Error.WriteLine("wiretext --help shows how it is used");
            return ExitCode.CouldNot;
        }

        return parsed.Invoke(
            new InvocationConfiguration
            {
                Output = context.Output,
                Error = context.Error,
                EnableDefaultExceptionHandler = false,
            }
        );
    }

    private static StreamWriter WriterTo(Stream stream) => new(stream, new UTF8Encoding(false)) { NewLine = "\n" };

    private static RootCommand Commands(CliContext context)
    {
        var root = new RootCommand(About)
        {
            CheckCommand.Create(context),
            PositionsCommand.Create(context),
            DrawCommand.Create(context),
            ArrangeCommand.Create(context),
            PartsCommand.Create(context),
            ExplainCommand.Create(context),
            FormatCommand.Create(context),
            ResponseCommand.Create(context),
            ExportCommand.Create(context),
        };
        root.Directives.Clear();
        return root;
    }

    private static IEnumerable<string> Problems(ParseResult parsed)
    {
        // A mistyped command would be two problems: no command, and a word too many.
        if (parsed.CommandResult.Command is RootCommand root && parsed.UnmatchedTokens is [var word, ..])
        {
            var near = DidYouMean.Nearest(word, root.Subcommands.Select(command => command.Name));
            return [$"no command is called '{word}'" + (near is null ? "" : $"; did you mean '{near}'?")];
        }

        return parsed.Errors.Select(e => OneLine(e.Message)).Distinct(StringComparer.Ordinal);
    }

    /// <summary>The library writes a choice of words as lines of their own.</summary>
    private static string OneLine(string message) =>
        string.Join(' ', message.Split(['\n', '\r', '\t', ' '], StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');

    private static int TellTrouble(TextWriter error, string message)
    {
        try
        {
            error.WriteLine($"wiretext: {message}");
            error.Flush();
        }
        catch (IOException)
        {
            // There is nobody to tell; the exit code says it.
        }

        return ExitCode.CouldNot;
    }
}
