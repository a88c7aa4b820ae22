namespace WireText.Drawing.Layout.Routing;

/// <summary>Looks for strict gains on a legal picture: one wire at a time, or two that cross.</summary>
internal sealed class RouteGains(RoutingTable table)
{
    /// <summary>Routes each wire anew, dearest detour first, and keeps only gains.</summary>
    /// <returns>True when some wire gained.</returns>
    public bool ImproveSingles() => ImproveSingles(_ => true);

    /// <summary>The same for some of the wires.</summary>
    public bool ImproveSingles(Func<int, bool> isTried)
    {
        var hasGained = false;
        foreach (var wire in ByExcess().Where(isTried))
        {
            if (table.TakeOut(wire) is { } old)
            {
                var price = table.CostOf(wire, old, table.Settled);
                var found = table.FindNear(wire, table.Settled with { Below = price });
                table.Place(wire, found ?? old);
                hasGained |= found is not null;
            }
        }

        return hasGained;
    }

    public void ImprovePairs()
    {
        foreach (var (a, b, crossing) in Crossings.Of(table))
        {
            ImprovePair(a, b, crossing);
        }
    }

    /// <summary>The wires that have a path, by how much more they pay than the shortest way would cost.</summary>
    private int[] ByExcess()
    {
        var excesses = new List<(int Wire, int Excess)>();
        foreach (var wire in table.Order)
        {
            if (table.Routes[wire] is { } route)
            {
                var least = RouteCosts.Step * table.RequestOf(wire).LowerBound;
                excesses.Add((wire, table.CostInPlace(wire, route, table.Settled) - least));
            }
        }

        return [.. excesses.OrderByDescending(wire => wire.Excess).ThenBy(wire => wire.Wire).Select(wire => wire.Wire)];
    }

    /// <summary>Routes two wires that cross anew, either first, and the first once more without the place where they crossed.</summary>
    private void ImprovePair(int a, int b, int crossing)
    {
        if (table.TakeOut(a) is not { } oldA || table.TakeOut(b) is not { } oldB)
        {
            throw new InvalidOperationException("A wire that crosses another has a path.");
        }

        var alone = table.CostOf(a, oldA, table.Settled);
        table.Congestion.Add(oldA);
        var price = alone + table.CostOf(b, oldB, table.Settled);
        table.Congestion.Remove(oldA);
        var best = (Cost: price, A: oldA, B: oldB);
        foreach (var (first, second, closed) in new[] { (a, b, -1), (b, a, -1), (a, b, crossing), (b, a, crossing) })
        {
            var one = table.FindNear(first, table.Settled with { Below = best.Cost, ClosedNode = closed });
            if (one is null)
            {
                continue;
            }

            table.Congestion.Add(one);
            var two = table.FindNear(second, table.Settled with { Below = best.Cost - one.Cost });
            table.Congestion.Remove(one);
            if (two is not null)
            {
                best = (one.Cost + two.Cost, first == a ? one : two, first == a ? two : one);
            }
        }

        table.Place(a, best.A);
        table.Place(b, best.B);
    }
}
