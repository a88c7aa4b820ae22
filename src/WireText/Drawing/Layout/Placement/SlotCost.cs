using WireText.Geometry;

namespace WireText.Drawing.Layout.Placement;

/// <summary>
/// How much wire an arrangement would take: straight distances between the ways out of lugs, a price for each lug that points
/// away from what it joins and for each pair of straight lines that cross, and for leaving the usual rows and orders.
/// </summary>
internal sealed class SlotCost
{
    /// <summary>What a millimetre of straight distance costs: a whole number, so that no machine rounds another way. The other prices are so many fifths of a millimetre of wire. Chosen on the benchmark cases.</summary>
    private const int PerMillimetre = 5;

    /// <summary>A lug that points away from what it joins: its wire goes round its part, some 18 mm. Chosen.</summary>
    private const int PointsAway = 90;

    /// <summary>A pickup below the top row: 100 mm of wire must be saved before a reader finds it elsewhere. Chosen.</summary>
    private const int PickupBelowTop = 500;

    /// <summary>Two pots in another order than the text has them: 70 mm of wire must be saved. Chosen.</summary>
    private const int OutOfOrder = 350;

    /// <summary>Two pickups in another order than from the neck to the bridge: no wire is worth it.</summary>
    private const int PickupsOutOfOrder = 100_000;

    /// <summary>Room between columns: some eight wires side by side. Chosen.</summary>
    private const double ColumnChannel = 9 * LayoutScale.Pitch;

    /// <summary>Room between rows, where most wires run along: some ten wires. Chosen.</summary>
    private const double RowChannel = 11 * LayoutScale.Pitch;

    internal readonly record struct Link(int PartA, int EndA, int PartB, int EndB);

    private readonly Wiring wiring;
    private readonly int columns;
    private readonly int crossingCost;
    private readonly Link[] links;

    /// <summary>By part and quarter turn.</summary>
    private readonly Box[][] bounds;

    /// <summary>By terminal and quarter turn: the lug, and where a wire is once it has left it.</summary>
    private readonly (Point Lug, Point Out)[][] ends;
    private readonly Point[] at;
    private readonly (double X1, double Y1, double X2, double Y2)[] lines;

    public SlotCost(Wiring wiring, int columns, int crossingCost)
    {
        (this.wiring, this.columns, this.crossingCost) = (wiring, columns, crossingCost);
        links = LinksOf(wiring);
        lines = new (double, double, double, double)[links.Length];
        at = new Point[wiring.Parts.Length];
        bounds = [.. wiring.Parts.Select(part => Turns().Select(turn => PartBounds.Of(part, turn)).ToArray())];
        ends = [.. wiring.Terminals.Select((_, t) => Turns().Select(turn => EndOf(wiring, t, turn)).ToArray())];
    }

    /// <summary>How many pairs of lines were looked at so far.</summary>
    public long PairsSeen { get; private set; }

    /// <param name="below">Only a cost below this is of use; of a dearer arrangement not all crossings are counted.</param>
    public long Of(int[] cells, int[] turns, long below)
    {
        PlaceCells(cells, turns);
        var cost = OrderCost(cells);
        for (var i = 0; i < links.Length; i++)
        {
            cost += LinkCost(i, turns);
        }

        for (var i = 0; i < lines.Length && cost < below; i++)
        {
            cost += crossingCost * (long)CrossingsAfter(i);
            PairsSeen += lines.Length - i;
        }

        return cost;
    }

    private static IEnumerable<int> Turns() => [0, 90, 180, 270];

    private static (Point Lug, Point Out) EndOf(Wiring wiring, int terminal, int turn)
    {
        const double Away = 2 * LayoutScale.Pitch;
        var lug = wiring.Own(terminal).Turned(turn);
        var (part, index, isSurface) = wiring.Terminals[terminal];
        if (isSurface || wiring.Parts[part].Lugs[index].Exits.IsDefaultOrEmpty)
        {
            return (lug, lug);
        }

        var step = wiring.Parts[part].Lugs[index].Exits[0].Turned(turn).Towards(Away);
        return (lug, lug + step);
    }

    /// <summary>What joins two big parts, directly or through a small part between them.</summary>
    public static Link[] LinksOf(Wiring wiring)
    {
        var found = new List<Link>();
        var throughSmall = new List<int>[wiring.Parts.Length];
        foreach (var connection in wiring.Connections.Where(c => c.CanRoute))
        {
            var (a, b) = (wiring.Terminals[connection.From].Part, wiring.Terminals[connection.To].Part);
            var (isSmallA, isSmallB) = (IsSmall(wiring, a), IsSmall(wiring, b));
            if (!isSmallA && !isSmallB)
            {
                found.Add(new Link(a, connection.From, b, connection.To));
            }
            else if (isSmallA != isSmallB)
            {
                var (small, end) = isSmallA ? (a, connection.To) : (b, connection.From);
                (throughSmall[small] ??= []).Add(end);
            }
        }

        foreach (var joined in throughSmall.Where(joined => joined is not null))
        {
            for (var i = 1; i < joined.Count; i++)
            {
                found.Add(
                    new Link(wiring.Terminals[joined[0]].Part, joined[0], wiring.Terminals[joined[i]].Part, joined[i])
                );
            }
        }

        return [.. found.Where(link => link.PartA != link.PartB)];
    }

    private static bool IsSmall(Wiring wiring, int part) => wiring.Parts[part].Zone == LayoutZone.Small;

    private void PlaceCells(int[] cells, int[] turns)
    {
        var rows = cells.Length / Math.Max(1, columns);
        var x = 0.0;
        for (var column = 0; column < columns; column++)
        {
            var (before, after) = (0.0, 0.0);
            for (var row = 0; row < rows; row++)
            {
                if (cells[(row * columns) + column] is >= 0 and var part)
                {
                    var box = bounds[part][turns[part] / 90];
                    (before, after) = (Math.Max(before, -box.X), Math.Max(after, box.Right));
                }
            }

            for (var row = 0; row < rows; row++)
            {
                if (cells[(row * columns) + column] is >= 0 and var part)
                {
                    at[part] = new Point(x + before, 0);
                }
            }

            x += before + after + ColumnChannel;
        }

        PlaceRows(cells, turns, rows);
    }

    private void PlaceRows(int[] cells, int[] turns, int rows)
    {
        var y = 0.0;
        for (var row = 0; row < rows; row++)
        {
            var (before, after) = (0.0, 0.0);
            for (var i = row * columns; i < (row + 1) * columns; i++)
            {
                if (cells[i] is >= 0 and var part)
                {
                    var box = bounds[part][turns[part] / 90];
                    (before, after) = (Math.Max(before, -box.Y), Math.Max(after, box.Bottom));
                }
            }

            for (var i = row * columns; i < (row + 1) * columns; i++)
            {
                if (cells[i] is >= 0 and var part)
                {
                    at[part] = at[part] with { Y = y + before };
                }
            }

            y += before + after + RowChannel;
        }
    }

    private long OrderCost(int[] cells)
    {
        long cost = 0;
        for (var i = 0; i < cells.Length; i++)
        {
            if (cells[i] < 0)
            {
                continue;
            }

            var part = wiring.Parts[cells[i]];
            if (part.Zone == LayoutZone.Pickup && i >= columns)
            {
                cost += PickupBelowTop * (i / columns);
            }

            for (var j = 0; j < i; j++)
            {
                if (cells[j] >= 0 && IsOutOfOrder(wiring.Parts[cells[j]], part))
                {
                    cost += part.Zone == LayoutZone.Pickup ? PickupsOutOfOrder : OutOfOrder;
                }
            }
        }

        return cost;
    }

    private static bool IsOutOfOrder(LayoutPart earlier, LayoutPart later) =>
        earlier.Zone == later.Zone
        && earlier.Zone is LayoutZone.Pickup or LayoutZone.Pot
        && earlier.Order > later.Order;

    private long LinkCost(int i, int[] turns)
    {
        var link = links[i];
        var a = ends[link.EndA][turns[link.PartA] / 90];
        var b = ends[link.EndB][turns[link.PartB] / 90];
        var (fromOut, toOut) = (at[link.PartA] + a.Out, at[link.PartB] + b.Out);
        lines[i] = (fromOut.X, fromOut.Y, toOut.X, toOut.Y);
        var cost = (long)(PerMillimetre * (Math.Abs(fromOut.X - toOut.X) + Math.Abs(fromOut.Y - toOut.Y)));
        cost += IsAway(a, toOut - at[link.PartA]) ? PointsAway : 0;
        cost += IsAway(b, fromOut - at[link.PartB]) ? PointsAway : 0;
        return cost;
    }

    private static bool IsAway((Point Lug, Point Out) end, Point target)
    {
        var (way, wish) = (end.Out - end.Lug, target - end.Lug);
        return (way.X * wish.X) + (way.Y * wish.Y) < 0;
    }

    /// <summary>How many of the lines after a line cross it.</summary>
    private int CrossingsAfter(int line)
    {
        var count = 0;
        var a = lines[line];
        foreach (ref readonly var b in lines.AsSpan(line + 1))
        {
            if (
                Turn(a.X1, a.Y1, a.X2, a.Y2, b.X1, b.Y1) * Turn(a.X1, a.Y1, a.X2, a.Y2, b.X2, b.Y2) < 0
                && Turn(b.X1, b.Y1, b.X2, b.Y2, a.X1, a.Y1) * Turn(b.X1, b.Y1, b.X2, b.Y2, a.X2, a.Y2) < 0
            )
            {
                count++;
            }
        }

        return count;
    }

    private static double Turn(double x1, double y1, double x2, double y2, double x, double y) =>
        ((x2 - x1) * (y - y1)) - ((y2 - y1) * (x - x1));
}
