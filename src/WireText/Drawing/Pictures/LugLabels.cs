using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>
/// Finds a place for the name of every lug of a part at once, when all wires are known: clear of wires, joints and other words,
/// nearer to its own lug than to any other, so that nobody has to guess whose name it is.
/// </summary>
internal sealed class LugLabels
{
    /// <summary>What makes a place no place: on something, or nearer to another lug. More than all soft costs together.</summary>
    private const double Hard = 1000;

    /// <summary>A name must be nearer to its own lug than to any other by this, in millimetres.</summary>
    private const double Nearer = 0.4;

    /// <summary>How far from its lug a name is looked for, and in which steps, in millimetres.</summary>
    internal const double Reach = 3.4;
    private const double Step = 0.3;

    /// <summary>Places that are kept for each name, the best of them: names are chosen against each other in bounded work. Chosen.</summary>
    internal const int MostCandidates = 400;

    /// <summary>With so many places on each side that nothing speaks against, no more are looked at there.</summary>
    private const int EnoughGood = 60;
    private const int MostSweeps = 8;

    /// <summary>Two lugs, such as tip and sleeve, may have their names on both sides of them.</summary>
    private const int LeastInARow = 3;

    /// <summary>For each millimetre from its lug; the measure of the soft costs below. All chosen by eye.</summary>
    private const double PerMillimetre = 10;

    /// <summary>Nearly as near to another lug as to its own.</summary>
    private const double AsNearToAnother = 8;

    /// <summary>A lug more than so many times as far away as the own one is nobody's guess.</summary>
    private const double NearlyAsNear = 1.6;

    /// <summary>Lugs farther from a name than this cost it nothing, in millimetres: its own is never farther than the reach.</summary>
    internal const double Unseen = 0.1 + (NearlyAsNear * Reach);

    /// <summary>So near to the middle of a joint on a case, in millimetres, that the joint could be a lug of that name.</summary>
    private const double FromJoints = 3 + (Tokens.SurfaceJointDiameter / 2);
    private const double BesideJoint = 12;

    /// <summary>On another side of its lug than its neighbours' names.</summary>
    private const double OtherSideThanItsRow = 4;

    /// <summary>Two names on one line nearer than this read as one word, in millimetres.</summary>
    private const double WordGap = 1.3;
    private const double ReadsAsOne = 16;

    private readonly ImmutableArray<LugSurroundings> lugs;
    private readonly Candidate[][] candidates;
    private readonly int[] chosen;

    private readonly record struct Candidate(Box Box, double Cost, double Distance, int WayX, int WayY, Side Side);

    private LugLabels(ImmutableArray<LugSurroundings> lugs)
    {
        this.lugs = lugs;
        candidates = [.. lugs.Select(CandidatesOf)];
        chosen = new int[lugs.Length];
    }

    /// <summary>The side of a lug on which a box lies, or most of it.</summary>
    public static Side SideOf(Box box, Point lug)
    {
        var (left, right) = (lug.X - box.Right, box.X - lug.X);
        var (above, below) = (lug.Y - box.Bottom, box.Y - lug.Y);
        var most = Math.Max(Math.Max(left, right), Math.Max(above, below));
        return most == above ? Side.North
            : most == below ? Side.South
            : most == left ? Side.West
            : Side.East;
    }

    /// <summary>A place for the label of a lug.</summary>
    /// <param name="IsClear">False when everything near the lug is taken: the label would lie on something.</param>
    /// <param name="Leader">The line from the lug to a label that stands apart from it; null for one beside it.</param>
    public readonly record struct Spot(Box Box, bool IsClear, Segment? Leader = null);

    /// <summary>A place for the label of each lug, in their order; none for a part that names its only lug, or whose two leads are alike: beside a row of lugs their numbers would be read as its own.</summary>
    public static ImmutableArray<Spot> Place(Scene scene, PlacedFace part, LabelSpace space, NameSides sides)
    {
        var look = scene.LookOf(part);
        var isEitherWayRound = look.HangsByTwoLeads(scene.PartOf(part)) && !look.IsPolarised(scene.PartOf(part));
        if (isEitherWayRound || part.Face.Lugs.Length + part.Face.Surfaces.Length < 2)
        {
            return [];
        }

        var around = LugSurroundings.Of(scene, part, space, sides);
        return scene.Options.KnownLugLabels.Of(part.Placed.Part.Id, around, () => new LugLabels(around).Spots());
    }

    private ImmutableArray<Spot> Spots()
    {
        ChooseByRows();
        return [.. chosen.Select((choice, lug) => SpotOf(lug, candidates[lug][choice]))];
    }

    /// <summary>How far the names of a part's lugs hang below their line; the same for all, so that they stand on one line.</summary>
    public static double DescentOf(PlacedFace part) =>
        part.Face.Lugs.Select(lug => DrawnText.Descent(lug.Label, Tokens.LugLabelSize)).DefaultIfEmpty(0).Max();

    private Spot SpotOf(int lug, Candidate candidate) =>
        new(
            candidate.Box,
            candidate.Cost < Hard
                && Enumerable.Range(0, lug).All(other => !candidate.Box.Overlaps(candidates[other][chosen[other]].Box))
        );

    /// <summary>
    /// Names of a row of three lugs or more stand on one side of them, the best one on which each has a place; where there is none,
    /// on the side on which most have one, and the others where they can.
    /// </summary>
    private void ChooseByRows()
    {
        var all = candidates.ToArray();
        var rows = Rows()
            .Where(row => row.Length >= LeastInARow)
            .Select(row => (Lugs: row, Sides: new Queue<Side>(SidesFor(row).Append(SideOfMost(row)))))
            .ToList();
        foreach (var (row, sides) in rows)
        {
            KeepTo(row, sides.Dequeue());
        }

        Choose();
        for (var torn = Torn(); torn >= 0; torn = Torn())
        {
            var (row, sides) = rows[torn];
            if (sides.Count > 0)
            {
                KeepTo(row, sides.Dequeue());
            }
            else
            {
                var loose = row.First(IsTorn);
                candidates[loose] = all[loose];
            }

            Choose();
        }

        // But for the names that have no place there.
        void KeepTo(ImmutableArray<int> row, Side kept)
        {
            foreach (var lug in row)
            {
                candidates[lug] =
                    LeastOn(all[lug], kept) < Hard
                        ? [.. all[lug].Where(candidate => candidate.Side == kept)]
                        : all[lug];
            }
        }

        // A row that is kept to a side on which some name has no place beside the others' names.
        int Torn() => rows.FindIndex(row => row.Lugs.Any(IsTorn));

        bool IsTorn(int lug) => candidates[lug].Length < all[lug].Length && CostOf(lug) >= Hard;
    }

    /// <summary>The lugs on a body and those that reach out of it stand in rows of their own.</summary>
    private IEnumerable<ImmutableArray<int>> Rows() =>
        from kind in Enumerable.Range(0, lugs.Length).GroupBy(lug => lugs[lug].Lug.Look)
        let own = kind.ToImmutableArray()
        from row in LugRows.Of([.. own.Select(lug => lugs[lug].At)])
        select row.Select(lug => own[lug]).ToImmutableArray();

    /// <summary>The sides on which each name of a row has a place, first the one where they stand on a part alike, then the best.</summary>
    private IEnumerable<Side> SidesFor(ImmutableArray<int> row) =>
        Enum.GetValues<Side>()
            .Select(side => (Side: side, Cost: row.Sum(lug => LeastOn(candidates[lug], side))))
            .Where(side => side.Cost < Hard)
            .OrderBy(side => row.Count(lug => lugs[lug].Liked is { } liked && liked != side.Side))
            .ThenBy(side => side.Cost)
            .ThenBy(side => side.Side)
            .Select(side => side.Side)
            .ToList();

    /// <summary>The side on which the most names of a row have a place, of equals the one where they stand on a part alike, then the best.</summary>
    private Side SideOfMost(ImmutableArray<int> row) =>
        Enum.GetValues<Side>()
            .OrderByDescending(side => row.Count(lug => LeastOn(candidates[lug], side) < Hard))
            .ThenBy(side => row.Count(lug => lugs[lug].Liked is { } liked && liked != side))
            .ThenBy(side => row.Sum(lug => Math.Min(Hard, LeastOn(candidates[lug], side))))
            .ThenBy(side => side)
            .First();

    private static double LeastOn(Candidate[] places, Side side) =>
        places.Where(candidate => candidate.Side == side).Select(candidate => candidate.Cost).FirstOrDefault(Hard);

    /// <summary>What the chosen place of a name costs, given the others'.</summary>
    private double CostOf(int lug)
    {
        var mine = candidates[lug][chosen[lug]];
        return mine.Cost
            + Enumerable
                .Range(0, lugs.Length)
                .Where(other => other != lug)
                .Sum(other => Between(lug, mine, other, candidates[other][chosen[other]]));
    }

    /// <summary>The lugs with the fewest good places first; then each again, given the others, while that is better.</summary>
    private void Choose()
    {
        Array.Fill(chosen, -1);
        var order = Enumerable
            .Range(0, lugs.Length)
            .OrderBy(lug => candidates[lug].Count(candidate => candidate.Cost < Hard))
            .ThenBy(lug => lug)
            .ToArray();
        for (var (sweep, changed) = (0, true); changed && sweep < MostSweeps; sweep++)
        {
            changed = false;
            foreach (var lug in order)
            {
                var best = BestOf(lug);
                changed |= best != chosen[lug];
                chosen[lug] = best;
            }
        }
    }

    private int BestOf(int lug)
    {
        var (best, least) = (0, double.PositiveInfinity);
        for (var i = 0; i < candidates[lug].Length; i++)
        {
            var cost = candidates[lug][i].Cost;
            for (var other = 0; other < lugs.Length && cost < least; other++)
            {
                if (other != lug && chosen[other] >= 0)
                {
                    cost += Between(lug, candidates[lug][i], other, candidates[other][chosen[other]]);
                }
            }

            if (cost < least)
            {
                (best, least) = (i, cost);
            }
        }

        return best;
    }

    private double Between(int lug, Candidate mine, int other, Candidate its)
    {
        if (mine.Box.Grown(Tokens.LabelGap).Overlaps(its.Box))
        {
            return Hard;
        }

        var cost = 0.0;
        cost += Box.Distance(mine.Box, lugs[other].Stem) < its.Distance + Nearer ? Hard : 0;
        cost += Box.Distance(its.Box, lugs[lug].Stem) < mine.Distance + Nearer ? Hard : 0;
        cost += mine.Box.Widened(WordGap).Overlaps(its.Box) ? ReadsAsOne : 0;
        var areInARow = IsInARow(lugs[lug].Lug, lugs[other].Lug);
        return cost + (areInARow && (mine.WayX, mine.WayY) != (its.WayX, its.WayY) ? OtherSideThanItsRow : 0);
    }

    private static bool IsInARow(FaceLug a, FaceLug b) =>
        a.Outward == b.Outward
        && Math.Abs(a.Outward is Side.North or Side.South ? a.At.Y - b.At.Y : a.At.X - b.At.X) < 0.5;

    private static Candidate[] CandidatesOf(LugSurroundings lug)
    {
        var places = lug.Stem.Grown(Reach);
        var (width, height) = (places.Width + lug.Name.Width, places.Height + lug.Name.Height);
        var (columns, rows) = ((int)(width / Step / 2), (int)(height / Step / 2));
        var spots = new List<(Box Box, double Distance, double Least)>();
        for (var row = -rows; row <= rows; row++)
        {
            for (var column = -columns; column <= columns; column++)
            {
                var centre = places.Centre + new Point(column * Step, row * Step);
                var box = Box.Around(centre, lug.Name.Width, lug.Name.Height);
                var distance = Box.Distance(box, lug.Stem);
                if (distance <= Reach && box.DistanceTo(lug.At) >= (Tokens.JointDiameter / 2) + Tokens.LabelTouch)
                {
                    spots.Add((box, distance, (PerMillimetre * distance) + AsideCost(lug, box)));
                }
            }
        }

        return BestOf(lug, InOrder(spots));
    }

    /// <summary>The least cost first, of equals the first found; a sort of plain numbers, for there are a thousand spots a lug.</summary>
    private static IEnumerable<(Box Box, double Distance, double Least)> InOrder(
        List<(Box Box, double Distance, double Least)> spots
    )
    {
        const double ApartFromEquals = 1e-9;
        var (keys, order) = (new double[spots.Count], new int[spots.Count]);
        for (var i = 0; i < keys.Length; i++)
        {
            (keys[i], order[i]) = (spots[i].Least + (i * ApartFromEquals), i);
        }

        Array.Sort(keys, order);
        return order.Select(i => spots[i]);
    }

    /// <summary>The best of the spots, looked at from the one that would be liked most if nothing were near.</summary>
    private static Candidate[] BestOf(LugSurroundings lug, IEnumerable<(Box Box, double Distance, double Least)> spots)
    {
        var found = new List<Candidate>();
        var good = new int[4];
        foreach (var (box, distance, least) in spots)
        {
            var (wayX, wayY) = (WayOf(box.X, box.Right, lug.At.X), WayOf(box.Y, box.Bottom, lug.At.Y));
            var side = SideOf(box, lug.At);
            if (good[(int)side] < EnoughGood)
            {
                found.Add(new Candidate(box, least + CostAmong(lug, box, distance), distance, wayX, wayY, side));
                good[(int)side] += found[^1].Cost < Hard ? 1 : 0;
            }
        }

        return [.. found.OrderBy(candidate => candidate.Cost).Take(MostCandidates)];
    }

    private static int WayOf(double from, double to, double at) =>
        to < at ? -1
        : from > at ? 1
        : 0;

    private static double CostAmong(LugSurroundings lug, Box box, double distance)
    {
        var cost = lug.Space.CostOfLabel(box);
        foreach (var other in lug.Others)
        {
            cost += CostBeside(Box.Distance(box, other), distance);
        }

        foreach (var joint in lug.Joints)
        {
            var apart = box.DistanceTo(joint);
            cost += CostBeside(apart, distance);
            cost += apart < FromJoints ? BesideJoint : 0;
        }

        return cost + (cost < Hard && lug.Space.IsWireBetween(box, lug.At) ? Hard : 0);
    }

    private static double CostBeside(double toOther, double toOwn) =>
        toOther < toOwn + Nearer ? Hard
        : toOther < NearlyAsNear * toOwn ? AsNearToAnother
        : 0;

    /// <summary>Best is straight inwards, away from where wires leave; then beside it; last outwards. Off the lug's own lines costs too.</summary>
    private static double AsideCost(LugSurroundings lug, Box box)
    {
        var outward = lug.Outward.Towards(1);
        var away = box.Centre - lug.Stem.Centre;
        var along = (away.X * outward.X) + (away.Y * outward.Y);
        var across = (away.X * outward.Y) - (away.Y * outward.X);
        var length = Math.Max(1e-9, Math.Sqrt((along * along) + (across * across)));
        return (6 * (1 + (along / length))) + (3 * Math.Min(Math.Abs(along), Math.Abs(across)));
    }
}
