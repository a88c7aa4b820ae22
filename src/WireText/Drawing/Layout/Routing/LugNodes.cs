using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>
/// Gives each lug a lattice node of its own: the nearest that is left, the pair of a lug and its node with the least
/// distance first. Of nodes equally near, the one farther from the hole wins, so that lugs spread instead of closing in.
/// </summary>
/// <remarks>Lugs of one part may lie closer than a pitch; a first come, first served choice by distance still gives each a node within about 1.5 pitches.</remarks>
internal static class LugNodes
{
    /// <summary>How far from its lug a node is looked for, in pitches: 1.5 are enough, see the remarks.</summary>
    private const int Reach = 2;

    private readonly record struct Offer(double Distance, double FromHole, int Lug, int X, int Y);

    /// <returns>By terminal: the node as whole pitches from the page's origin; unused for surfaces.</returns>
    public static (int X, int Y)[] Assign(PartPlacement placement)
    {
        var wiring = placement.Wiring;
        var nodes = new (int X, int Y)[wiring.Terminals.Length];
        var taken = new HashSet<(int, int)>();
        for (var part = 0; part < wiring.Parts.Length; part++)
        {
            AssignPart(placement, part, nodes, taken);
        }

        return nodes;
    }

    private static void AssignPart(PartPlacement placement, int part, (int X, int Y)[] nodes, HashSet<(int, int)> taken)
    {
        var lugs = placement.Wiring.Parts[part].Lugs;
        var isPlaced = new bool[lugs.Length];
        var left = lugs.Length;
        for (var reach = Reach; left > 0; reach += Reach)
        {
            var offers = new List<Offer>();
            for (var lug = 0; lug < lugs.Length; lug++)
            {
                if (!isPlaced[lug])
                {
                    AddOffers(placement.Poses[part], lugs[lug].At, lug, reach, taken, offers);
                }
            }

            foreach (var offer in offers.Order(Comparer<Offer>.Create(Compare)))
            {
                if (!isPlaced[offer.Lug] && taken.Add((offer.X, offer.Y)))
                {
                    isPlaced[offer.Lug] = true;
                    nodes[placement.Wiring.LugTerminal(part, offer.Lug)] = (offer.X, offer.Y);
                    left--;
                }
            }
        }
    }

    private static void AddOffers(
        Pose pose,
        Point own,
        int lug,
        int reach,
        HashSet<(int, int)> taken,
        List<Offer> offers
    )
    {
        var at = pose.OnPage(own);
        var (x0, y0) = ((int)Math.Floor(at.X / LayoutScale.Pitch), (int)Math.Floor(at.Y / LayoutScale.Pitch));
        for (var y = y0 - reach + 1; y <= y0 + reach; y++)
        {
            for (var x = x0 - reach + 1; x <= x0 + reach; x++)
            {
                if (!taken.Contains((x, y)))
                {
                    var node = new Point(x * LayoutScale.Pitch, y * LayoutScale.Pitch);
                    var distance = Math.Round(Point.Distance(node, at), 3);
                    offers.Add(new Offer(distance, Point.Distance(node, pose.At), lug, x, y));
                }
            }
        }
    }

    private static int Compare(Offer a, Offer b)
    {
        var byDistance = a.Distance.CompareTo(b.Distance);
        if (byDistance != 0)
        {
            return byDistance;
        }

        var outwards = b.FromHole.CompareTo(a.FromHole);
        if (outwards != 0)
        {
            return outwards;
        }

        return (a.Lug, a.Y, a.X).CompareTo((b.Lug, b.Y, b.X));
    }
}
