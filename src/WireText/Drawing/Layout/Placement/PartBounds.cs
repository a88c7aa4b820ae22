using WireText.Geometry;

namespace WireText.Drawing.Layout.Placement;

/// <summary>How much room a part takes around its hole, and how its hole must sit for its lugs to meet the lattice.</summary>
internal static class PartBounds
{
    /// <summary>The box around body, lugs and surfaces in the part's turned frame, in millimetres.</summary>
    public static Box Of(LayoutPart part, int turn)
    {
        Box? bounds = null;
        void Add(Box box) => bounds = bounds is { } known ? Box.Union(known, box) : box;
        foreach (var outline in part.Body)
        {
            Add(outline.Bounds);
        }

        foreach (var surface in part.Surfaces)
        {
            Add(surface.Shape.Bounds);
        }

        foreach (var lug in part.Lugs)
        {
            Add(Box.Around(lug.At, 2 * LayoutScale.JointRadius, 2 * LayoutScale.JointRadius));
        }

        return (bounds ?? default).Turned(turn);
    }

    /// <summary>The same on the page, in a pose.</summary>
    public static Box OnPage(LayoutPart part, Pose pose) => Of(part, pose.Turn).Shifted(pose.At);

    /// <summary>The offset from a lattice node, in half pitches each way, with which a hole puts its lugs nearest to nodes.</summary>
    public static Point LatticeOffset(LayoutPart part, int turn)
    {
        const double Half = LayoutScale.Pitch / 2;
        var lugs = part.Lugs.Select(lug => lug.At.Turned(turn)).ToArray();
        return new Point(Better(lugs.Select(lug => lug.X)), Better(lugs.Select(lug => lug.Y)));

        static double Better(IEnumerable<double> coordinates)
        {
            var all = coordinates.ToArray();
            return Misfit(all, Half) < Misfit(all, 0) - 1e-6 ? Half : 0;
        }
    }

    private static double Misfit(double[] coordinates, double offset)
    {
        var sum = 0.0;
        foreach (var coordinate in coordinates)
        {
            var inPitches = (coordinate + offset) / LayoutScale.Pitch;
            var off = inPitches - Math.Round(inPitches);
            sum += off * off;
        }

        return sum;
    }

    /// <summary>The place for a hole nearest to a point such that the lugs meet the lattice.</summary>
    public static Point Snapped(LayoutPart part, int turn, Point near)
    {
        var offset = LatticeOffset(part, turn);
        return new Point(Snap(near.X, offset.X), Snap(near.Y, offset.Y));

        static double Snap(double value, double offset) =>
            (Math.Floor(((value - offset) / LayoutScale.Pitch) + 0.5) * LayoutScale.Pitch) + offset;
    }
}
