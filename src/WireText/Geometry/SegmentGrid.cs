namespace WireText.Geometry;

/// <summary>Straight stretches found by place, each with a number of its owner's.</summary>
public sealed class SegmentGrid
{
    private readonly BoxGrid grid = new();
    private readonly List<(Segment Segment, int Owner)> all = [];

    /// <param name="owner">A number of the caller's; it comes back with the stretch.</param>
    public void Add(Segment segment, int owner = 0)
    {
        grid.Add(segment.Bounds);
        all.Add((segment, owner));
    }

    /// <summary>Those whose bounds touch the box, in the order of adding.</summary>
    public IEnumerable<(Segment Segment, int Owner)> Near(Box box) => grid.Near(box).Select(number => all[number]);
}
