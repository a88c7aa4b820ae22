using System.Collections.Immutable;

namespace WireText.Drawing.Layout.Routing;

/// <summary>Routes the ends of braids, last of all: they start on a core, so the cores must lie still.</summary>
/// <param name="kept">What is taken over from an earlier picture; null for nothing.</param>
internal sealed class BraidTails(RoutingTable table, KeptRoutes? kept)
{
    public ImmutableArray<BraidTail> Route()
    {
        kept?.DropLooseTails();
        var tails = ImmutableArray.CreateBuilder<BraidTail>();
        var cables = table.Lattice.Wiring.Cables;
        for (var cable = 0; cable < cables.Length; cable++)
        {
            if (cables[cable].BraidId is null)
            {
                continue;
            }

            if (cables[cable].BraidFrom is { } from)
            {
                tails.Add(TailOf(cable, isAtStart: true, table.Lattice.Wiring.TerminalOf(from)));
            }

            if (cables[cable].BraidTo is { } to)
            {
                tails.Add(TailOf(cable, isAtStart: false, table.Lattice.Wiring.TerminalOf(to)));
            }
        }

        return tails.ToImmutable();
    }

    private BraidTail TailOf(int cable, bool isAtStart, int terminal)
    {
        if (kept?.TailOf(cable, isAtStart) is { } tail)
        {
            return tail;
        }

        var breakouts = BraidCores.BreakoutsOf(table.Lattice, table.Routes, table.Requests, cable, isAtStart);
        var free = breakouts.Where(node => table.Congestion.UsersOf(node) == 1).ToArray();
        if (terminal < 0 || free.Length == 0)
        {
            return new BraidTail(cable, isAtStart, Route: null, Request: null);
        }

        var request = new RouteRequest(table.Requests.Length + cable, -1, terminal, free, 0);
        var route = table.FindAnywhere(request, table.Settled);
        if (route is not null)
        {
            table.Congestion.Add(route);
        }

        return new BraidTail(cable, isAtStart, route, request);
    }
}
