using WireText.Geometry;

namespace WireText.Drawing.Layout.Placement;

/// <summary>Finds the free place and turn for one part with the shortest straight runs to what it joins.</summary>
internal sealed class FreeSpots(Wiring wiring, Pose?[] poses)
{
    private const double Pitch = LayoutScale.Pitch;

    /// <summary>How far from the wished place a spot is looked for, in pitches; further out the step is coarser.</summary>
    private const int Near = 24;
    private const int Far = 400;

    private readonly List<Box> taken = [];

    /// <summary>Puts a part beside what it joins. Least lead length wins, ties go to the smaller y, x, then turn.</summary>
    /// <param name="air">Free room around it, in millimetres.</param>
    public Pose Find(int part, double air)
    {
        CollectTaken(part);
        var targets = TargetsOf(part);
        var middle = MiddleOf(targets);
        var turns = wiring.Parts[part].GivenTurn is { } given ? [given] : new[] { 0, 90, 180, 270 };
        return BehindItsLike(part, air, targets, turns)
            ?? BestWithin(part, air, targets, middle, turns, Near, 1)
            ?? BestWithin(part, air, targets, middle, turns, Far, 8)
            ?? new Pose(BelowAll(part, turns[0]), turns[0]);
    }

    /// <summary>Behind the last of the parts that join the same lugs, its leads on the same sides; null when that place is taken.</summary>
    private Pose? BehindItsLike(int part, double air, List<(Point Own, Point Target)> targets, int[] turns)
    {
        if (wiring.Parallel.Behind(part, poses) is not { } behind)
        {
            return null;
        }

        var best = turns
            .Where(turn => (turn - behind.Turn) % 180 == 0)
            .Select(turn => new Pose(PartBounds.Snapped(wiring.Parts[part], turn, behind.At), turn))
            .OrderBy(pose => LengthAt(targets, pose.At, pose.Turn, behind.At))
            .Cast<Pose?>()
            .FirstOrDefault();
        return best is { } pose && IsFree(PartBounds.Of(wiring.Parts[part], pose.Turn).Grown(air).Shifted(pose.At))
            ? best
            : null;
    }

    private void CollectTaken(int part)
    {
        taken.Clear();
        for (var other = 0; other < poses.Length; other++)
        {
            if (other != part && poses[other] is { } pose)
            {
                taken.Add(PartBounds.OnPage(wiring.Parts[other], pose));
            }
        }
    }

    private List<(Point Own, Point Target)> TargetsOf(int part)
    {
        var targets = new List<(Point, Point)>();
        foreach (var connection in wiring.Connections.Where(c => c.CanRoute))
        {
            Add(connection.From, connection.To);
            Add(connection.To, connection.From);
        }

        return targets;

        void Add(int own, int other)
        {
            var (mine, its) = (wiring.Terminals[own], wiring.Terminals[other]);
            if (mine.Part == part && its.Part != part && poses[its.Part] is { } pose)
            {
                var away = its.IsSurface ? default : Outwards(pose, other);
                targets.Add((wiring.Own(own), pose.OnPage(wiring.Own(other)) + away));
            }
        }
    }

    private Point Outwards(Pose pose, int terminal)
    {
        var (part, lug, _) = wiring.Terminals[terminal];
        var exits = wiring.Parts[part].Lugs[lug].Exits;
        if (exits.IsDefaultOrEmpty)
        {
            return default;
        }

        return pose.OnPage(exits[0]).Towards(2 * Pitch);
    }

    private Point MiddleOf(List<(Point Own, Point Target)> targets)
    {
        if (targets.Count > 0)
        {
            return new Point(targets.Average(t => t.Target.X), targets.Average(t => t.Target.Y));
        }

        return taken.Count == 0 ? default : new Point(taken.Min(b => b.X), taken.Max(b => b.Bottom) + 20);
    }

    private Pose? BestWithin(
        int part,
        double air,
        List<(Point Own, Point Target)> targets,
        Point middle,
        int[] turns,
        int reach,
        int step
    )
    {
        (double Length, double Y, double X, int Turn)? best = null;
        foreach (var turn in turns)
        {
            var bounds = PartBounds.Of(wiring.Parts[part], turn).Grown(air);
            var start = PartBounds.Snapped(wiring.Parts[part], turn, middle);
            for (var y = -reach; y <= reach; y += step)
            {
                for (var x = -reach; x <= reach; x += step)
                {
                    var at = start + new Point(x * Pitch, y * Pitch);
                    var key = (LengthAt(targets, at, turn, middle), at.Y, at.X, turn);
                    if ((best is null || key.CompareTo(best.Value) < 0) && IsFree(bounds.Shifted(at)))
                    {
                        best = key;
                    }
                }
            }
        }

        return best is { } found ? new Pose(new Point(found.X, found.Y), found.Turn) : null;
    }

    private static double LengthAt(List<(Point Own, Point Target)> targets, Point at, int turn, Point middle)
    {
        if (targets.Count == 0)
        {
            return Math.Abs(at.X - middle.X) + Math.Abs(at.Y - middle.Y);
        }

        var length = 0.0;
        foreach (var (own, target) in targets)
        {
            var here = at + own.Turned(turn);
            var (dx, dy) = (Math.Abs(here.X - target.X), Math.Abs(here.Y - target.Y));
            length += dx + dy + (Math.Min(dx, dy) > Pitch / 2 ? 6 : 0);
        }

        return Math.Round(length, 3);
    }

    private bool IsFree(Box box) => !taken.Exists(other => other.Overlaps(box));

    private Point BelowAll(int part, int turn)
    {
        var bottom = taken.Count == 0 ? 0 : taken.Max(box => box.Bottom);
        var left = taken.Count == 0 ? 0 : taken.Min(box => box.X);
        var bounds = PartBounds.Of(wiring.Parts[part], turn);
        return PartBounds.Snapped(wiring.Parts[part], turn, new Point(left - bounds.X, bottom + 20 - bounds.Y));
    }
}
