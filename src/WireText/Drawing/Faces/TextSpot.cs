using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>Finds a place inside a body for the part's words, clear of its lugs, their labels and the way out of them.</summary>
internal static class TextSpot
{
    private const double Step = 0.5;

    /// <summary>The free place nearest to the middle, or null.</summary>
    /// <param name="kept">A place on the body that something else needs.</param>
    public static Box? Find(FaceBody body, ImmutableArray<FaceLug> lugs, Size text, double inset, Box? kept)
    {
        var taken = lugs.SelectMany(lug => Around(body, lug)).ToList();
        if (kept is { } other)
        {
            taken.Add(other);
        }

        Box? best = null;
        var nearest = double.PositiveInfinity;
        var (columns, rows) = ((int)(body.Half.Width / Step), (int)(body.Half.Height / Step));
        for (var row = -rows; row <= rows; row++)
        {
            for (var column = -columns; column <= columns; column++)
            {
                var centre = new Point(column * Step, row * Step);
                var distance = (centre.X * centre.X) + (centre.Y * centre.Y);
                var box = Box.Around(centre, text.Width, text.Height);
                if (distance < nearest && body.Contains(box, inset) && !taken.Exists(t => Touch(t, box)))
                {
                    (best, nearest) = (box, distance);
                }
            }
        }

        return best;
    }

    private static IEnumerable<Box> Around(FaceBody body, FaceLug lug)
    {
        var joint = Tokens.JointDiameter + (2 * Tokens.LabelGap);
        yield return Box.Around(lug.At, joint, joint);

        var label = new Size(
            DrawnText.Width(lug.Label, TextWeight.Medium, Tokens.LugLabelSize),
            Tokens.LugLabelSize * DrawnText.CapHeight
        );
        yield return Grown(LabelBox(body, lug, label), Tokens.LabelGap);

        if (body.Contains(lug.At, 0))
        {
            yield return WayOut(lug, body.DepthTowards(lug.Outward, lug.At));
        }
    }

    /// <summary>Where a lug's label goes when nothing is in the way: on the side away from where its wires leave.</summary>
    public static Box LabelBox(FaceBody body, FaceLug lug, Size label)
    {
        var away = Unit(lug.Outward);
        var half = away.X == 0 ? label.Height / 2 : label.Width / 2;
        var reach = (Tokens.JointDiameter / 2) + Tokens.LabelGap + half;
        var depth = -body.DepthTowards(lug.Outward, lug.At);
        var gap = (Tokens.PartLine / 2) + Tokens.LabelGap;
        if (depth > 0 && reach + half + gap > depth && reach - half - gap < depth)
        {
            // It would lie on the outline: further in.
            reach = depth + half + gap;
        }

        var centre = new Point(lug.At.X - (away.X * reach), lug.At.Y - (away.Y * reach));
        return Box.Around(centre, label.Width, label.Height);
    }

    public static Point Unit(Side side) =>
        side switch
        {
            Side.North => new Point(0, -1),
            Side.East => new Point(1, 0),
            Side.South => new Point(0, 1),
            _ => new Point(-1, 0),
        };

    private static Box WayOut(FaceLug lug, double depth)
    {
        var outward = Unit(lug.Outward);
        var end = new Point(lug.At.X + (outward.X * depth), lug.At.Y + (outward.Y * depth));
        var (x, y) = (Math.Min(lug.At.X, end.X), Math.Min(lug.At.Y, end.Y));
        var way = new Box(x, y, Math.Abs(end.X - lug.At.X), Math.Abs(end.Y - lug.At.Y));
        return Grown(way, (Tokens.WireCore / 2) + Tokens.Casing + Tokens.LabelGap);
    }

    private static Box Grown(Box box, double by) =>
        new(box.X - by, box.Y - by, box.Width + (2 * by), box.Height + (2 * by));

    private static bool Touch(Box a, Box b) => a.X < b.Right && b.X < a.Right && a.Y < b.Bottom && b.Y < a.Bottom;
}
