using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>A place for the name of a lug beside which there is none: apart from it, at the end of a thin line.</summary>
internal static class NameLeader
{
    /// <summary>How far from the lug a place is looked for, along and across, and in which steps, in millimetres.</summary>
    private const int Reach = 16;
    private const double Step = 1;

    /// <summary>From the middle of the lug to where the line begins, in millimetres.</summary>
    private const double Start = 1.4;

    /// <summary>Each wire that the line crosses is worth so many millimetres of it. Chosen.</summary>
    private const double PerWire = 4;

    /// <summary>The nearest free place that a straight line reaches without meeting a joint or a word; null for none.</summary>
    public static LugLabels.Spot? Find(LabelSpace space, Point lug, Box name)
    {
        LugLabels.Spot? best = null;
        var least = double.PositiveInfinity;
        for (var row = -Reach; row <= Reach; row++)
        {
            for (var column = -Reach; column <= Reach; column++)
            {
                var middle = new Point(lug.X + (column * Step), lug.Y + (row * Step));
                var box = Box.Around(middle, name.Width, name.Height);
                var (from, to) = (lug.Towards(middle, Start), box.NearestTo(lug));
                var length = Point.Distance(lug, to);
                if (length > Start && length < least && space.IsFree(box) && space.IsLineFree(from, to))
                {
                    var cost = length + (PerWire * space.WiresAcross(from, to));
                    if (cost < least)
                    {
                        (best, least) = (new LugLabels.Spot(box, IsClear: true, new Segment(from, to)), cost);
                    }
                }
            }
        }

        return best;
    }
}
