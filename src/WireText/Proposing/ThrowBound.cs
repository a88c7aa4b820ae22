namespace WireText.Proposing;

/// <summary>How many throws must still be wired, whatever is chosen for the commons that have no label yet.</summary>
/// <param name="direct">Leads joined for good.</param>
/// <param name="good">For each state the good joinings that hold them, those of fewest joins first.</param>
/// <param name="labels">For each common the node on it, as the search goes on.</param>
/// <param name="assigned">1 for each common that has its label.</param>
internal sealed class ThrowBound(
    HarnessSearch search,
    Joining direct,
    List<Joining>[] good,
    int[] labels,
    int[] assigned
)
{
    private readonly HarnessProblem problem = search.Problem;

    /// <summary>Throws that must be wired, by states that share no column: what each joins needs a throw of its own for each join.</summary>
    public int LeastThrows()
    {
        var needs = new List<(int State, int Need)>();
        for (var state = 0; state < good.Length; state++)
        {
            if (search.States[state].State.IsListed)
            {
                if (LeastJoins(state) is not { } joins)
                {
                    return int.MaxValue / 2;
                }

                needs.Add((state, joins - search.WithoutThrow[state]));
            }
        }

        needs = [.. needs.Where(one => one.Need > 0).OrderByDescending(one => one.Need)];
        var best = 0;
        foreach (var start in needs)
        {
            var taken = new HashSet<int>(problem.States[start.State].Columns);
            var sum = start.Need;
            foreach (var (state, need) in needs)
            {
                if (!problem.States[state].Columns.Any(taken.Contains))
                {
                    taken.UnionWith(problem.States[state].Columns);
                    sum += need;
                }
            }

            best = Math.Max(best, sum);
        }

        return best;
    }

    /// <summary>Joins of the good joining with fewest that the commons chosen so far can still make; null when none is.</summary>
    private int? LeastJoins(int state)
    {
        foreach (var joining in good[state])
        {
            if (CanStillBeMade(state, joining))
            {
                return joining.Rank - direct.Rank;
            }
        }

        return null;
    }

    /// <summary>
    /// A block of nets needs a contact for each join, with its common in the block; what is not chosen yet may be anywhere.
    /// </summary>
    private bool CanStillBeMade(int state, Joining joining)
    {
        Span<int> open = stackalloc int[Joining.MostNodes];
        open.Clear();
        for (var net = 0; net < search.Nets; net++)
        {
            if (direct[net] == net)
            {
                open[joining[net]]++;
            }
        }

        var (free, onJumpers) = (0, 0);
        for (var common = 0; common < labels.Length; common++)
        {
            var contacts = search.Closed[state][common];
            if (assigned[common] == 0)
            {
                free += contacts;
            }
            else if (labels[common] == DirectSearch.Empty)
            {
                continue;
            }
            else if (labels[common] < search.Nets)
            {
                open[joining[labels[common]]] -= contacts;
            }
            else if (labels[common] < search.Nets + search.Jumpers)
            {
                onJumpers += contacts;
            }
            else
            {
                free += Math.Max(0, contacts - 1);
            }
        }

        free += Math.Max(0, onJumpers - 1);
        var needed = 0;
        for (var net = 0; net < search.Nets; net++)
        {
            if (joining[net] == net && open[net] > 1)
            {
                needed += open[net] - 1;
            }
        }

        return needed <= free;
    }
}
