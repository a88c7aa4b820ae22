using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Running;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext help</c></summary>
internal sealed class HelpCommand : Command
{
    private const string HelpOption = "--help";

    private readonly Argument<string?> name = new("COMMAND")
    {
        Description = "The command that is asked about; without it, all of them",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public HelpCommand(CliContext context)
        : base(
            "help",
            """
            Says how the program is used, or one of its commands.

            Example: wiretext help draw
            """
        )
    {
        Add(name);
        name.CompletionSources.Add(_ =>
            Parents.OfType<Command>().SelectMany(root => root.Subcommands).Select(c => c.Name)
        );
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var root = (RootCommand)parsed.RootCommandResult.Command;
        var command = parsed.GetValue(name);
        if (command is null)
        {
            return CommandLine.Invoke(root, [HelpOption], context);
        }

        // The library shows its own help whatever stands before the option.
        string[] asked = root.Subcommands.Any(one => one.Name == command) ? [command, HelpOption] : [command];
        return CommandLine.Invoke(root, asked, context);
    }
}
