using System.CommandLine;
using WireText.Cli.Describing;
using WireText.Cli.Hosting;
using WireText.Cli.Running;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext completions</c></summary>
internal sealed class CompletionsCommand : Command
{
    private static readonly (string Shell, Func<ProgramShape, string> Write)[] Scripts =
    [
        ("bash", BashScript.Write),
        ("zsh", ZshScript.Write),
        ("fish", FishScript.Write),
    ];

    private readonly Argument<string> shell = new("SHELL") { Description = "bash, zsh or fish" };

    public CompletionsCommand(CliContext context)
        : base(
            "completions",
            """
            Writes the script with which a shell completes commands, options and what stands behind them.

            Where it goes:
              source <(wiretext completions bash)
              wiretext completions zsh > _wiretext   (in a folder of fpath)
              wiretext completions fish > ~/.config/fish/completions/wiretext.fish

            Example: wiretext completions bash
            """
        )
    {
        shell.AcceptOnlyFromAmong([.. Scripts.Select(script => script.Shell)]);
        Add(shell);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var asked = parsed.GetRequiredValue(shell);
        var program = ProgramShape.Of((RootCommand)parsed.RootCommandResult.Command);
        context.Data.Write(Array.Find(Scripts, script => script.Shell == asked).Write(program));
        return ExitCode.Right;
    }
}
