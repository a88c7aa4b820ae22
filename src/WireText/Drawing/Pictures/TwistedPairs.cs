using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>
/// The paths of two cores that are twisted: where they run side by side they change places again and again, once over and once
/// under each other.
/// </summary>
internal static class TwistedPairs
{
    /// <summary>From one crossing to the next, and how long one is along the run, in millimetres. Chosen by eye.</summary>
    private const double Lay = 5;
    private const double Cross = 2.4;

    /// <summary>Two runs this near to each other run side by side: a lane, and a little more.</summary>
    private const double Beside = 1.2 * Tokens.LanePitch;

    /// <summary>What is left straight at both ends of a run that two cores have in common.</summary>
    private const double Straight = 1.5;

    /// <summary>Where two strands change places: the corners of the change on each, and whether the first lies on top.</summary>
    internal sealed record Twist(Segment First, Segment Second, bool IsFirstOver);

    /// <summary>A cable of two twisted cores, with their paths as they are drawn.</summary>
    /// <param name="Twists">Where they change places; empty where they do not run side by side far enough.</param>
    internal sealed record Pair(Cable Cable, RoutedWire First, RoutedWire Second, ImmutableArray<Twist> Twists);

    /// <summary>The cables of two cores that are twisted and not in a braid.</summary>
    public static IEnumerable<Pair> In(Scene scene)
    {
        var crossings = scene.Wires.SelectMany(wire => wire.Route.Hops.Concat(wire.Route.Gaps));
        Box[] hops = [.. crossings.Select(at => Box.Around(at, 2 * Tokens.HopRadius, 2 * Tokens.HopRadius))];
        foreach (
            var cable in scene.Circuit.Cables.Where(cable => cable is { IsTwisted: true, Braid: null, Cores.Length: 2 })
        )
        {
            if (RouteOf(cable.Cores[0]) is { } first && RouteOf(cable.Cores[1]) is { } second)
            {
                Box[] taken = [.. hops, .. new[] { first.Tag, second.Tag }.OfType<Box>()];
                var (ofFirst, ofSecond, twists) = Of(first.Points, second.Points, taken);
                yield return new Pair(
                    cable,
                    first with
                    {
                        Points = ofFirst,
                    },
                    second with
                    {
                        Points = ofSecond,
                    },
                    twists
                );
            }
        }

        RoutedWire? RouteOf(int wire) => scene.Wires.FirstOrDefault(other => other.Wire.Index == wire)?.Route;
    }

    /// <summary>The two paths with their crossings in them.</summary>
    /// <param name="taken">Where no crossing may be: tags, hops and gaps of either.</param>
    private static (ImmutableArray<Point> First, ImmutableArray<Point> Second, ImmutableArray<Twist> Twists) Of(
        ImmutableArray<Point> first,
        ImmutableArray<Point> second,
        IReadOnlyList<Box> taken
    )
    {
        var twists = ImmutableArray.CreateBuilder<Twist>();
        var (ofFirst, ofSecond) = (new Detours(first), new Detours(second));
        for (var i = 0; i + 1 < first.Length; i++)
        {
            for (var j = 0; j + 1 < second.Length; j++)
            {
                AddTwists(new Segment(first[i], first[i + 1]), i, new Segment(second[j], second[j + 1]), j);
            }
        }

        return (ofFirst.Path(), ofSecond.Path(), twists.ToImmutable());

        void AddTwists(Segment one, int oneIndex, Segment other, int otherIndex)
        {
            if (CommonOf(one, other) is not var (from, to))
            {
                return;
            }

            var way = default(Point).Towards(one.To - one.From, 1);
            var aside = Across(one, other);
            var places = PlacesBetween(from, to, way, aside, taken);
            // In pairs, so that each core leaves the run on the lane on which it came.
            foreach (var (number, at) in places.Take(places.Count - (places.Count % 2)).Index())
            {
                var (start, end) = (at - Scaled(way, Cross / 2), at + Scaled(way, Cross / 2));
                var isBack = number % 2 == 1;
                var onFirst = isBack ? new Segment(start + aside, end) : new Segment(start, end + aside);
                var onSecond = isBack ? new Segment(start, end + aside) : new Segment(start + aside, end);
                ofFirst.Add(oneIndex, onFirst);
                ofSecond.Add(otherIndex, onSecond);
                twists.Add(new Twist(onFirst, onSecond, IsFirstOver: !isBack));
            }
        }
    }

    private static List<Point> PlacesBetween(Point from, Point to, Point way, Point aside, IReadOnlyList<Box> taken)
    {
        var places = new List<Point>();
        var length = Point.Distance(from, to);
        for (var walked = Straight + (Cross / 2); walked <= length - Straight - (Cross / 2); walked += Lay)
        {
            var at = from + Scaled(way, walked);
            var (start, end) = (at - Scaled(way, Cross / 2), at + Scaled(way, Cross / 2));
            var covered = Box.Union(Box.Spanning(start, end), Box.Spanning(start + aside, end + aside));
            if (!taken.Any(box => box.Overlaps(covered.Grown(Tokens.WireCore))))
            {
                places.Add(at);
            }
        }

        return places;
    }

    /// <summary>The stretch of the first on which both run side by side, in its direction; null where they do not.</summary>
    private static (Point From, Point To)? CommonOf(Segment one, Segment other)
    {
        var way = default(Point).Towards(one.To - one.From, 1);
        var isAlong = Math.Abs(way.X) > 0.999 || Math.Abs(way.Y) > 0.999;
        var its = default(Point).Towards(other.To - other.From, 1);
        var isParallel = Math.Abs((way.X * its.Y) - (way.Y * its.X)) < 1e-6;
        var apart = Across(one, other);
        if (!isAlong || !isParallel || Length(apart) is < 0.5 or > Beside)
        {
            return null;
        }

        double Along(Point point) => ((point - one.From).X * way.X) + ((point - one.From).Y * way.Y);
        var (a, b) = (Along(other.From), Along(other.To));
        var (from, to) = (Math.Max(0, Math.Min(a, b)), Math.Min(Point.Distance(one.From, one.To), Math.Max(a, b)));
        return to - from < Lay ? null : (one.From + Scaled(way, from), one.From + Scaled(way, to));
    }

    /// <summary>The way straight across from the first to the other.</summary>
    private static Point Across(Segment one, Segment other)
    {
        var way = default(Point).Towards(one.To - one.From, 1);
        var to = other.From - one.From;
        var along = (to.X * way.X) + (to.Y * way.Y);
        return to - Scaled(way, along);
    }

    private static double Length(Point point) => Point.Distance(default, point);

    private static Point Scaled(Point point, double by) => new(point.X * by, point.Y * by);

    /// <summary>A path, and what is put into its stretches.</summary>
    private sealed class Detours(ImmutableArray<Point> path)
    {
        private readonly List<(int Stretch, Segment Way)> detours = [];

        public void Add(int stretch, Segment way) => detours.Add((stretch, way));

        public ImmutableArray<Point> Path()
        {
            var points = ImmutableArray.CreateBuilder<Point>();
            for (var i = 0; i < path.Length; i++)
            {
                points.Add(path[i]);
                var here = detours
                    .Where(detour => detour.Stretch == i)
                    .Select(detour => Directed(detour.Way, path[i]))
                    .OrderBy(way => Point.Distance(path[i], way.From));
                foreach (var way in here)
                {
                    points.Add(way.From);
                    points.Add(way.To);
                }
            }

            return points.ToImmutable();
        }

        private static Segment Directed(Segment way, Point start) =>
            Point.Distance(start, way.From) <= Point.Distance(start, way.To) ? way : new Segment(way.To, way.From);
    }
}
