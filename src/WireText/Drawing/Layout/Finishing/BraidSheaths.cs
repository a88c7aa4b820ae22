using System.Collections.Immutable;
using WireText.Drawing.Layout.Routing;
using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>Covers the cores of each braided cable from where its braid breaks out at one end to where it does at the other.</summary>
internal static class BraidSheaths
{
    /// <summary>Bare core at an end at which the braid has no tail, in millimetres.</summary>
    private const double BareEnd = 2 * LayoutScale.Pitch;

    /// <summary>How far the braid goes on past its tail, in millimetres, so that the tail is seen to leave the braid and not the core.</summary>
    private const double PastTail = 1.2;

    /// <summary>Cores side by side are a lane apart, and a little more where they turn.</summary>
    private const double Beside = 1.1 * LayoutScale.Pitch;

    /// <summary>A braid's end as a wire: it starts on a core, which is no lug, so it comes from nowhere.</summary>
    public static LayoutWire TailWire(LayoutCable cable, BraidTail tail) =>
        new(
            cable.BraidId ?? cable.Id,
            From: "",
            (tail.IsAtStart ? cable.BraidFrom : cable.BraidTo) ?? "",
            "bare",
            WireRank.Screen,
            Tag: null
        );

    /// <param name="wires">By connection, then by tail; null for one without a path.</param>
    public static ImmutableArray<RoutedBraid> Of(RoutedLattice routed, RoutedWire?[] wires)
    {
        var wiring = routed.Lattice.Wiring;
        var braids = ImmutableArray.CreateBuilder<RoutedBraid>();
        for (var cable = 0; cable < wiring.Cables.Length; cable++)
        {
            if (wiring.Cables[cable].BraidId is null)
            {
                continue;
            }

            var tails = TailsOf(routed, wires, cable);
            var first = BraidCores.FirstRoutedCore(wiring, routed.Routes, cable);
            int[] cores = [.. wiring.Cables[cable].Cores.Select(wiring.ConnectionOf)];
            var sheaths = SheathsOf(
                [.. cores.Select(core => core < 0 ? [] : wires[core]?.Points ?? [])],
                Array.IndexOf(cores, first),
                tails
            );
            braids.Add(new RoutedBraid(wiring.Cables[cable], sheaths, [.. tails.Select(tail => tail.Wire)]));
        }

        return braids.ToImmutable();
    }

    private static (bool IsAtStart, RoutedWire Wire)[] TailsOf(RoutedLattice routed, RoutedWire?[] wires, int cable)
    {
        var connections = routed.Lattice.Wiring.Connections.Length;
        return
        [
            .. routed
                .Tails.Select((tail, i) => (tail.Cable, tail.IsAtStart, Wire: wires[connections + i]))
                .Where(tail => tail.Cable == cable && tail.Wire is not null)
                .Select(tail => (tail.IsAtStart, tail.Wire!)),
        ];
    }

    /// <summary>
    /// By core: the first from end to end or from tail to tail, and of the others what runs beside that; each for itself when
    /// none does. Empty for a core without a path.
    /// </summary>
    private static ImmutableArray<ImmutableArray<Point>> SheathsOf(
        ImmutableArray<Point>[] cores,
        int first,
        (bool IsAtStart, RoutedWire Wire)[] tails
    )
    {
        // So far from the first core the last one runs, where all run side by side.
        var reach = (cores.Length - 1) * Beside;
        ImmutableArray<Point>[] alone = [.. cores.Select((core, i) => SheathOf(core, i == first ? tails : []))];
        var others = cores.Where((_, i) => i != first).ToArray();
        if (first < 0 || Within(alone[first], IsAmongOthers).IsEmpty)
        {
            return [.. alone];
        }

        // A tail leaves the braid, wherever the cores part.
        var lead = Within(alone[first], at => IsAmongOthers(at) || IsAtATail(at));
        return [.. alone.Select((core, i) => i == first ? lead : Within(core, at => IsBeside(at, lead, reach)))];

        bool IsAmongOthers(Point at) => Array.Exists(others, other => IsBeside(at, other, reach));

        bool IsAtATail(Point at) =>
            Array.Exists(tails, tail => Point.Distance(at, tail.Wire.Points[0]) <= PastTail + 1e-6);
    }

    /// <summary>The stretch of a path from the first to the last of its places of a kind.</summary>
    private static ImmutableArray<Point> Within(ImmutableArray<Point> path, Func<Point, bool> isWanted)
    {
        const double Every = 0.5;
        var length = Polyline.Length(path.AsSpan());
        var (from, to) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var walked = 0.0; walked <= length && path.Length > 1; walked += Every)
        {
            if (isWanted(Polyline.At(path.AsSpan(), walked)))
            {
                (from, to) = (Math.Min(from, walked), walked);
            }
        }

        return from < to ? Polyline.Piece(path.AsSpan(), from, to) : [];
    }

    /// <summary>True where a point lies beside a path, not past an end of it.</summary>
    private static bool IsBeside(Point at, ImmutableArray<Point> path, double reach)
    {
        for (var i = 0; i + 1 < path.Length; i++)
        {
            var (from, to) = (path[i], path[i + 1]);
            var length = Point.Distance(from, to);
            var along = (((at.X - from.X) * (to.X - from.X)) + ((at.Y - from.Y) * (to.Y - from.Y))) / length;
            if (along >= -0.5 && along <= length + 0.5 && Box.Spanning(from, to).DistanceTo(at) <= reach)
            {
                return true;
            }
        }

        return false;
    }

    private static ImmutableArray<Point> SheathOf(ImmutableArray<Point> core, (bool IsAtStart, RoutedWire Wire)[] tails)
    {
        var length = Polyline.Length(core.AsSpan());
        var bare = Math.Min(BareEnd, length / 4);
        var (from, to) = (bare, length - bare);
        foreach (var (isAtStart, wire) in tails)
        {
            var at = Polyline.PositionOf(core.AsSpan(), wire.Points[0]);
            (from, to) = isAtStart ? (Math.Max(0, at - PastTail), to) : (from, Math.Min(length, at + PastTail));
        }

        return Polyline.Piece(core.AsSpan(), from, to);
    }
}
