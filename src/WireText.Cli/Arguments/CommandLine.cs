using System.CommandLine;
using WireText.Cli.Hosting;
using WireText.Cli.Running;

namespace WireText.Cli.Arguments;

/// <summary>Reads the arguments and runs the command that they name; what is wrong with them is told in plain words.</summary>
internal static class CommandLine
{
    /// <summary>What is told to the parser of arguments: <c>@</c> starts a name like any other.</summary>
    private static readonly ParserConfiguration Parsing = new() { ResponseFileTokenReplacer = null };

    public static int Invoke(RootCommand root, string[] args, CliContext context)
    {
        var parsed = root.Parse(args, Parsing);
        if (parsed.Errors.Count > 0)
        {
            foreach (var problem in Problems(parsed))
            {
                context.Tell(problem);
            }

            context.Error.WriteLine("wiretext --help shows how it is used");
            return ExitCode.CouldNot;
        }

        // The library writes its own help alone, and breaks its lines itself.
        return parsed.Invoke(
            new InvocationConfiguration
            {
                Output = context.Data,
                Error = context.Error,
                EnableDefaultExceptionHandler = false,
            }
        );
    }

    private static IEnumerable<string> Problems(ParseResult parsed)
    {
        // A mistyped command would be two problems: no command, and a word too many.
        if (parsed.CommandResult.Command is RootCommand root && parsed.UnmatchedTokens is [var word, ..])
        {
            var offer = Offer.Nearest(word, root.Subcommands.Select(command => command.Name));
            return [$"no command is called '{word}'{offer}"];
        }

        return parsed.Errors.Select(e => OneLine(e.Message)).Distinct(StringComparer.Ordinal);
    }

    /// <summary>The library writes a choice of words as lines of their own.</summary>
    private static string OneLine(string message) =>
        string.Join(' ', message.Split(['\n', '\r', '\t', ' '], StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');
}
