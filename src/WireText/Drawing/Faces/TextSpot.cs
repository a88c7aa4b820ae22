using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>Finds a place inside a body for the part's words, clear of its lugs, their labels and the way out of them.</summary>
internal static class TextSpot
{
    /// <summary>The places that are tried lie so far apart, in millimetres. Chosen.</summary>
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
                if (distance < nearest && body.Contains(box, inset) && !taken.Exists(t => t.Overlaps(box)))
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
        yield return LabelBox(body, lug, label).Grown(Tokens.LabelGap);

        if (body.Contains(lug.At, 0))
        {
            yield return WayOut(lug, body.DepthTowards(lug.Outward, lug.At));
        }
    }

    /// <summary>Where a lug's label goes when nothing is in the way: on the side away from where its wires leave.</summary>
    public static Box LabelBox(FaceBody body, FaceLug lug, Size label)
    {
        var away = lug.Outward.Towards(1);
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

    private static Box WayOut(FaceLug lug, double depth) =>
        Box.Spanning(lug.At, lug.At + lug.Outward.Towards(depth))
            .Grown((Tokens.WireCore / 2) + Tokens.Casing + Tokens.LabelGap);
}
