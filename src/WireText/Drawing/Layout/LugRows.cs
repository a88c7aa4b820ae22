using System.Collections.Immutable;
using WireText.Geometry;

namespace WireText.Drawing.Layout;

/// <summary>The rows in which the lugs of a part stand: along the longer side of the box around them, or, where that is nearly square, the way that makes fewer rows.</summary>
internal static class LugRows
{
    /// <summary>Lugs no more than this out of line are a row, in millimetres.</summary>
    private const double InLine = 0.5;

    /// <summary>Sides of a box that differ by no more than this, in millimetres, tell nothing. Chosen: a push-pull's six lugs stand in a square.</summary>
    private const double NearlySquare = 1.5;

    /// <summary>Every lug in one row, alone or with others; as indices, in order.</summary>
    public static ImmutableArray<ImmutableArray<int>> Of(IReadOnlyList<Point> lugs)
    {
        if (lugs.Count == 0)
        {
            return [];
        }

        var wider = Span(lugs.Select(lug => lug.X)) - Span(lugs.Select(lug => lug.Y));
        var (across, along) = (RowsBy(lugs, lug => lug.Y), RowsBy(lugs, lug => lug.X));
        var isWide = Math.Abs(wider) <= NearlySquare ? across.Length <= along.Length : wider > 0;
        return isWide ? across : along;
    }

    private static double Span(IEnumerable<double> values) => values.Max() - values.Min();

    private static ImmutableArray<ImmutableArray<int>> RowsBy(IReadOnlyList<Point> lugs, Func<Point, double> across)
    {
        var rows = new List<List<int>>();
        foreach (var lug in Enumerable.Range(0, lugs.Count).OrderBy(lug => across(lugs[lug])))
        {
            if (rows.Count == 0 || across(lugs[lug]) - across(lugs[rows[^1][0]]) > InLine)
            {
                rows.Add([]);
            }

            rows[^1].Add(lug);
        }

        return [.. rows.Select(row => row.Order().ToImmutableArray())];
    }
}
