using System.Globalization;
using System.Text;
using WireText.Checks;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;
using WireText.Proposing;
using WireText.Testing;
using WireText.Tests.Output;
using WireText.Text;

namespace WireText.Tests.Proposing;

/// <summary>Finds the wires of every case once: each proposal is right, has no joint too many, and the page says how it was found.</summary>
public class ProposalsPageTests
{
    private static readonly Lazy<IReadOnlyList<Case>> All = new(() => Every.Of(Cases()));

    public static TheoryData<string> Names => Rows.Of(Every.Of(Cases()).Select(one => one.Name));

    public static TheoryData<string> OwnNames => Rows.Of(Every.Of(ProposalCases.Own).Select(one => one.Name));

    /// <summary>The completed text, judged from its beginning: no finding, every claim proven, and the lines stand as <c>format</c> sets them.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Proposal_Completed_IsRight(string name)
    {
        var one = All.Value.Single(other => other.Name == name);
        var (text, proposal) = (one.Text, one.Proposal.Value);
        Assert.Equal(ProposalOutcome.Found, proposal.Outcome);

        var fresh = Compilation.Of(new SourceText("fresh.wiring", proposal.Completed!.Content), NoSources.Instance);
        Assert.Empty(fresh.Findings.Where(finding => finding.Severity >= Severity.Warning).Select(f => f.Message));
        Every.Item(fresh.Circuit!.Expectations, claim => Assert.Null(fresh.Study!.JudgeOf(claim).Refute(claim)));
        Assert.Empty(fresh.Circuit.Open);
        Assert.DoesNotContain("find ", proposal.Completed.Content, StringComparison.Ordinal);
        Assert.True(one.ByHand is null || proposal.Joints <= one.ByHand, $"{proposal.Joints} joints");
        Assert.Equal(proposal.Joints, JointsIn(fresh.Circuit, text));
    }

    /// <summary>No joint is idle: without any one of its wires some claim fails, or a check finds something.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Proposal_WithoutAnyOneWire_IsWrong(string name)
    {
        var proposal = All.Value.Single(other => other.Name == name).Proposal.Value;
        var whole = Compilation.Of(proposal.Completed!, NoSources.Instance);
        var first = whole.Circuit!.Wires.Where(wire => wire.DeclaredAt.Position.Line > HeadingLine(proposal)).ToList();

        Every.Item(
            first,
            wire =>
            {
                var without = whole.Circuit.Without(wire.Index);
                var study = whole.Study!.Rewired(without);
                Assert.False(
                    without.Expectations.All(claim => study.JudgeOf(claim).Holds(claim, mayNameTraces: true))
                        && Checker
                            .Examine(without, study, CheckRequest.Usual)
                            .Findings.All(finding => finding.Severity < Severity.Warning),
                    wire.Id
                );
            }
        );
    }

    /// <summary>ngspice as referee: every gain of every coil in every situation at rest.</summary>
    [SkippableTheory]
    [MemberData(nameof(OwnNames))]
    public void Gains_OfAProposal_AreThoseOfNgspice(string name)
    {
        Ngspice.SkipWhereAbsent();
        var network = Network.Of(
            Compilation
                .Of(All.Value.Single(one => one.Name == name).Proposal.Value.Completed!, NoSources.Instance)
                .Circuit!
        )!;
        var states = Every.Of(
            SituationTree
                .Of(network)
                .Situations.Where(situation => !situation.IsShort)
                .Select(situation => situation.State)
                .Where(state => !LiveNetwork.Of(network, state).IsShort)
        );
        Ngspice.Deck[] decks = [.. states.Select(state => SpiceComparison.DeckOf(network, state))];
        var answers = Ngspice.Run(decks);

        var worst = states
            .Select((state, i) => SpiceComparison.Compare(network, state, decks[i], answers[i]))
            .Aggregate((one, other) => one.With(other));
        Assert.True(worst.Gains > 0, "there is something to compare");
        Assert.True(worst.Worst <= SpiceComparison.Tolerance, $"{worst.Where}: {worst.Worst}");
    }

    [Fact]
    public void Page_ListsEveryCase()
    {
        var text = new StringBuilder(
            """
            # Wires that were found

            What `wiretext propose` finds for circuits of many kinds, and for the examples with the wires on some controls taken out and asked
            for again. By hand: the joints of the example, or of the trade's usual layout (from memory). Proven: no harness has fewer, with one net
            of lugs alone or none. A test writes this page; it judges each completed text from its beginning, and that no wire is idle.

            | case | nets | states | by hand | found | proven | joinings judged | steps |
            | --- | --- | --- | --- | --- | --- | --- | --- |

            """
        );
        foreach (var one in All.Value)
        {
            var proposal = one.Proposal.Value;
            text.Append(
                CultureInfo.InvariantCulture,
                $"| {one.Name} | {proposal.Nets} | {proposal.States} | {one.ByHand?.ToString(CultureInfo.InvariantCulture) ?? "–"} | {proposal.Joints} | {(proposal.Outcome == ProposalOutcome.Found ? "yes" : "no")} | {proposal.Judged:N0} | {proposal.Nodes:N0} |\n"
            );
        }

        AcceptedFile.Check("docs/proposals.md", text.ToString());
    }

    private static int HeadingLine(Proposal proposal) =>
        proposal
            .Completed!.PositionOf(
                proposal.Completed.Content.IndexOf("# wires that were found", StringComparison.Ordinal)
            )
            .Line;

    /// <summary>Stretches that the text lacked, as <c>check</c> counts them; of a splice in the air each lead less one.</summary>
    private static int JointsIn(Circuit circuit, string text)
    {
        var before = Compilation.Of(new SourceText("before.wiring", text), NoSources.Instance).Circuit!;
        var added = circuit.Wires.Length - before.Wires.Length;
        return added - (circuit.Parts.Length - before.Parts.Length);
    }

    private static IEnumerable<Case> Cases()
    {
        foreach (var (name, text, byHand) in ProposalCases.Own)
        {
            yield return new Case(name, text, byHand);
        }

        foreach (var (example, find) in ProposalCases.OfExamples)
        {
            yield return new Case(
                $"example {example}: `find {find}`",
                OpenedWiring.OfExample(example, find),
                OpenedWiring.JointsByHand(example, find)
            );
        }
    }

    private sealed record Case(string Name, string Text, int? ByHand)
    {
        private readonly Lazy<Compilation> compiled = new(() =>
            Compilation.Of(new SourceText("open.wiring", Text), NoSources.Instance)
        );

        public Lazy<Proposal> Proposal => field ??= new(() => Proposer.Of(compiled.Value, new ProposalRequest()));
    }
}
