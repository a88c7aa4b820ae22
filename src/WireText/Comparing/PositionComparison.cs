using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;

namespace WireText.Comparing;

/// <summary>What one position does before and after.</summary>
/// <param name="State">Of the later circuit.</param>
/// <param name="Before">Of the earlier, with what is called the same there in the same position and the rest at rest; levels over one coil.</param>
/// <param name="After">Of the later.</param>
public sealed record PositionChange(State State, PositionRow Before, PositionRow After);

/// <summary>What the differences of two circuits do, position by position.</summary>
/// <param name="Before">The earlier circuit with its parts called as in the later.</param>
/// <param name="Rows">The positions of the later circuit, and those of the earlier that it tells apart no more.</param>
public sealed record PositionComparison(Circuit Before, Circuit After, ImmutableArray<PositionChange> Rows)
{
    /// <summary>True where it matters which jack a row is about.</summary>
    public bool HasJacks => Rows.Select(row => row.After.Jack).Distinct().Skip(1).Any();

    /// <summary>Null where one of the two has no output jack. Every jack that both have and one of them uses is listened at.</summary>
    public static PositionComparison? Of(CircuitComparison circuits, CancellationToken cancellation = default)
    {
        var before = AlikeNames.Of(circuits);
        return
            Study.Of(before)?.Until(cancellation) is { } was && Study.Of(circuits.After)?.Until(cancellation) is { } now
            ? new PositionComparison(
                before,
                circuits.After,
                [.. JacksOf(circuits).SelectMany(jack => AtJack(circuits, was.At(jack.Before), now.At(jack.After)))]
            )
            : null;
    }

    /// <summary>Parts, by their indices in both.</summary>
    private static IEnumerable<(int Before, int After)> JacksOf(CircuitComparison circuits)
    {
        var (was, now) = (
            circuits.Before.UsedJacks().Select(jack => jack.Part).ToHashSet(),
            circuits.After.UsedJacks().Select(jack => jack.Part).ToHashSet()
        );
        return from jack in circuits.After.Outputs
            let before = circuits.Parts.BeforeOf(circuits.After.Parts[jack.Part])
            where before is not null && (was.Contains(before.Index) || now.Contains(jack.Part))
            orderby jack.Part
            select (before.Index, jack.Part);
    }

    private static IEnumerable<PositionChange> AtJack(CircuitComparison circuits, Study was, Study now)
    {
        var states = now
            .Positions.Rows.Select(row => row.State)
            .Concat(was.Positions.Rows.Select(row => Later(circuits, row.State)))
            .DistinctBy(state => state.Settled(circuits.After));
        foreach (var state in states)
        {
            var settled = state.Settled(circuits.After);
            yield return new PositionChange(state, RowOf(was, EarlierState.Of(circuits, settled)), RowOf(now, settled));
        }
    }

    private static PositionRow RowOf(Study study, State state)
    {
        var analysis = study.Analyse(state);
        return new PositionRow(state, analysis, analysis.Outcome == Outcome.Sound ? analysis.Sound.LevelDecibels : null)
        {
            Jack = study.Circuit.Outputs[0].Part,
        };
    }

    /// <summary>The states of the later circuit in which what is still there stands as it stood; the rest is at rest.</summary>
    private static State Later(CircuitComparison circuits, State earlier)
    {
        var state = State.Rest(circuits.After);
        foreach (var control in circuits.After.Controls)
        {
            if (
                circuits.ControlBefore(control) is { } was
                && (earlier[was.Index] is not { } position || position < control.Positions.Length)
            )
            {
                state = state.At(control.Index, earlier[was.Index]);
            }
        }

        return state;
    }
}
