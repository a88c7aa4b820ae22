using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>One straight piece of a finished wire.</summary>
/// <param name="Wire">The wire's index.</param>
/// <param name="Index">Its index along the wire.</param>
internal readonly record struct Stretch(int Wire, int Index, Point From, Point To)
{
    public bool IsHorizontal => Math.Abs(From.Y - To.Y) < 1e-6 && Math.Abs(From.X - To.X) > 1e-6;

    public bool IsVertical => Math.Abs(From.X - To.X) < 1e-6 && Math.Abs(From.Y - To.Y) > 1e-6;

    public Box Bounds => Box.Spanning(From, To);

    public double Length => Point.Distance(From, To);
}

/// <summary>All straight pieces of all wires, found by place.</summary>
internal sealed class Stretches
{
    private readonly BoxGrid grid = new();
    private readonly List<Stretch> all = [];

    public Stretches(Point[][] paths)
    {
        for (var wire = 0; wire < paths.Length; wire++)
        {
            for (var i = 0; i + 1 < paths[wire].Length; i++)
            {
                Add(new Stretch(wire, i, paths[wire][i], paths[wire][i + 1]));
            }
        }
    }

    public IReadOnlyList<Stretch> All => all;

    /// <summary>Pieces that touch the box, in the order of wires.</summary>
    public IEnumerable<Stretch> Near(Box box) => grid.Near(box).Select(number => all[number]);

    /// <summary>The numbers in <see cref="All"/> of the same pieces, in no order: good until the next question.</summary>
    public ReadOnlySpan<int> NearForNow(Box box) => grid.NearForNow(box);

    private void Add(Stretch stretch)
    {
        grid.Add(stretch.Bounds);
        all.Add(stretch);
    }
}
