using System.CommandLine;
using WireText.Checks;
using WireText.Cli.Hosting;
using WireText.Cli.Running;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext explain</c></summary>
internal sealed class ExplainCommand : Command
{
    private readonly Argument<string?> check = new("CHECK")
    {
        Description = "The name in brackets behind a finding",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public ExplainCommand(CliContext context)
        : base(
            "explain",
            """
            Says why a finding matters at the bench and how to mend it; without a name, lists them all.

            Example: wiretext explain floating-ground
            """
        )
    {
        check.CompletionSources.Add(_ => FindingCatalogue.All.Select(description => description.Id));
        Add(check);
        SetAction(parsed => Run(context, parsed.GetValue(check)));
    }

    private static int Run(CliContext context, string? id)
    {
        if (id is null)
        {
            context.Output.Write(CheckPage.WriteList(FindingCatalogue.All));
            return ExitCode.Right;
        }

        if (FindingCatalogue.Find(id) is { } description)
        {
            context.Output.Write(CheckPage.Write(description));
            return ExitCode.Right;
        }

        var offer = Offer.Nearest(id, FindingCatalogue.All.Select(d => d.Id));
        throw new CannotException($"no finding is called '{id}'{offer}");
    }
}
