using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>Finds the nodes on which wires may be soldered to a surface: on its rim, clear of lugs and words.</summary>
internal sealed class SurfaceLandings(LatticeDraft draft)
{
    /// <summary>A wire finds its way to a surface that has so many places for each. With fewer clear of names, nearer ones are taken too.</summary>
    private const int PlacesForEach = 4;

    /// <summary>A surface is left bare of joints where something lies on it when so many places remain for each wire.</summary>
    private const int LeastForEach = 2;

    /// <summary>How far the middle of a joint keeps from what lies on its surface, in millimetres: so that both are seen whole, else at its edge.</summary>
    private static readonly double[] FromCover = [LayoutScale.SurfaceJointRadius + 0.4, 0.5];

    /// <summary>From the middle of a joint to the edge of its surface where most of that is covered, in millimetres; elsewhere a lane.</summary>
    private const double FromEdgeBesideCover = LayoutScale.SurfaceJointRadius + 0.45;

    /// <summary>How far a joint keeps from the names of lugs where there is room, in millimetres: the first that leaves enough places.</summary>
    private static readonly double[] FromNames = [LayoutScale.LandingDistance, 2, 1];

    /// <returns>Empty for a lug.</returns>
    public int[] Of(int terminal)
    {
        var (part, index, isSurface) = draft.Wiring.Terminals[terminal];
        if (!isSurface)
        {
            return [];
        }

        var surface = draft.Wiring.Parts[part].Surfaces[index];
        var shape = draft.PoseOf(part).OnPage(surface.Shape);
        var bounds = shape.Bounds;
        var fromEdge = surface.Cover is null ? LayoutScale.Pitch : FromEdgeBesideCover;
        var inset = Math.Min(fromEdge, Math.Min(bounds.Width, bounds.Height) / 4);
        var found = new List<int>();
        draft.Frame.Visit(
            bounds,
            (node, at) =>
            {
                var depth = shape.Depth(at);
                var isOnRim = depth >= inset - 1e-6 && depth <= LayoutScale.RimDepth;
                if (isOnRim && IsLandable(node, part) && !IsNearLug(part, at))
                {
                    found.Add(node);
                }
            }
        );
        var wires = draft.Wiring.Connections.Count(wire => wire.From == terminal || wire.To == terminal);
        var all = surface.Cover is { } cover ? Beside(draft.PoseOf(part).OnPage(cover), found, wires) : [.. found];
        foreach (var distance in FromNames)
        {
            int[] clear = [.. all.Where(node => !IsNearName(part, NodeAt(node), distance))];
            if (clear.Length >= PlacesForEach * wires)
            {
                return clear;
            }
        }

        return all;
    }

    /// <summary>The places beside what lies on a surface, or all where they are too few.</summary>
    private int[] Beside(Box cover, List<int> places, int wires)
    {
        foreach (var distance in FromCover)
        {
            int[] bare = [.. places.Where(node => cover.DistanceTo(NodeAt(node)) >= distance)];
            if (bare.Length >= LeastForEach * wires)
            {
                return bare;
            }
        }

        return [.. places];
    }

    private Point NodeAt(int node) => draft.Frame.OnPage(draft.Nodes[node].X, draft.Nodes[node].Y);

    /// <summary>True where a joint would come near the name of a lug of the part, or of what lies on the part.</summary>
    private bool IsNearName(int part, Point at, double distance)
    {
        for (var other = 0; other < draft.Wiring.Parts.Length; other++)
        {
            if (other == part || draft.Wiring.Parts[other].Seat?.Host == draft.Wiring.Parts[part].Id)
            {
                foreach (var home in draft.NameHomes[other])
                {
                    if (home?.DistanceTo(at) < distance + LayoutScale.SurfaceJointRadius)
                    {
                        return true;
                    }
                }
            }
        }

        return false;
    }

    private bool IsLandable(int node, int part)
    {
        ref readonly var at = ref draft.Nodes[node];
        return !draft.StaysClosed[node] && (at.Zone == 0 ? at.Access != 0 : at.Zone == part + 1);
    }

    /// <summary>True where a joint would seem to lie on a lug of the part, or of what lies on the part.</summary>
    private bool IsNearLug(int part, Point at)
    {
        var terminals = draft.Wiring.Terminals;
        for (var t = 0; t < terminals.Length; t++)
        {
            var isThere = terminals[t].Part == part || draft.Host[t] == part;
            if (
                isThere
                && !terminals[t].IsSurface
                && Point.Distance(draft.Labelled.Placement.OnPage(t), at) < LayoutScale.LandingDistance
            )
            {
                return true;
            }
        }

        return false;
    }
}
