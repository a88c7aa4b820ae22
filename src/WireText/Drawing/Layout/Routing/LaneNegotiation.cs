namespace WireText.Drawing.Layout.Routing;

/// <summary>
/// Routes every wire that has no path for itself with a price on lanes that others have, then again those in conflict at a rising
/// price until none is: negotiated congestion.
/// </summary>
internal sealed class LaneNegotiation(RoutingTable table, Negotiation manner)
{
    /// <summary>Rounds before wires in conflict are left to what comes after. Chosen.</summary>
    internal const int MostRounds = 60;

    public void Run()
    {
        foreach (var wire in table.Order.Where(wire => table.Routes[wire] is null))
        {
            table.Place(wire, table.FindAnywhere(wire, table.Competing(manner.FirstPresent)));
        }

        Compete();
        DropConflicts();
    }

    private void Compete()
    {
        var present = manner.FirstPresent;
        var (fewest, sinceFewest) = (int.MaxValue, 0);
        for (var round = 0; round < manner.MostRounds; round++)
        {
            var contested = InConflict();
            sinceFewest = contested.Count < fewest ? 0 : sinceFewest + 1;
            fewest = Math.Min(fewest, contested.Count);
            if (contested.Count == 0 || sinceFewest == manner.MostRoundsWithoutGain || table.IsSpent)
            {
                return;
            }

            foreach (var (_, route) in contested)
            {
                table.Congestion.Remember(route);
            }

            present = Math.Min(RouteCosts.MostPresent, present * manner.GrowthInFifths / 5);
            foreach (var (wire, old) in contested)
            {
                table.TakeOut(wire);
                table.Place(wire, table.FindAnywhere(wire, table.Competing(present)) ?? old);
            }
        }
    }

    private List<(int Wire, Route Route)> InConflict()
    {
        var contested = new List<(int, Route)>();
        foreach (var wire in table.Order)
        {
            if (table.Routes[wire] is { } route && table.Congestion.IsInConflict(route))
            {
                contested.Add((wire, route));
            }
        }

        return contested;
    }

    /// <summary>Takes out wires until the rest is legal, the last in order first, then lets each find a free way if there is one.</summary>
    private void DropConflicts()
    {
        var dropped = new List<int>();
        foreach (var wire in Enumerable.Reverse(table.Order))
        {
            if (table.Routes[wire] is { } route && table.Congestion.IsInConflict(route))
            {
                table.TakeOut(wire);
                dropped.Add(wire);
            }
        }

        foreach (var wire in dropped)
        {
            table.Place(wire, table.FindAnywhere(wire, table.Competing(SearchTerms.Hard)));
        }
    }
}
