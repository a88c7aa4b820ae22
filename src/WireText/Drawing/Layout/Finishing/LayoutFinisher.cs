using System.Collections.Immutable;
using WireText.Drawing.Layout.Routing;
using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>Makes finished geometry of routes: corner points, hops, tags.</summary>
internal static class LayoutFinisher
{
    /// <summary>A larger lattice than this is not kept with its layout: some ten megabytes.</summary>
    internal const int MostNodesKept = 250_000;

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
        var wires = new RoutedWire?[all.Length];
        for (var i = 0; i < all.Length; i++)
        {
            if (paths[i].Length >= 2)
            {
                wires[i] = new RoutedWire(all[i], [.. paths[i]], [.. hops[i]], Tag: null, IsTagVertical: false)
                {
                    Gaps = [.. gaps[i]],
                };
            }
        }

        SetTags(labelled, wires);
        var cores = labelled.Placement.Wiring.Connections.Length;
        return Result(
            labelled,
            [.. wires.Take(cores).OfType<RoutedWire>()],
            BraidSheaths.Of(routed, wires),
            [.. all.Where((_, i) => wires[i] is null).Select(wire => wire.Id).Distinct(StringComparer.Ordinal)]
        ) with
        {
            Routed = routed.Lattice.NodeCount <= MostNodesKept ? routed : null,
        };
    }

    /// <summary>What was laid, with the colours and tags of a wiring that has the same parts and paths.</summary>
    public static LayoutResult Retag(Wiring wiring, LayoutResult laid)
    {
        var found = laid.Found.ToHashSet(StringComparer.Ordinal);
        var placement = new PartPlacement(
            wiring,
            [.. laid.Parts.Select(part => part.Pose)],
            [.. laid.Parts.Select(part => found.Contains(part.Part.Id))],
            Slots: null
        );
        var labelled = new LabelledPlacement(placement, [.. laid.Parts.Select(part => part.Label)]);
        var paths = laid.Wires.ToDictionary(wire => wire.Wire.Id, StringComparer.Ordinal);
        RoutedWire?[] wires =
        [
            .. wiring.Connections.Select(c =>
                paths.GetValueOrDefault(c.Wire.Id) is { } path
                    ? path with
                    {
                        Wire = c.Wire,
                        Tag = null,
                        IsTagVertical = false,
                    }
                    : null
            ),
            .. laid.Braids.SelectMany(braid => braid.Tails),
        ];
        SetTags(labelled, wires);
        var cores = wires.Take(wiring.Connections.Length).OfType<RoutedWire>();
        return Result(labelled, [.. cores], laid.Braids, laid.Unrouted) with
        {
            Slots = laid.Slots,
            Routed = laid.Routed,
        };
    }

    /// <param name="wires">By connection, then by tail of a braid; null for one without a path.</param>
    private static void SetTags(LabelledPlacement labelled, RoutedWire?[] wires)
    {
        var tags = TagPlacer.Place(
            [.. wires.Select(wire => wire is null ? [] : wire.Points.ToArray())],
            [.. wires.Select(wire => wire?.Wire.Tag)],
            [.. wires.Select(wire => wire is null ? [] : wire.Hops.ToList())],
            labelled,
            OwnParts(labelled, wires.Length)
        );
        for (var i = 0; i < wires.Length; i++)
        {
            if (tags[i] is { } tag)
            {
                wires[i] = wires[i]! with { Tag = tag.Box, IsTagVertical = tag.IsVertical };
            }
        }
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
