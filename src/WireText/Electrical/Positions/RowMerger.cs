using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Positions;

/// <summary>Makes one row of rows that say the same and differ in one control, whose positions they cover.</summary>
internal static class RowMerger
{
    public static ImmutableArray<PositionRow> Merge(Circuit circuit, IEnumerable<PositionRow> rows) =>
        Merge(circuit, rows, row => row.State, (row, state) => row with { State = state }, row => row.Printed(circuit));

    /// <param name="said">What a row says; rows that say the same may become one.</param>
    public static ImmutableArray<T> Merge<T>(
        Circuit circuit,
        IEnumerable<T> rows,
        Func<T, State> stateOf,
        Func<T, State, T> at,
        Func<T, string> said
    )
    {
        var merged = rows.Select(row => (Row: row, Said: said(row))).ToList();
        bool changed;
        do
        {
            changed = false;
            for (var control = circuit.Controls.Length - 1; control >= 0; control--)
            {
                var before = merged.Count;
                merged = MergeOver(circuit, merged, control, stateOf, at);
                changed |= merged.Count < before;
            }
        } while (changed);

        merged.Sort((a, b) => State.Compare(stateOf(a.Row), stateOf(b.Row)));
        return [.. merged.Select(one => one.Row)];
    }

    private static List<(T Row, string Said)> MergeOver<T>(
        Circuit circuit,
        List<(T Row, string Said)> rows,
        int control,
        Func<T, State> stateOf,
        Func<T, State, T> at
    )
    {
        var count = circuit.Controls[control].Positions.Length;
        var merged = new List<(T, string)>();
        foreach (var group in rows.GroupBy(one => (stateOf(one.Row).At(control, null), one.Said)))
        {
            var covered = group.Select(one => stateOf(one.Row)[control]).OfType<int>();
            if (covered.Distinct().Count() == count)
            {
                var (row, said) = group.First();
                merged.Add((at(row, stateOf(row).At(control, null)), said));
            }
            else
            {
                merged.AddRange(group);
            }
        }

        return merged;
    }
}
