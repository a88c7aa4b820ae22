using System.Collections.Immutable;
using WireText.Drawing.Faces;
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

    /// <summary>With so many places that nothing speaks against, no more are looked at.</summary>
    private const int EnoughGood = 160;
    private const int MostSweeps = 8;

    /// <summary>For each millimetre from its lug; the measure of the soft costs below. All chosen by eye.</summary>
    private const double PerMillimetre = 10;

    /// <summary>A wire between the name and its lug: three millimetres of way are better.</summary>
    private const double AcrossAWire = 30;

    /// <summary>Nearly as near to another lug as to its own.</summary>
    private const double AsNearToAnother = 8;

    /// <summary>A lug more than so many times as far away as the own one is nobody's guess.</summary>
    private const double NearlyAsNear = 1.6;

    /// <summary>Lugs farther from a name than this cost it nothing, in millimetres: its own is never farther than the reach.</summary>
    internal const double Unseen = 0.1 + (NearlyAsNear * Reach);

    /// <summary>On another side of its lug than its neighbours' names.</summary>
    private const double OtherSideThanItsRow = 4;

    /// <summary>Two names on one line nearer than this read as one word, in millimetres.</summary>
    private const double WordGap = 1.3;
    private const double ReadsAsOne = 16;

    private readonly ImmutableArray<LugSurroundings> lugs;
    private readonly Candidate[][] candidates;
    private readonly int[] chosen;

    private readonly record struct Candidate(Box Box, double Cost, double Distance, int WayX, int WayY);

    private LugLabels(ImmutableArray<LugSurroundings> lugs)
    {
        this.lugs = lugs;
        candidates = [.. lugs.Select(CandidatesOf)];
        chosen = new int[lugs.Length];
    }

    /// <summary>A place for the label of a lug.</summary>
    /// <param name="IsClear">False when everything near the lug is taken: the label would lie on something.</param>
    public readonly record struct Spot(Box Box, bool IsClear);

    /// <summary>A place for the label of each lug, in their order; none for a part that names its only lug.</summary>
    public static ImmutableArray<Spot> Place(Scene scene, PlacedFace part, LabelSpace space)
    {
        if (part.Face.Lugs.Length + part.Face.Surfaces.Length < 2)
        {
            return [];
        }

        var around = LugSurroundings.Of(scene, part, space);
        return scene.Options.KnownLugLabels.Of(part.Placed.Part.Id, around, () => new LugLabels(around).Spots());
    }

    private ImmutableArray<Spot> Spots()
    {
        Choose();
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
        var good = 0;
        foreach (var (box, distance, least) in spots)
        {
            var (wayX, wayY) = (WayOf(box.X, box.Right, lug.At.X), WayOf(box.Y, box.Bottom, lug.At.Y));
            found.Add(new Candidate(box, least + CostAmong(lug, box, distance), distance, wayX, wayY));
            good += found[^1].Cost < Hard ? 1 : 0;
            if (good == EnoughGood)
            {
                break;
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

        return cost + (cost < Hard && lug.Space.IsWireBetween(box, lug.At) ? AcrossAWire : 0);
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
