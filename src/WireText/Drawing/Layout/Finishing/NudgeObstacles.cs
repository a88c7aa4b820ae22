using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>What never moves and no run may come near: bodies, lugs and part labels.</summary>
internal sealed class NudgeObstacles
{
    private readonly List<Outline> outlines = [];
    private readonly BoxGrid grid = new();

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
        var near = Box.Spanning(run.StartPoint, run.EndPoint).Grown(Reach);
        foreach (var index in grid.NearForNow(near))
        {
            if (outlines[index].Bounds.Overlaps(near))
            {
                BoundBy(outlines[index], run, ref room);
            }
        }
    }

    private static void BoundBy(Outline outline, Run run, ref (double Low, double High) room)
    {
        var bounds = outline.Bounds;
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
        var grown = outline.Grown(air);
        grid.Add(grown.Bounds);
        outlines.Add(grown);
    }
}
