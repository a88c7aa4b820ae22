using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>What never moves and no run may come near: bodies, lugs and part labels.</summary>
internal sealed class NudgeObstacles
{
    private readonly List<Outline> _outlines = [];
    private readonly List<Box> _bounds = [];
    private readonly Dictionary<(int, int), List<int>> _cells = [];

    public NudgeObstacles(LabelledPlacement labelled)
    {
        var (wiring, poses) = (labelled.Placement.Wiring, labelled.Placement.Poses);
        for (var part = 0; part < poses.Length; part++)
        {
            foreach (var outline in wiring.Parts[part].Body)
            {
                Add(poses[part].OnPage(outline), LayoutScale.BodyClearance);
            }

            foreach (var lug in wiring.Parts[part].Lugs)
            {
                Add(new Outline.Circle(poses[part].OnPage(lug.At), 0), LayoutScale.LugClearance + 0.2);
            }

            if (labelled.Labels[part] is { } label)
            {
                Add(new Outline.Rectangle(label), LayoutScale.WireRadius + LayoutScale.LabelClearance);
            }
        }
    }

    public void Bound(Run run, ref (double Low, double High) room)
    {
        const double Reach = 3 * LayoutScale.Pitch;
        var (a, b) = (run.StartPoint, run.EndPoint);
        var near = Shapes.Inflated(Shapes.Spanning(a, b), Reach);
        foreach (var cell in CellsOf(near))
        {
            foreach (var index in _cells.GetValueOrDefault(cell, []))
            {
                if (Shapes.Overlap(_bounds[index], near))
                {
                    BoundBy(_outlines[index], run, ref room);
                }
            }
        }
    }

    private static void BoundBy(Outline outline, Run run, ref (double Low, double High) room)
    {
        var bounds = Shapes.BoundsOf(outline);
        var (low, high) = run.IsHorizontal ? (bounds.X, bounds.Right) : (bounds.Y, bounds.Bottom);
        var (top, bottom) = run.IsHorizontal ? (bounds.Y, bounds.Bottom) : (bounds.X, bounds.Right);
        if (low >= run.High || high <= run.Low)
        {
            return;
        }

        if (outline is Outline.Circle circle)
        {
            var (along, across) = run.IsHorizontal
                ? (circle.Centre.X, circle.Centre.Y)
                : (circle.Centre.Y, circle.Centre.X);
            var off = along - Math.Clamp(along, run.Low, run.High);
            var half = Math.Sqrt(Math.Max(0, (circle.Radius * circle.Radius) - (off * off)));
            (top, bottom) = (across - half, across + half);
        }

        if (run.At <= top)
        {
            room.High = Math.Min(room.High, top);
        }
        else if (run.At >= bottom)
        {
            room.Low = Math.Max(room.Low, bottom);
        }
        else
        {
            // Inside its own part, or beside its own lug: it stays.
            room = (run.At, run.At);
        }
    }

    private void Add(Outline outline, double air)
    {
        Outline grown = outline switch
        {
            Outline.Circle circle => new Outline.Circle(circle.Centre, circle.Radius + air),
            _ => new Outline.Rectangle(Shapes.Inflated(Shapes.BoundsOf(outline), air)),
        };
        var bounds = Shapes.BoundsOf(grown);
        foreach (var cell in CellsOf(bounds))
        {
            if (!_cells.TryGetValue(cell, out var here))
            {
                _cells[cell] = here = [];
            }

            here.Add(_outlines.Count);
        }

        _outlines.Add(grown);
        _bounds.Add(bounds);
    }

    private static IEnumerable<(int, int)> CellsOf(Box box)
    {
        const double Cell = 20;
        for (var y = (int)Math.Floor(box.Y / Cell); y <= (int)Math.Floor(box.Bottom / Cell); y++)
        {
            for (var x = (int)Math.Floor(box.X / Cell); x <= (int)Math.Floor(box.Right / Cell); x++)
            {
                yield return (x, y);
            }
        }
    }
}
