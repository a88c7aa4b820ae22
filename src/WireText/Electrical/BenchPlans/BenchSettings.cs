using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Studies;

namespace WireText.Electrical.BenchPlans;

/// <summary>Where switches are set at the bench: the positions that make a difference at a jack, everything else at rest.</summary>
internal static class BenchSettings
{
    /// <summary>Lines of the table of positions beyond which each control is moved alone. Chosen: a page, and an hour's work.</summary>
    internal const int MostPositions = 24;

    /// <param name="jack">The study of a circuit seen from the jack.</param>
    public static ImmutableArray<State> At(Study jack)
    {
        var table = jack.Positions;
        var rows = table.Rows.Concat(table.Local.SelectMany(local => local.Rows)).ToList();
        return rows.Count is > 0 and <= MostPositions
            ? [.. rows.Select(row => row.State.Settled(jack.Circuit)).Distinct()]
            : [.. OneAtATime(jack.Circuit).Take(ReadingList.MostReadings + 1)];
    }

    /// <summary>Everything at rest, then each control in each of its other positions.</summary>
    private static IEnumerable<State> OneAtATime(Circuit circuit)
    {
        var rest = State.Rest(circuit);
        var moved =
            from control in circuit.Controls
            where !control.IsPlug
            from position in Enumerable.Range(0, control.Positions.Length)
            where position != control.Rest
            select rest.At(control.Index, position);
        return moved.Prepend(rest);
    }
}
