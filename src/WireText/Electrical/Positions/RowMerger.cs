using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Positions;

/// <summary>Makes one row of rows that print the same and differ in one control, whose positions they cover.</summary>
internal static class RowMerger
{
    public static ImmutableArray<PositionRow> Merge(Circuit circuit, IReadOnlyList<PositionRow> rows)
    {
        var merged = rows.ToList();
        bool changed;
        do
        {
            changed = false;
            for (var control = circuit.Controls.Length - 1; control >= 0; control--)
            {
                var before = merged.Count;
                merged = MergeOver(circuit, merged, control);
                changed |= merged.Count < before;
            }
        } while (changed);

        merged.Sort((a, b) => a.Positions.AsSpan().SequenceCompareTo(b.Positions.AsSpan()));
        return [.. merged];
    }

    private static List<PositionRow> MergeOver(Circuit circuit, List<PositionRow> rows, int control)
    {
        var count = circuit.Controls[control].Positions.Length;
        var merged = new List<PositionRow>();
        foreach (var group in rows.GroupBy(row => KeyWithout(circuit, row, control), StringComparer.Ordinal))
        {
            var covered = group.Select(row => row.Positions[control]).Where(position => position != Situation.Any);
            if (covered.Distinct().Count() == count)
            {
                var first = group.First();
                merged.Add(first with { Positions = first.Positions.SetItem(control, Situation.Any) });
            }
            else
            {
                merged.AddRange(group);
            }
        }

        return merged;
    }

    private static string KeyWithout(Circuit circuit, PositionRow row, int control) =>
        string.Join(' ', row.Positions.SetItem(control, Situation.Any)) + "|" + row.Printed(circuit);
}
