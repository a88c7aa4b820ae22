using System.Collections.Immutable;
using WireText.Drawing.Layout.Routing;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>Makes finished geometry of routes: corner points, hops, tags.</summary>
internal static class LayoutFinisher
{
    public static LayoutResult Finish(RoutedLattice routed)
    {
        var labelled = routed.Lattice.Labelled;
        var connections = labelled.Placement.Wiring.Connections;
        var paths = WirePaths.Of(routed);
        var (hops, gaps) = HopPlacer.Place(paths, [.. connections.Select(c => c.Wire.Rank)]);
        var tags = TagPlacer.Place(paths, [.. connections.Select(c => c.Wire.Tag)], hops, labelled);
        var wires = ImmutableArray.CreateBuilder<RoutedWire>();
        var unrouted = ImmutableArray.CreateBuilder<string>();
        for (var i = 0; i < connections.Length; i++)
        {
            if (paths[i].Length < 2)
            {
                unrouted.Add(connections[i].Wire.Id);
                continue;
            }

            wires.Add(
                new RoutedWire(
                    connections[i].Wire,
                    [.. paths[i]],
                    [.. hops[i]],
                    tags[i]?.Box,
                    tags[i]?.IsVertical ?? false
                )
                {
                    Gaps = [.. gaps[i]],
                }
            );
        }

        return Result(labelled, wires.ToImmutable(), unrouted.ToImmutable());
    }

    /// <summary>The parts alone, for parts put too far apart for any wire.</summary>
    public static LayoutResult WithoutWires(LabelledPlacement labelled) =>
        Result(labelled, [], [.. labelled.Placement.Wiring.Connections.Select(c => c.Wire.Id)]);

    private static LayoutResult Result(
        LabelledPlacement labelled,
        ImmutableArray<RoutedWire> wires,
        ImmutableArray<string> unrouted
    )
    {
        var (wiring, poses) = (labelled.Placement.Wiring, labelled.Placement.Poses);
        var parts = wiring.Parts.Select(
            (part, i) => new PlacedPart(part, poses[i].At, poses[i].Turn, labelled.Labels[i])
        );
        var extent = LatticeBuilder.ExtentOf(labelled);
        foreach (var wire in wires)
        {
            for (var i = 0; i + 1 < wire.Points.Length; i++)
            {
                var run = Geometry.Inflated(
                    Geometry.Spanning(wire.Points[i], wire.Points[i + 1]),
                    LayoutScale.WireRadius
                );
                extent = Geometry.Union(extent, run);
            }

            if (wire.Tag is { } tag)
            {
                extent = Geometry.Union(extent, tag);
            }
        }

        return new LayoutResult([.. parts], wires, [], extent, unrouted, labelled.Placement.IsSearched);
    }
}
