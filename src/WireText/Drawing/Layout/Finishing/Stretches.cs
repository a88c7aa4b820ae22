using WireText.Parts;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>One straight piece of a finished wire.</summary>
/// <param name="Wire">The wire's index.</param>
/// <param name="Index">Its index along the wire.</param>
internal readonly record struct Stretch(int Wire, int Index, Point From, Point To)
{
    public bool IsHorizontal => Math.Abs(From.Y - To.Y) < 1e-6 && Math.Abs(From.X - To.X) > 1e-6;

    public bool IsVertical => Math.Abs(From.X - To.X) < 1e-6 && Math.Abs(From.Y - To.Y) > 1e-6;

    public Box Bounds => Geometry.Spanning(From, To);

    public double Length => Geometry.Distance(From, To);
}

/// <summary>All straight pieces of all wires, found by place: a grid of square cells, each with the pieces that touch it.</summary>
internal sealed class Stretches
{
    private const double Cell = 16;

    private readonly Dictionary<(int, int), List<int>> _cells = [];
    private readonly List<Stretch> _all = [];

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

    public IReadOnlyList<Stretch> All => _all;

    /// <summary>Pieces that touch the box, in the order of wires; one may come twice.</summary>
    public IEnumerable<Stretch> Near(Box box)
    {
        var seen = new SortedSet<int>();
        foreach (var cell in CellsOf(box))
        {
            if (_cells.TryGetValue(cell, out var here))
            {
                seen.UnionWith(here);
            }
        }

        foreach (var index in seen)
        {
            var bounds = _all[index].Bounds;
            if (bounds.X <= box.Right && bounds.Right >= box.X && bounds.Y <= box.Bottom && bounds.Bottom >= box.Y)
            {
                yield return _all[index];
            }
        }
    }

    private void Add(Stretch stretch)
    {
        foreach (var cell in CellsOf(stretch.Bounds))
        {
            if (!_cells.TryGetValue(cell, out var here))
            {
                _cells[cell] = here = [];
            }

            here.Add(_all.Count);
        }

        _all.Add(stretch);
    }

    private static IEnumerable<(int, int)> CellsOf(Box box)
    {
        for (var y = (int)Math.Floor(box.Y / Cell); y <= (int)Math.Floor(box.Bottom / Cell); y++)
        {
            for (var x = (int)Math.Floor(box.X / Cell); x <= (int)Math.Floor(box.Right / Cell); x++)
            {
                yield return (x, y);
            }
        }
    }
}
