using System.CommandLine;
using WireText.Checks;
using WireText.Cli.Hosting;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext explain</c></summary>
internal static class ExplainCommand
{
    public static Command Create(CliContext context)
    {
        var check = new Argument<string>("CHECK") { Description = "The name in brackets behind a finding" };
        var command = new Command(
            "explain",
            """
            Says why a finding matters at the bench and how to mend it.

            Example: wiretext explain floating-ground
            """
        )
        {
            check,
        };
        command.SetAction(parsed => Run(context, parsed.GetValue(check)!));
        return command;
    }

    private static int Run(CliContext context, string id)
    {
        if (FindingCatalogue.Find(id) is { } description)
        {
            context.Output.Write(CheckPage.Write(description));
            return ExitCode.Right;
        }

        var near = DidYouMean.Nearest(id, FindingCatalogue.All.Select(d => d.Id));
        throw new CannotException($"no finding is called '{id}'" + (near is null ? "" : $"; did you mean '{near}'?"));
    }
}
