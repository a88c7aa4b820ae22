using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Layout;

/// <summary>
/// Where the names of a part's lugs would best stand, before any wire is there: for the lugs of a row on one side of them. Wires
/// pay for running there and joints on a case keep off, so that most names find their place free.
/// </summary>
internal static class NameHomes
{
    /// <summary>From a lug's middle to its name, in millimetres.</summary>
    private const double Away = LayoutScale.JointRadius + Tokens.LabelGap;

    /// <summary>How far a tab reaches out of its body at most, and in which steps a place is looked for along it.</summary>
    private const double LongestTab = 6;
    private const double Step = 0.5;

    /// <summary>On the page; null for a lug that has no room on its part, or no name.</summary>
    public static ImmutableArray<Box?> Of(LayoutPart part, Pose pose)
    {
        Point[] at = [.. part.Lugs.Select(lug => pose.OnPage(lug.At))];
        var homes = new Box?[at.Length];
        foreach (var row in LugRows.Of(at))
        {
            var outward = pose.OnPage(row.GroupBy(lug => part.Lugs[lug].Exits[0]).MaxBy(lugs => lugs.Count())!.Key);
            foreach (var turn in new[] { 180, 0, 90, 270 })
            {
                var side = outward.Turned(turn);
                Box?[] boxes = [.. row.Select(lug => FreeBoxBeside(part, pose, at, lug, side, homes))];
                if (boxes.All(box => box is not null) && AreApart(boxes))
                {
                    foreach (var (lug, box) in row.Zip(boxes))
                    {
                        homes[lug] = box;
                    }

                    break;
                }
            }
        }

        return [.. homes];
    }

    /// <summary>Of a lug outside the body the place at the end of its tab, on the body.</summary>
    private static Box? FreeBoxBeside(LayoutPart part, Pose pose, Point[] at, int lug, Side side, Box?[] others)
    {
        if (part.Lugs[lug].Name is not { } size)
        {
            return null;
        }

        var isOutside = !part.Body.Any(body => pose.OnPage(body).Depth(at[lug]) > 0);
        var towards = side.Towards(1);
        for (var away = Away; away <= (isOutside ? LongestTab : Away); away += Step)
        {
            var middle = new Point(
                at[lug].X + (towards.X * (away + (size.Width / 2))),
                at[lug].Y + (towards.Y * (away + (size.Height / 2)))
            );
            var box = Box.Around(middle, size.Width, size.Height);
            if (IsFree(part, pose, at, lug, box, others))
            {
                return box;
            }
        }

        return null;
    }

    private static bool AreApart(Box?[] boxes) =>
        Enumerable
            .Range(0, boxes.Length)
            .All(one =>
                boxes
                    .Take(one)
                    .All(other => other is null || boxes[one]?.Grown(Tokens.LabelGap).Overlaps(other.Value) != true)
            );

    private static bool IsFree(LayoutPart part, Pose pose, Point[] lugs, int lug, Box home, Box?[] others)
    {
        var isInside = part.Body.Any(body => Holds(pose.OnPage(body), home));
        var isClearOfWords = part.TextBox is not { } text || !pose.OnPage(text).Overlaps(home);
        var isClearOfLugs = lugs.Where((_, other) => other != lug).All(other => home.DistanceTo(other) > 1.25 * Away);
        var isClearOfNames = others.All(other => other is null || !home.Grown(Tokens.LabelGap).Overlaps(other.Value));
        return isInside && isClearOfWords && isClearOfLugs && isClearOfNames;
    }

    private static bool Holds(Outline outline, Box box) =>
        outline.Depth(new Point(box.X, box.Y)) > 0
        && outline.Depth(new Point(box.Right, box.Y)) > 0
        && outline.Depth(new Point(box.X, box.Bottom)) > 0
        && outline.Depth(new Point(box.Right, box.Bottom)) > 0;
}
