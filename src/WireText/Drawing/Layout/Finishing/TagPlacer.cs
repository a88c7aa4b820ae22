using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>A place for a tag, and whether its text is turned.</summary>
internal readonly record struct TagPlace(Box Box, bool IsVertical);

/// <summary>
/// Puts each wire's tag on a straight run of the wire itself, near its middle, clear of other wires, hops, lugs, bodies and
/// labels. The wire with the fewest free places chooses first. A wire without any gets none.
/// </summary>
internal static class TagPlacer
{
    private const double EveryHalfPitch = LayoutScale.Pitch / 2;

    /// <summary>Air between a tag and anything else, in millimetres. Chosen by eye.</summary>
    private const double Clearance = 0.2;

    /// <summary>What a tag across its wire costs, as millimetres from the middle: any place along it within reach is better.</summary>
    private const double Across = 60;

    /// <summary>What a tag on a part costs, in the same measure.</summary>
    private const double OnPart = 200;

    /// <summary>How much of a wire's colour is seen beside a tag across it and its stripped ends, at least; in millimetres.</summary>
    private const double Seen = 0.5;

    private readonly record struct Candidate(TagPlace Place, double Cost);

    /// <param name="ownParts">By wire: the indices of the parts on which it ends. Its tag may lie on one of them where it has no other place.</param>
    public static TagPlace?[] Place(
        Point[][] paths,
        Size?[] sizes,
        List<Point>[] hops,
        LabelledPlacement labelled,
        int[][] ownParts
    )
    {
        var solids = new TagSolids(labelled, paths);
        return Place(paths, sizes, hops, (wire, tag) => solids.GroundOf(Air(tag), ownParts[wire]));
    }

    /// <param name="groundOf">What a tag of a wire would lie on, wires and hops aside.</param>
    public static TagPlace?[] Place(
        Point[][] paths,
        Size?[] sizes,
        List<Point>[] hops,
        Func<int, Box, TagGround> groundOf
    )
    {
        var stretches = new Stretches(paths);
        var candidates = new List<Candidate>[paths.Length];
        for (var wire = 0; wire < paths.Length; wire++)
        {
            candidates[wire] = sizes[wire] is { } size
                ? CandidatesOf(wire, paths, size, hops, stretches, groundOf)
                : [];
        }

        return ChooseGreedily(candidates);
    }

    /// <summary>A tag with the air that it keeps round it.</summary>
    public static Box Air(Box tag) => tag.Grown(Clearance);

    private static TagPlace?[] ChooseGreedily(List<Candidate>[] candidates)
    {
        var chosen = new TagPlace?[candidates.Length];
        var taken = new BoxGrid();
        foreach (var wire in Enumerable.Range(0, chosen.Length).OrderBy(w => candidates[w].Count).ThenBy(w => w))
        {
            foreach (var candidate in candidates[wire].OrderBy(c => c.Cost))
            {
                if (!taken.IsHit(candidate.Place.Box.Grown(Clearance)))
                {
                    chosen[wire] = candidate.Place;
                    taken.Add(candidate.Place.Box);
                    break;
                }
            }
        }

        return chosen;
    }

    private static List<Candidate> CandidatesOf(
        int wire,
        Point[][] paths,
        Size size,
        List<Point>[] hops,
        Stretches stretches,
        Func<int, Box, TagGround> groundOf
    )
    {
        var found = new List<Candidate>();
        var path = paths[wire];
        var total = 0.0;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            total += Point.Distance(path[i], path[i + 1]);
        }

        var coloured = total - (2 * Math.Min(LayoutScale.StrippedEnd, LayoutScale.StrippedShare * total));
        var walked = 0.0;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            var run = new Stretch(wire, i, path[i], path[i + 1]);
            foreach (var (place, along) in PlacesOn(run, size))
            {
                var isAcross = place.IsVertical == run.IsHorizontal;
                var ground = groundOf(wire, place.Box);
                var isSeen = !isAcross || coloured - size.Height >= Seen;
                // On a part a tag across its wire would stand in the way of the names of lugs.
                var isWanted = ground == TagGround.Paper || (ground == TagGround.OwnPart && !isAcross);
                if (isWanted && isSeen && IsClear(place.Box, run, hops, stretches))
                {
                    var fromMiddle = Math.Abs(walked + along - (total / 2));
                    var cost = fromMiddle + (place.IsVertical ? 8 : 0) + (run.Length < 2 * size.Width ? 6 : 0);
                    cost += (isAcross ? Across : 0) + (ground == TagGround.OwnPart ? OnPart : 0);
                    found.Add(new Candidate(place, cost));
                }
            }

            walked += run.Length;
        }

        return found;
    }

    /// <summary>Along the run at every half pitch, then across it: what is too short for the word may be long enough for its height.</summary>
    private static IEnumerable<(TagPlace Place, double Along)> PlacesOn(Stretch run, Size size)
    {
        if (!run.IsVertical && !run.IsHorizontal)
        {
            yield break;
        }

        foreach (var (length, isVertical) in new[] { (size.Width, run.IsVertical), (size.Height, !run.IsVertical) })
        {
            var (width, height) = isVertical ? (size.Height, size.Width) : (size.Width, size.Height);
            for (var along = 0.0; along <= run.Length - length; along += EveryHalfPitch)
            {
                yield return (At(along + (length / 2)), along + (length / 2));
            }

            if (run.Length >= length)
            {
                yield return (At(run.Length / 2), run.Length / 2);
            }

            TagPlace At(double middle) => new(Box.Around(PointOn(run, middle), width, height), isVertical);
        }
    }

    private static Point PointOn(Stretch run, double along)
    {
        var share = along / run.Length;
        return new Point(
            run.From.X + ((run.To.X - run.From.X) * share),
            run.From.Y + ((run.To.Y - run.From.Y) * share)
        );
    }

    /// <summary>True where no other wire and no hop lies under a tag.</summary>
    private static bool IsClear(Box box, Stretch run, List<Point>[] hops, Stretches stretches)
    {
        const double HopRadius = LayoutScale.Pitch / 2;
        foreach (var number in stretches.NearForNow(box.Grown(HopRadius + Clearance)))
        {
            var other = stretches.All[number];
            var isRun = other.Wire == run.Wire && other.Index == run.Index;
            if (!isRun && box.Grown(LayoutScale.WireRadius).Overlaps(Grown(other.Bounds)))
            {
                return false;
            }

            foreach (var hop in hops[other.Wire])
            {
                if (box.Overlaps(Box.Around(hop, 2 * HopRadius, 2 * HopRadius)))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static Box Grown(Box stretch) => stretch.Grown(0.05);
}
