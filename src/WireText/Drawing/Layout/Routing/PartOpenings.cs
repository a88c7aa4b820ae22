using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>Opens the zone of a part to the wires that end in it: rims of its metal, corridors to its inner lugs, strips between lugs.</summary>
/// <param name="opensAllSides">True to let wires of inner lugs out on every side, not only by the lugs' own exits.</param>
internal sealed class PartOpenings(LatticeDraft draft, (int X, int Y)[] lugNodes, bool opensAllSides)
{
    /// <summary>Two lugs of a row or column that are no farther apart may be joined by a jumper, in millimetres.</summary>
    private const double LongestJumper = 12.5;

    /// <summary>How far two lugs of one row may be off its line, in millimetres.</summary>
    private const double OffLine = 1;

    private static readonly Side[] AllSides = [Side.North, Side.East, Side.South, Side.West];

    public void Open(int part)
    {
        OpenRims(part);
        OpenCorridors(part);
        OpenBetweenNeighbours(part);
    }

    private void OpenRims(int part)
    {
        foreach (var surface in draft.Wiring.Parts[part].Surfaces)
        {
            var shape = draft.PoseOf(part).OnPage(surface.Shape);
            draft.Frame.Visit(
                shape.Bounds.Grown(LayoutScale.BodyClearance),
                (node, at) =>
                {
                    var depth = shape.Depth(at);
                    if (depth > -LayoutScale.BodyClearance && depth <= LayoutScale.RimDepth)
                    {
                        draft.Open(node, part, ZoneAccess.Rim);
                    }
                }
            );
        }
    }

    private void OpenCorridors(int part)
    {
        var lugs = draft.Wiring.Parts[part].Lugs;
        for (var lug = 0; lug < lugs.Length; lug++)
        {
            var terminal = draft.Wiring.LugTerminal(part, lug);
            var node = draft.Frame.NodeAt(lugNodes[terminal]);
            var zone = draft.Nodes[node].Zone;
            if (zone == part + 1)
            {
                draft.IsInner[terminal] = true;
                foreach (var side in WaysOut(part, lug))
                {
                    OpenCorridor(part, node, Lattice.DirectionOf(draft.PoseOf(part).OnPage(side)));
                }
            }
            else if (zone != 0)
            {
                draft.Host[terminal] = zone - 1;
                OpenToGuest(zone - 1);
            }
        }
    }

    private IEnumerable<Side> WaysOut(int part, int lug) =>
        opensAllSides
            ? AllSides.Where(side => !IsAcrossBody(part, lug, side))
            : draft.Wiring.Parts[part].Lugs[lug].Exits.DefaultIfEmpty(NearestSide(part, lug));

    /// <summary>True when the way out by that side leads from a lug outside the body, or on its line, through the body.</summary>
    private bool IsAcrossBody(int part, int lug, Side side)
    {
        var (body, at) = (draft.Wiring.Parts[part].Body[0], draft.Wiring.Parts[part].Lugs[lug].At);
        return body.Depth(at) <= 0 && body.Depth(at + side.Towards(LayoutScale.Pitch)) > 0;
    }

    private Side NearestSide(int part, int lug)
    {
        var body = draft.Wiring.Parts[part].Body.Select(outline => outline.Bounds).Aggregate(Box.Union);
        var at = draft.Wiring.Parts[part].Lugs[lug].At;
        double[] depths = [at.Y - body.Y, body.Right - at.X, body.Bottom - at.Y, at.X - body.X];
        return (Side)Array.IndexOf(depths, depths.Min());
    }

    /// <summary>Opens three lanes from a lug inside the body to the outside.</summary>
    private void OpenCorridor(int part, int lugNode, int direction)
    {
        var ahead = draft.Frame.Step(direction);
        var across = draft.Frame.Step((direction + 1) % 4);
        for (var node = lugNode; draft.Nodes[node].Zone == part + 1; node += ahead)
        {
            draft.Open(node - across, part, ZoneAccess.Corridor);
            draft.Open(node, part, ZoneAccess.Corridor);
            draft.Open(node + across, part, ZoneAccess.Corridor);
        }
    }

    private void OpenToGuest(int host)
    {
        for (var node = 0; node < draft.Nodes.Length; node++)
        {
            draft.Open(node, host, ZoneAccess.Guest);
        }
    }

    /// <summary>Opens the strip between two lugs of a row or a column that have none between them, for jumpers.</summary>
    private void OpenBetweenNeighbours(int part)
    {
        var lugs = draft.Wiring.Parts[part].Lugs;
        for (var a = 0; a < lugs.Length; a++)
        {
            for (var b = 0; b < lugs.Length; b++)
            {
                var (one, two) = (draft.Wiring.LugTerminal(part, a), draft.Wiring.LugTerminal(part, b));
                if (AreNeighbours(lugs[a].At, lugs[b].At) && draft.IsInner[one] && draft.IsInner[two])
                {
                    var strip = draft.Frame.BoxAround([
                        draft.Frame.NodeAt(lugNodes[one]),
                        draft.Frame.NodeAt(lugNodes[two]),
                    ]);
                    OpenBox(strip.Grown(1, draft.Frame.Width, draft.Frame.Height), part);
                }
            }
        }
    }

    /// <summary>True when the second lies to the right of the first in its row, or below it in its column.</summary>
    private static bool AreNeighbours(Point from, Point to)
    {
        var isRow = Math.Abs(from.Y - to.Y) < OffLine && to.X > from.X && to.X - from.X <= LongestJumper;
        var isColumn = Math.Abs(from.X - to.X) < OffLine && to.Y > from.Y && to.Y - from.Y <= LongestJumper;
        return isRow || isColumn;
    }

    private void OpenBox(LatticeBox box, int part)
    {
        for (var y = box.Y1; y <= box.Y2; y++)
        {
            for (var x = box.X1; x <= box.X2; x++)
            {
                draft.Open((y * draft.Frame.Width) + x, part, ZoneAccess.Corridor);
            }
        }
    }
}
