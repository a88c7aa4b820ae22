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

    private readonly record struct Candidate(TagPlace Place, double Cost);

    public static TagPlace?[] Place(Point[][] paths, Size?[] sizes, List<Point>[] hops, LabelledPlacement labelled)
    {
        var stretches = new Stretches(paths);
        var solids = Solids(labelled);
        var candidates = new List<Candidate>[paths.Length];
        for (var wire = 0; wire < paths.Length; wire++)
        {
            candidates[wire] = sizes[wire] is { } size ? CandidatesOf(wire, paths, size, hops, stretches, solids) : [];
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

    private static BoxGrid Solids(LabelledPlacement labelled)
    {
        var solids = new BoxGrid();
        var (wiring, poses) = (labelled.Placement.Wiring, labelled.Placement.Poses);
        for (var part = 0; part < poses.Length; part++)
        {
            foreach (var outline in wiring.Parts[part].Body)
            {
                solids.Add(Geometry.BoundsOf(poses[part].OnPage(outline)));
            }

            foreach (var lug in wiring.Parts[part].Lugs)
            {
                var at = poses[part].OnPage(lug.At);
                solids.Add(Box.Around(at, 2 * LayoutScale.JointRadius, 2 * LayoutScale.JointRadius));
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
        BoxGrid solids
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

    private static bool IsFree(Box box, Stretch run, List<Point>[] hops, Stretches stretches, BoxGrid solids)
    {
        const double HopRadius = LayoutScale.Pitch / 2;
        if (solids.IsHit(Geometry.Inflated(box, Clearance)))
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
