using System.Collections.Immutable;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>Where lugs sit on a body and which way they point.</summary>
internal static class LugPlaces
{
    /// <summary>A second side is natural too when the edge is as near as this.</summary>
    private const double NearEdge = 4;

    /// <summary>A lug this near to the line straight out of another is in its way.</summary>
    private const double InTheWay = 1.9;

    private static readonly ImmutableArray<Side> Sides = [Side.North, Side.East, Side.South, Side.West];

    /// <summary>The given places, and for lugs without one, places along the lower and then the upper edge.</summary>
    public static ImmutableArray<Point> Places(FaceBody body, ImmutableArray<Parts.Terminal> terminals)
    {
        var missing = terminals.Count(terminal => terminal.At is null);
        var perRow = Math.Max((int)(2 * body.Half.Width / FaceSizes.LugPitch), (missing + 1) / 2);
        var below = Math.Min(missing, perRow);
        var places = ImmutableArray.CreateBuilder<Point>(terminals.Length);
        var next = 0;
        foreach (var terminal in terminals)
        {
            if (terminal.At is { } given)
            {
                places.Add(new Point(Limit(given.X), Limit(given.Y)));
                continue;
            }

            var isBelow = next < below;
            var (index, count) = isBelow ? (next, below) : (next - below, missing - below);
            var x = (index - ((count - 1) / 2.0)) * FaceSizes.LugPitch;
            var y = body.Half.Height + FaceSizes.LugReach;
            places.Add(new Point(x, isBelow ? y : -y));
            next++;
        }

        return places.ToImmutable();
    }

    /// <summary>The sides by which a wire may leave lug <paramref name="index"/>; the first is the one it points to.</summary>
    public static ImmutableArray<Side> Exits(FaceBody body, ImmutableArray<Point> places, int index)
    {
        var at = places[index];
        return body.Contains(at, 0) ? ExitsFromInside(body, places, index) : ExitsFromOutside(body, places, index);
    }

    private static ImmutableArray<Side> ExitsFromOutside(FaceBody body, ImmutableArray<Point> places, int index)
    {
        var at = places[index];
        var outward = Outward(body, at);
        var exits = ImmutableArray.Create(outward);
        foreach (var side in Sides)
        {
            if (IsAcross(side, outward) && !HasLugTowards(places, index, side) && !body.IsInTheWay(side, at))
            {
                exits = exits.Add(side);
            }
        }

        return exits;
    }

    private static Side Outward(FaceBody body, Point at)
    {
        var (past, beside) = (Math.Abs(at.Y) - body.Half.Height, Math.Abs(at.X) - body.Half.Width);
        return past >= beside ? (at.Y < 0 ? Side.North : Side.South) : (at.X < 0 ? Side.West : Side.East);
    }

    private static ImmutableArray<Side> ExitsFromInside(FaceBody body, ImmutableArray<Point> places, int index)
    {
        var at = places[index];
        var byEase = Sides
            .OrderBy(side => HasLugTowards(places, index, side) ? 1 : 0)
            .ThenBy(side => HasTabsOn(body, places, side) ? 1 : 0)
            .ThenBy(side => Math.Round(body.DepthTowards(side, at), 3))
            .ThenBy(side => at.Y > 0 == (side == Side.South) ? 0 : 1)
            .ThenBy(side => (int)side)
            .ToImmutableArray();
        return
        [
            byEase[0],
            .. byEase
                .Skip(1)
                .Where(side => body.DepthTowards(side, at) <= NearEdge && !HasLugTowards(places, index, side)),
        ];
    }

    /// <summary>True when lugs outside the body stand on a side: their wires need the way.</summary>
    private static bool HasTabsOn(FaceBody body, ImmutableArray<Point> places, Side side) =>
        places.Any(place => !body.Contains(place, 0) && Outward(body, place) == side);

    /// <summary>True when another lug lies straight out of this one on a side.</summary>
    private static bool HasLugTowards(ImmutableArray<Point> places, int index, Side side)
    {
        var at = places[index];
        for (var other = 0; other < places.Length; other++)
        {
            var away = places[other] - at;
            var (along, across) = side.Split(away);
            if (other != index && along > 0 && Math.Abs(across) < InTheWay)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsAcross(Side a, Side b) => ((int)a + (int)b) % 2 == 1;

    private static double Limit(double value) =>
        double.IsFinite(value) ? Math.Clamp(value, -FaceSizes.LargestSide, FaceSizes.LargestSide) : 0;
}
