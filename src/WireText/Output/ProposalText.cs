using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Proposing;
using WireText.Syntax;

namespace WireText.Output;

/// <summary>Writes what a search for wires came to, for people.</summary>
public static class ProposalText
{
    /// <summary>Other harnesses that are printed. Chosen: more is no choice.</summary>
    private const int MostOthers = 8;

    /// <param name="withOthers">Also the lines of harnesses that cost the same and do something else somewhere.</param>
    public static string Write(Proposal proposal, bool withOthers)
    {
        var text = new StringBuilder();
        if (proposal.Study is { } study)
        {
            AppendLines(text, proposal.Lines);
            text.Append('\n').Append(PositionText.Write(study.PositionsAtJacks));
            if (DialSheet.Of(study) is { } dials)
            {
                text.Append("\nWhat each dial does there; - is nothing:\n\n");
                TextTable.Write(text, dials.Heading, dials.Rows, dials.Heading.Length - 1, below: []);
            }
        }

        TextTable.WriteRemarks(text, Remarks(proposal));
        if (withOthers)
        {
            foreach (var other in proposal.Others.Take(MostOthers))
            {
                text.Append('\n');
                AppendLines(text, other);
            }
        }

        return text.ToString();
    }

    /// <summary>The proof, or why there is none.</summary>
    internal static ImmutableArray<string> Remarks(Proposal proposal) =>
        [.. Sentences(proposal), .. Alike(proposal), Work(proposal)];

    private static IEnumerable<string> Sentences(Proposal proposal)
    {
        switch (proposal.Outcome)
        {
            case ProposalOutcome.Found:
                yield return $"{Joints(proposal.Joints)}; every claim is proven, in {States(proposal.States)}, and nothing is found by check";
                yield return "proven: no harness has fewer, with one net of lugs alone or none";
                break;
            case ProposalOutcome.Undecided when proposal.Completed is not null:
                yield return $"{Joints(proposal.Joints)}; every claim is proven, in {States(proposal.States)}, and nothing is found by check";
                yield return $"not proven: a bound was reached; at least {Joints(proposal.AtLeast)} are needed; --effort looks longer";
                break;
            case ProposalOutcome.Undecided when proposal.Why is null:
                yield return $"nothing was found before a bound was reached; at least {Joints(proposal.AtLeast)} are needed; --effort looks longer";
                break;
            case ProposalOutcome.Impossible:
                yield return "impossible: no wires on the open lugs make every claim true";
                break;
        }

        if (proposal.Why is { } why)
        {
            yield return why;
        }

        if (!proposal.Excluding.IsEmpty)
        {
            yield return proposal.Excluding is [var only]
                ? $"{only} cannot be done at all; the other positions can stay"
                : $"{string.Join(", ", proposal.Excluding)} exclude each other; without any one of them it can be done";
        }

        if (proposal.HasTriedOthers)
        {
            yield return proposal.WouldDo.IsEmpty
                ? "no standard switch with as many positions would do"
                : $"would do: {string.Join(", ", proposal.WouldDo.Select(one => $"{one.Model} ({Joints(one.Joints)})"))}";
        }
    }

    private static IEnumerable<string> Alike(Proposal proposal) =>
        proposal.Alike <= 1
            ? []
            :
            [
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{proposal.Alike} harnesses have so few joints; {Differing(proposal)}"
                ),
            ];

    private static string Differing(Proposal proposal) =>
        proposal.Others.Length switch
        {
            0 => "all of them join the same in every position",
            1 => "one other way joins other nets in some position (--all shows it)",
            var ways => string.Create(
                CultureInfo.InvariantCulture,
                $"{ways} other ways join other nets in some position (--all shows them)"
            ),
        };

    private static string Work(Proposal proposal) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{proposal.Judged} joinings were judged, in {proposal.Nodes} steps"
        );

    private static string Joints(int count) => Counted(count, "joint");

    private static string States(int count) => Counted(count, "state");

    private static string Counted(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    private static void AppendLines(StringBuilder text, ImmutableArray<string> lines)
    {
        foreach (var line in WiringColumns.Of(lines))
        {
            text.Append(line).Append('\n');
        }
    }
}
