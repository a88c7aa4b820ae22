using System.Collections.Immutable;
using WireText.Geometry;

namespace WireText.Drawing.Layout;

/// <summary>The rows in which the lugs of a part stand: along the longer side of the box around them.</summary>
internal static class LugRows
{
    /// <summary>Lugs no more than this out of line are a row, in millimetres.</summary>
    private const double InLine = 0.5;

    /// <summary>Every lug in one row, alone or with others; as indices, in order.</summary>
    public static ImmutableArray<ImmutableArray<int>> Of(IReadOnlyList<Point> lugs)
    {
        if (lugs.Count == 0)
        {
            return [];
        }

        var width = lugs.Max(lug => lug.X) - lugs.Min(lug => lug.X);
        var isWide = width >= lugs.Max(lug => lug.Y) - lugs.Min(lug => lug.Y);
        var rows = new List<List<int>>();
        foreach (var lug in Enumerable.Range(0, lugs.Count).OrderBy(Across))
        {
            if (rows.Count == 0 || Across(lug) - Across(rows[^1][0]) > InLine)
            {
                rows.Add([]);
            }

            rows[^1].Add(lug);
        }

        return [.. rows.Select(row => row.Order().ToImmutableArray())];

        double Across(int lug) => isWide ? lugs[lug].Y : lugs[lug].X;
    }
}
