using System.Globalization;
using WireText.Circuits;
using WireText.Proposing;
using WireText.Text;

namespace WireText;

/// <summary>
/// Finds the wires that a text leaves open: those that make every claim true with the fewest joints, judged at the end as any other
/// text is. See <c>docs/propose.md</c>.
/// </summary>
public static class Proposer
{
    /// <summary>Rounds in which one joint more is allowed because no harness with fewer passes the checks. Chosen.</summary>
    private const int MostRounds = 4;

    public static Proposal Of(Compilation compiled, ProposalRequest request, CancellationToken cancellation = default)
    {
        if (WhyNot(compiled) is { } refused)
        {
            return Refused(refused);
        }

        var circuit = compiled.Circuit!;
        var (problem, why) = HarnessProblem.Of(circuit);
        if (problem is null)
        {
            return Refused(why!);
        }

        var judge = new JoiningJudge(problem, compiled.Study!);
        var budget = new HarnessBudget(request);
        var search = new HarnessSearch(problem, judge, budget, cancellation);
        var atLeast = 0;
        var trials = new HarnessTrials(compiled, problem, judge, cancellation);
        for (var round = 0; round < MostRounds; round++)
        {
            var found = HarnessLeast.Of(search, atLeast, request.MostJoints);
            if (found.Count == 0)
            {
                break;
            }

            if (trials.Best(found) is { } best)
            {
                return best with
                {
                    Outcome = budget.IsSpent ? ProposalOutcome.Undecided : ProposalOutcome.Found,
                    AtLeast = budget.IsSpent ? Math.Max(atLeast, search.Bound) : best.Joints,
                    Judged = judge.Judged,
                    Nodes = budget.Nodes,
                };
            }

            atLeast = found[0].Joints + 1;
        }

        return budget.IsSpent || atLeast > 0
            ? new Proposal(ProposalOutcome.Undecided, judge.Judged, budget.Nodes)
            {
                AtLeast = Math.Max(atLeast, search.Bound),
                Why = trials.Found is { } mistake
                    ? string.Create(
                        CultureInfo.InvariantCulture,
                        $"harnesses with {atLeast - 1} joints make every claim true, but check finds something in each that was tried, such as: {mistake}"
                    )
                    : null,
            }
            : Explained(compiled, problem, judge, search, request, cancellation);
    }

    /// <summary>Why nothing can be looked for; null when it can.</summary>
    private static string? WhyNot(Compilation compiled)
    {
        if (compiled.ReadingFindings.Any(finding => finding.Severity == Severity.Error))
        {
            return "mend the lines that cannot be read first";
        }

        if (compiled.Circuit is not { } circuit || compiled.Study is null)
        {
            return "the circuit has no output jack to listen at";
        }

        return circuit.Open.IsEmpty ? "nothing is to be found: name a control, such as: find sel"
            : circuit.Open.FirstOrDefault(open => circuit.Controls[open.Control].IsPlug) is { } plug
                ? $"'{circuit.Controls[plug.Control].Name}' is a plug: name a switch, a pull or a button"
            : circuit.Open.Any(open => open.DeclaredAt.Source != compiled.Source)
                ? "the line find stands in another file: write it here"
            : compiled.Report.Findings.Any(finding => finding.Severity == Severity.Error)
                ? "mend what check finds first"
            : circuit.Expectations.IsEmpty ? "nothing is claimed: say with expect what each position does"
            : null;
    }

    private static Proposal Refused(string why) => new(ProposalOutcome.Refused, 0, 0) { Why = why };

    private static Proposal Explained(
        Compilation compiled,
        HarnessProblem problem,
        JoiningJudge judge,
        HarnessSearch search,
        ProposalRequest request,
        CancellationToken cancellation
    )
    {
        var budget = new HarnessBudget(request);
        var hopeless = search.Hopeless.Select(state => StateText.OfStated(problem.Circuit, state.State)).ToList();
        var excluding =
            request.MostJoints is not null || hopeless.Count > 0
                ? []
                : HarnessConflict.Of(problem, judge, budget, cancellation) ?? [];
        var others =
            request.MostJoints is null && hopeless.Count == 0
                ? OtherSwitches.Of(compiled, request, cancellation)
                : null;
        return new Proposal(ProposalOutcome.Impossible, judge.Judged, budget.Nodes)
        {
            States = problem.States.Length,
            Nets = problem.Nets.Length,
            Why =
                hopeless.Count > 0
                    ? $"no joining at all does what is claimed at {hopeless[0]}: what is soldered already, or a value, stands in the way"
                : request.MostJoints is { } most ? $"not with {most} joints"
                : null,
            Excluding = excluding,
            WouldDo = others ?? [],
            HasTriedOthers = others is not null,
        };
    }
}
