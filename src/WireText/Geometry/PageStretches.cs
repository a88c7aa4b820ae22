namespace WireText.Geometry;

/// <summary>Straight stretches on the page, found by place.</summary>
internal sealed class PageStretches
{
    private readonly BoxGrid grid = new();
    private readonly List<(Point From, Point To, int Owner)> all = [];

    /// <param name="owner">A number of the caller's; it comes back with the stretch.</param>
    public void Add(Point from, Point to, int owner = 0)
    {
        grid.Add(Boxes.Around(from, to));
        all.Add((from, to, owner));
    }

    /// <summary>Those whose bounds touch the box, in the order of adding.</summary>
    public IEnumerable<(Point From, Point To, int Owner)> Near(Box box) => grid.Near(box).Select(number => all[number]);
}
