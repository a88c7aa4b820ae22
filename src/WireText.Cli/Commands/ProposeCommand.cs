using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Output;
using WireText.Proposing;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext propose</c></summary>
internal sealed class ProposeCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly ChoiceOption<bool> format = new("--format", "How it is written", ("text", false), ("json", true));
    private readonly Option<bool> write = new("--write")
    {
        Description = "Put the wires into FILE, below its last wire, in place of find",
    };
    private readonly Option<bool> all = new("--all")
    {
        Description = "Also print others of as few joints that join other nets in some position, eight at most",
    };
    private readonly WholeNumberOption joints = new(
        "--most-joints",
        ProposalRequest.MostAsked,
        "N",
        "Look for no harness with more joints"
    );
    private readonly WholeNumberOption effort = new(
        "--effort",
        ProposalRequest.MostEffort,
        "N",
        "How many times the usual work is done before the search gives up"
    );
    private readonly PartsOption parts = new();

    public ProposeCommand(CliContext context)
        : base(
            "propose",
            """
            Finds the wires on the lugs that a find line leaves open: those that make every expect line true, with the
            fewest joints. It prints them with what every position then does, and says whether fewer can do.

            Exit code: 0 found and proven, 1 impossible, or a bound was reached, 2 it could not be done.

            Example: wiretext propose guitar.wiring --write
            """
        )
    {
        Add(file);
        Add(format);
        Add(write);
        Add(all);
        Add(joints);
        Add(effort);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var (name, isWritten) = (parsed.GetRequiredValue(file), parsed.GetValue(write));
        if (isWritten && name == StandardStream.Name)
        {
            throw new CannotException("standard input cannot be written to; leave --write out, and paste the lines");
        }

        var request = new ProposalRequest(joints.In(parsed), effort.In(parsed) ?? 1);
        var read = ReadWiring.From(name, parts.In(parsed, context.Sources), context);
        read.Tell([.. read.Compiled.Findings.Where(finding => finding.Severity > Text.Severity.Note)]);
        var proposal = Proposer.Of(read.Compiled, request);
        if (proposal.Outcome == ProposalOutcome.Refused)
        {
            throw new CannotException(proposal.Why!);
        }

        if (format.In(parsed))
        {
            context.Data.Write(ProposalJson.Write(proposal));
        }
        else
        {
            context.Output.Write(ProposalText.Write(proposal, parsed.GetValue(all)));
        }

        if (isWritten && proposal.Completed is { } completed)
        {
            context.Results.Replace(read.Source, completed.Content);
        }

        return proposal.Outcome == ProposalOutcome.Found ? ExitCode.Right : ExitCode.Findings;
    }
}
