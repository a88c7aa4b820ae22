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

    private readonly record struct Candidate(TagPlace Place, double Cost);

    /// <param name="jumped">By wire: the index of the part whose lugs it joins to each other, or -1. Its tag may lie on that part.</param>
    public static TagPlace?[] Place(
        Point[][] paths,
        Size?[] sizes,
        List<Point>[] hops,
        LabelledPlacement labelled,
        int[] jumped
    )
    {
        var solids = jumped.Append(-1).Distinct().ToDictionary(part => part, part => Solids(labelled, part));
        foreach (var end in paths.Where(path => path.Length > 0).SelectMany(path => new[] { path[0], path[^1] }))
        {
            // On a case the joints lie where the wires end, lug or not.
            var joint = Box.Around(end, 2 * CaseJointRadius, 2 * CaseJointRadius);
            foreach (var part in jumped.Where(part => part >= 0).Distinct())
            {
                solids[part].Add(joint);
            }
        }

        return Place(paths, sizes, hops, wire => jumped[wire] < 0 ? [solids[-1]] : [solids[-1], solids[jumped[wire]]]);
    }

    /// <param name="solidsOf">By wire: what its tag may not touch, besides wires and hops; of several it must be clear of one.</param>
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
                foreach (var outline in wiring.Parts[part].Body)
                {
                    solids.Add(Geometry.BoundsOf(poses[part].OnPage(outline)));
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
            var upright = run.IsVertical;
            var room = (upright || run.IsHorizontal) ? run.Length - size.Width : -1;
            for (var along = 0.0; along <= room; along += EveryHalfPitch)
            {
                var centre = PointOn(run, along + (size.Width / 2));
                var box = upright
                    ? Box.Around(centre, size.Height, size.Width)
                    : Box.Around(centre, size.Width, size.Height);
                if (IsFree(box, run, hops, stretches, solids))
                {
                    var fromMiddle = Math.Abs(walked + along + (size.Width / 2) - (total / 2));
                    var cost = fromMiddle + (upright ? 8 : 0) + (run.Length < 2 * size.Width ? 6 : 0);
                    found.Add(new Candidate(new TagPlace(box, upright), cost));
                }
            }

            walked += run.Length;
        }

        return found;
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
        if (Array.TrueForAll(solids, grid => grid.IsHit(Geometry.Inflated(box, Clearance))))
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

    private static Box Grown(Box stretch) => Geometry.Inflated(stretch, 0.05);
}
