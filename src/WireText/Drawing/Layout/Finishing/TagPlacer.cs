using WireText.Parts;

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
    private const double Clearance = 0.2;

    /// <summary>How far a tag on a part keeps from the middle of its lugs, along and across, so that their names find room. Chosen by eye.</summary>
    private const double RoomForLugNames = 2.7;

    /// <summary>Half of a joint on a case as it is drawn.</summary>
    private const double CaseJointRadius = 1.15;

    /// <summary>What a tag across its wire costs, as millimetres from the middle: any place along it within reach is better.</summary>
    private const double Across = 60;

    /// <summary>What a tag on a part costs, in the same measure.</summary>
    private const double OnPart = 200;

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
        var open = ownParts.SelectMany(parts => parts).Distinct().ToArray();
        var solids = open.ToDictionary(part => part, part => Solids(labelled, part));
        var paper = Solids(labelled, -1);
        foreach (var end in paths.Where(path => path.Length > 0).SelectMany(path => new[] { path[0], path[^1] }))
        {
            // On a case the joints lie where the wires end, lug or not.
            var joint = Box.Around(end, 2 * CaseJointRadius, 2 * CaseJointRadius);
            foreach (var part in open)
            {
                solids[part].Add(joint);
            }
        }

        return Place(paths, sizes, hops, wire => [paper, .. ownParts[wire].Select(part => solids[part])]);
    }

    /// <param name="solidsOf">By wire: what its tag may not touch, besides wires and hops; of several it must be clear of one, best of the first.</param>
    public static TagPlace?[] Place(Point[][] paths, Size?[] sizes, List<Point>[] hops, Func<int, BoxGrid[]> solidsOf)
    {
        var stretches = new Stretches(paths);
        var candidates = new List<Candidate>[paths.Length];
        for (var wire = 0; wire < paths.Length; wire++)
        {
            candidates[wire] = sizes[wire] is { } size
                ? CandidatesOf(wire, paths, size, hops, stretches, solidsOf(wire))
                : [];
        }

        return ChooseGreedily(candidates);
    }

    private static TagPlace?[] ChooseGreedily(List<Candidate>[] candidates)
    {
        var chosen = new TagPlace?[candidates.Length];
        var taken = new BoxGrid();
        foreach (var wire in Enumerable.Range(0, chosen.Length).OrderBy(w => candidates[w].Count).ThenBy(w => w))
        {
            foreach (var candidate in candidates[wire].OrderBy(c => c.Cost))
            {
                if (!taken.IsHit(Geometry.Inflated(candidate.Place.Box, Clearance)))
                {
                    chosen[wire] = candidate.Place;
                    taken.Add(candidate.Place.Box);
                    break;
                }
            }
        }

        return chosen;
    }

    /// <param name="open">The part on which tags may lie, clear of its lugs and its own text; -1 for none.</param>
    private static BoxGrid Solids(LabelledPlacement labelled, int open)
    {
        var solids = new BoxGrid();
        var (wiring, poses) = (labelled.Placement.Wiring, labelled.Placement.Poses);
        for (var part = 0; part < poses.Length; part++)
        {
            if (part != open)
            {
                foreach (var box in wiring.Parts[part].Body.SelectMany(own => Covering(poses[part].OnPage(own))))
                {
                    solids.Add(box);
                }
            }
            else if (wiring.Parts[part].TextBox is { } text)
            {
                solids.Add(poses[part].OnPage(text));
            }

            foreach (var lug in wiring.Parts[part].Lugs)
            {
                var at = poses[part].OnPage(lug.At);
                var room = part == open ? RoomForLugNames : LayoutScale.JointRadius;
                solids.Add(Box.Around(at, 2 * room, 2 * room));
            }

            if (labelled.Labels[part] is { } label)
            {
                solids.Add(label);
            }
        }

        return solids;
    }

    /// <summary>Boxes that cover an outline: of a circle a few strips, so that its corners stay free.</summary>
    private static IEnumerable<Box> Covering(Outline outline)
    {
        const int Strips = 8;
        if (outline is not Outline.Circle { Centre: var centre, Radius: var radius })
        {
            return [Geometry.BoundsOf(outline)];
        }

        var height = 2 * radius / Strips;
        return Enumerable
            .Range(0, Strips)
            .Select(strip =>
            {
                var top = (strip * height) - radius;
                var nearest = Math.Max(0, Math.Max(top, -top - height));
                var half = Math.Sqrt((radius * radius) - (nearest * nearest));
                return new Box(centre.X - half, centre.Y + top, 2 * half, height);
            });
    }

    private static List<Candidate> CandidatesOf(
        int wire,
        Point[][] paths,
        Size size,
        List<Point>[] hops,
        Stretches stretches,
        BoxGrid[] solids
    )
    {
        var found = new List<Candidate>();
        var path = paths[wire];
        var total = 0.0;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            total += Geometry.Distance(path[i], path[i + 1]);
        }

        var walked = 0.0;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            var run = new Stretch(wire, i, path[i], path[i + 1]);
            foreach (var (place, along) in PlacesOn(run, size))
            {
                var isAcross = place.IsVertical == run.IsHorizontal;
                var isOnPart = IsHit(solids[0], place.Box);
                // On a part a tag across its wire would stand in the way of the names of lugs.
                if (!(isAcross && isOnPart) && IsFree(place.Box, run, hops, stretches, solids))
                {
                    var fromMiddle = Math.Abs(walked + along - (total / 2));
                    var cost = fromMiddle + (place.IsVertical ? 8 : 0) + (run.Length < 2 * size.Width ? 6 : 0);
                    found.Add(new Candidate(place, cost + (isAcross ? Across : 0) + (isOnPart ? OnPart : 0)));
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

    private static bool IsFree(Box box, Stretch run, List<Point>[] hops, Stretches stretches, BoxGrid[] solids)
    {
        const double HopRadius = LayoutScale.Pitch / 2;
        if (Array.TrueForAll(solids, grid => IsHit(grid, box)))
        {
            return false;
        }

        foreach (var other in stretches.Near(Geometry.Inflated(box, HopRadius + Clearance)))
        {
            var isRun = other.Wire == run.Wire && other.Index == run.Index;
            if (!isRun && Geometry.Overlap(Geometry.Inflated(box, LayoutScale.WireRadius), Grown(other.Bounds)))
            {
                return false;
            }

            foreach (var hop in hops[other.Wire])
            {
                if (Geometry.Overlap(box, Box.Around(hop, 2 * HopRadius, 2 * HopRadius)))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static bool IsHit(BoxGrid grid, Box tag) => grid.IsHit(Geometry.Inflated(tag, Clearance));

    private static Box Grown(Box stretch) => Geometry.Inflated(stretch, 0.05);
}
