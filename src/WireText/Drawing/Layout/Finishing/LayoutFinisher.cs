using System.Collections.Immutable;
using WireText.Drawing.Layout.Routing;
using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>Makes finished geometry of routes: corner points, hops, tags.</summary>
internal static class LayoutFinisher
{
    public static LayoutResult Finish(RoutedLattice routed)
    {
        var labelled = routed.Lattice.Labelled;
        LayoutWire[] all =
        [
            .. labelled.Placement.Wiring.Connections.Select(c => c.Wire),
            .. routed.Tails.Select(tail => BraidSheaths.TailWire(labelled.Placement.Wiring.Cables[tail.Cable], tail)),
        ];
        var paths = WirePaths.Of(routed);
        var (hops, gaps) = HopPlacer.Place(paths, [.. all.Select(wire => wire.Rank)]);
        var tags = TagPlacer.Place(
            paths,
            [.. all.Select(wire => wire.Tag)],
            hops,
            labelled,
            OwnParts(labelled, all.Length)
        );
        var wires = new RoutedWire?[all.Length];
        for (var i = 0; i < all.Length; i++)
        {
            if (paths[i].Length >= 2)
            {
                wires[i] = new RoutedWire(
                    all[i],
                    [.. paths[i]],
                    [.. hops[i]],
                    tags[i]?.Box,
                    tags[i]?.IsVertical ?? false
                )
                {
                    Gaps = [.. gaps[i]],
                };
            }
        }

        var cores = labelled.Placement.Wiring.Connections.Length;
        return Result(
            labelled,
            [.. wires.Take(cores).OfType<RoutedWire>()],
            BraidSheaths.Of(routed, wires),
            [.. all.Where((_, i) => wires[i] is null).Select(wire => wire.Id).Distinct(StringComparer.Ordinal)]
        );
    }

    /// <summary>By wire: the parts on which it ends; none for the tail of a braid.</summary>
    private static int[][] OwnParts(LabelledPlacement labelled, int count)
    {
        var wiring = labelled.Placement.Wiring;
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                    i < wiring.Connections.Length
                        ? new[] { wiring.Connections[i].From, wiring.Connections[i].To }
                            .Where(end => end >= 0)
                            .Select(end => wiring.Terminals[end].Part)
                            .Distinct()
                            .ToArray()
                        : []
                ),
        ];
    }

    /// <summary>The parts alone, for parts put too far apart for any wire.</summary>
    public static LayoutResult WithoutWires(LabelledPlacement labelled) =>
        Result(labelled, [], [], [.. labelled.Placement.Wiring.Connections.Select(c => c.Wire.Id)]);

    private static LayoutResult Result(
        LabelledPlacement labelled,
        ImmutableArray<RoutedWire> wires,
        ImmutableArray<RoutedBraid> braids,
        ImmutableArray<string> unrouted
    )
    {
        var (wiring, poses) = (labelled.Placement.Wiring, labelled.Placement.Poses);
        var parts = wiring.Parts.Select(
            (part, i) => new PlacedPart(part, poses[i].At, poses[i].Turn, labelled.Labels[i])
        );
        var extent = labelled.Extent();
        foreach (var wire in wires.Concat(braids.SelectMany(braid => braid.Tails)))
        {
            for (var i = 0; i + 1 < wire.Points.Length; i++)
            {
                var run = Box.Spanning(wire.Points[i], wire.Points[i + 1]).Grown(LayoutScale.WireRadius);
                extent = Box.Union(extent, run);
            }

            if (wire.Tag is { } tag)
            {
                extent = Box.Union(extent, tag);
            }
        }

        return new LayoutResult([.. parts], wires, braids, extent, unrouted)
        {
            Found = [.. wiring.Parts.Where((part, i) => labelled.Placement.IsFound[i]).Select(part => part.Id)],
            Slots =
            [
                .. (labelled.Placement.Slots ?? []).Select(row =>
                    row.Select(part => part < 0 ? null : wiring.Parts[part].Id).ToImmutableArray()
                ),
            ],
        };
    }
}
