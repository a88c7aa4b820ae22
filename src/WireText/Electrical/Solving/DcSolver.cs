namespace WireText.Electrical.Solving;

/// <summary>Solves a network for direct current: real numbers on a graph of its own, never a limit of the signals'.</summary>
internal static class DcSolver
{
    /// <summary>The voltage of each node, sleeve first, for 1 A into the tip; null when the network is too large.</summary>
    /// <param name="edges">Resistances above 0 between nodes that all hang together with the sleeve.</param>
    public static double[]? Solve(int nodeCount, IReadOnlyList<(int From, int To, double Ohms)> edges) =>
        Plan(nodeCount, edges.Select(edge => (edge.From, edge.To))) is { } plan ? Solve(plan, edges) : null;

    /// <summary>How a network is solved, whatever the resistances; null when it is too large.</summary>
    public static Elimination? Plan(int nodeCount, IEnumerable<(int From, int To)> edges) =>
        Elimination.Plan(nodeCount, [.. edges]);

    /// <inheritdoc cref="Solve(int, IReadOnlyList{ValueTuple{int, int, double}})"/>
    /// <param name="plan">Made for the same edges.</param>
    public static double[] Solve(Elimination plan, IReadOnlyList<(int From, int To, double Ohms)> edges)
    {
        var entries = Stamp(plan, edges);
        Factor(plan, entries);
        var volts = new double[plan.Size];
        volts[^1] = entries[plan.Size - 1];
        for (var k = plan.Size - 2; k >= 0; k--)
        {
            for (var i = plan.Starts[k]; i < plan.Starts[k + 1]; i++)
            {
                volts[k] -= entries[plan.Size + i] * volts[plan.Rows[i]];
            }
        }

        return [0, .. Enumerable.Range(1, plan.Size).Select(node => volts[plan.PlaceOf(node)])];
    }

    private static double[] Stamp(Elimination plan, IReadOnlyList<(int From, int To, double Ohms)> edges)
    {
        var entries = new double[plan.EntryCount];
        foreach (var (from, to, ohms) in edges)
        {
            if (from != LiveNetwork.Sleeve)
            {
                entries[plan.PlaceOf(from)] += 1 / ohms;
            }

            if (to != LiveNetwork.Sleeve)
            {
                entries[plan.PlaceOf(to)] += 1 / ohms;
            }

            if (from != LiveNetwork.Sleeve && to != LiveNetwork.Sleeve)
            {
                entries[plan.EntryOf(from, to)] -= 1 / ohms;
            }
        }

        return entries;
    }

    /// <summary>Turns the entries into L below the diagonal and the inverse of D on it.</summary>
    private static void Factor(Elimination plan, double[] entries)
    {
        var next = 0;
        var column = new double[plan.Size];
        for (var k = 0; k < plan.Size; k++)
        {
            entries[k] = 1 / entries[k];
            var (start, end) = (plan.Starts[k], plan.Starts[k + 1]);
            for (var i = start; i < end; i++)
            {
                column[i - start] = entries[plan.Size + i];
                entries[plan.Size + i] *= entries[k];
                for (var j = 0; j <= i - start; j++)
                {
                    entries[plan.Targets[next++]] -= entries[plan.Size + i] * column[j];
                }
            }
        }
    }
}
