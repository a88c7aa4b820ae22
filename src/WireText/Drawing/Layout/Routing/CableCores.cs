namespace WireText.Drawing.Layout.Routing;

/// <summary>Leads the cores of each cable side by side, every core after the first beside those before it; all of a cable's or none.</summary>
internal sealed class CableCores(RoutingTable table)
{
    public void RunTogether(IEnumerable<LayoutCable> cables)
    {
        foreach (var cable in cables)
        {
            int[] cores =
            [
                .. cable
                    .Cores.Select(table.Lattice.Wiring.ConnectionOf)
                    .Where(core => core >= 0 && table.Routes[core] is not null)
                    .OrderBy(core => table.RequestOf(core).LowerBound),
            ];
            var apart = cores.Skip(1).Select(core => (Core: core, Route: table.TakeOut(core))).ToArray();
            if (!HasAllBeside(cores))
            {
                foreach (var (core, route) in apart)
                {
                    table.TakeOut(core);
                    table.Place(core, route);
                }
            }
        }
    }

    /// <summary>Routes the cores that were taken out beside the others.</summary>
    /// <returns>False when one of them found no way.</returns>
    private bool HasAllBeside(int[] cores)
    {
        var company = new bool[table.Lattice.NodeCount];
        foreach (var core in cores)
        {
            if (table.Routes[core] is null)
            {
                table.Place(core, table.FindFarther(core, table.Settled with { Company = company }));
            }

            foreach (var node in table.Routes[core]?.Nodes ?? [])
            {
                MarkBeside(company, node);
            }
        }

        return Array.TrueForAll(cores, core => table.Routes[core] is not null);
    }

    private void MarkBeside(bool[] company, int node)
    {
        for (var direction = 0; direction < 4; direction++)
        {
            var beside = node + table.Lattice.Step(direction);
            if (beside >= 0 && beside < company.Length)
            {
                company[beside] = true;
            }
        }
    }
}
