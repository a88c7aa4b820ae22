using System.CommandLine;
using WireText.Cli.Describing;
using WireText.Cli.Hosting;
using WireText.Cli.Running;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext man</c></summary>
internal sealed class ManualCommand : Command
{
    public ManualCommand(CliContext context)
        : base(
            "man",
            """
            Writes the page of the program for man, in troff: wiretext man > wiretext.1, then man -l wiretext.1.

            Example: wiretext man
            """
        ) =>
        SetAction(parsed =>
        {
            var program = ProgramShape.Of((RootCommand)parsed.RootCommandResult.Command);
            context.Data.Write(ManualPage.Write(program, ProgramVersion.Text));
            return ExitCode.Right;
        });
}
