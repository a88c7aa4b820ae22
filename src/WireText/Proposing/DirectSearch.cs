namespace WireText.Proposing;

/// <summary>The search with some leads joined for good.</summary>
internal sealed class DirectSearch
{
    /// <summary>The label of a common without a wire.</summary>
    internal const int Empty = -1;

    private readonly HarnessSearch search;
    private readonly HarnessProblem problem;
    private readonly List<Joining>[] good;
    private readonly int[] labels;
    private readonly int[] assigned;
    private readonly int?[] unsoldered;
    private readonly List<int> nodes = [];
    private readonly ThrowBound bound;
    private readonly ColumnDomains domains;
    private readonly int[] order;
    private readonly Joining[] partial;
    private readonly ColumnChoice[] chosen;
    private readonly List<int>[] closing;
    private readonly List<int>[] finishing;
    private readonly int[] cheapest;

    public DirectSearch(HarnessSearch search, Joining direct)
    {
        (this.search, problem, Direct) = (search, search.Problem, direct);
        var rank = direct.Rank;
        good =
        [
            .. search.States.Select(state =>
                state.All.FindAll(joining =>
                    joining.Holds(direct) && joining.Rank - rank <= HarnessSearch.ContactsClosed(problem, state.State)
                )
            ),
        ];
        IsPossible = search.States.Zip(good).All(one => !one.First.State.IsListed || one.Second.Count > 0);
        var commons = problem.Lugs.Commons;
        labels = new int[commons.Length];
        assigned = new int[commons.Length];
        unsoldered = new int?[commons.Length];
        var free = 0;
        for (var common = 0; common < commons.Length; common++)
        {
            if (problem.Lugs.MayStayEmptyAndJoin(common))
            {
                unsoldered[common] = search.NodeOfUnsoldered(free++);
            }
        }

        for (var net = 0; net < search.Nets; net++)
        {
            if (direct[net] == net)
            {
                nodes.Add(net);
            }
        }

        nodes.AddRange(Enumerable.Range(search.Nets, search.Jumpers));
        order = Order();
        partial = new Joining[problem.States.Length];
        chosen = new ColumnChoice[problem.Lugs.Columns.Length];
        cheapest = new int[order.Length + 1];
        closing = [.. order.Select(problem.StatesOf)];
        finishing = [.. order.Select((_, i) => closing[i].FindAll(state => IsFinishedAt(state, i)))];
        Array.Fill(labels, Empty);
        for (var common = 0; common < commons.Length; common++)
        {
            if (commons[common].Fixed is { } net)
            {
                labels[common] = direct[net];
                assigned[common] = 1;
            }
        }

        bound = new ThrowBound(search, direct, good, labels, assigned);
        domains = new ColumnDomains(search, direct, good, nodes, labels);
        Bound = rank + (IsPossible ? bound.LeastThrows() : 0) - search.Jumpers;
    }

    public Joining Direct { get; }

    public bool IsPossible { get; }

    public int Bound { get; }

    public void Run()
    {
        // A state in which nothing closes is what leads joined for good make it.
        if (
            problem.States.All(state =>
                state.Columns.Length > 0 || search.Judge.IsGood(state, Direct.Among(search.Nets))
            )
        )
        {
            ChooseCommon(0, Direct.Rank);
        }
    }

    /// <summary>Columns, those first that finish states whose joinings are listed.</summary>
    private int[] Order()
    {
        var columns = problem.Lugs.Columns.Length;
        var ordered = new List<int>();
        while (ordered.Count < columns)
        {
            var next = problem
                .States.Where(state => state.IsListed)
                .Concat(problem.States)
                .Select(state => state.Columns.Where(column => !ordered.Contains(column)).ToList())
                .Where(left => left.Count > 0)
                .DefaultIfEmpty([.. Enumerable.Range(0, columns).Where(column => !ordered.Contains(column))])
                .MinBy(left => left.Count)!;
            ordered.AddRange(next);
        }

        return [.. ordered];
    }

    private bool IsFinishedAt(int state, int depth) =>
        problem.States[state].Columns.All(column => Array.IndexOf(order, column) <= depth);

    private void ChooseCommon(int common, int cost)
    {
        search.Cancellation.ThrowIfCancellationRequested();
        if (search.IsDone || !search.Budget.Step(search.Judge))
        {
            return;
        }

        if (cost + bound.LeastThrows() - search.Jumpers > search.Limit)
        {
            return;
        }

        if (common == labels.Length)
        {
            ChooseColumns(cost);
            return;
        }

        if (problem.Lugs.Commons[common].Fixed is not null)
        {
            ChooseCommon(common + 1, cost);
            return;
        }

        assigned[common] = 1;
        foreach (var label in LabelsFor(common))
        {
            labels[common] = label;
            ChooseCommon(common + 1, cost + (search.IsSoldered(label) ? 1 : 0));
        }

        labels[common] = Empty;
        assigned[common] = 0;
    }

    /// <summary>Of commons with equal contacts the labels do not fall: exchanged they are the same.</summary>
    private IEnumerable<int> LabelsFor(int common)
    {
        var from = problem.Lugs.Commons[common].Alike is { } alike ? OrderOf(labels[alike]) : 0;
        foreach (var node in nodes.Where(node => OrderOf(node) >= from))
        {
            yield return node;
        }

        if (!problem.Lugs.Commons[common].MustBeWired)
        {
            yield return unsoldered[common] ?? Empty;
        }
    }

    private int OrderOf(int label) => search.IsSoldered(label) ? label : Joining.MostNodes;

    private void ChooseColumns(int cost)
    {
        cheapest[order.Length] = 0;
        for (var i = order.Length - 1; i >= 0; i--)
        {
            var domain = domains.Of(order[i]);
            if (domain.Count == 0)
            {
                return;
            }

            cheapest[i] = cheapest[i + 1] + domain[0].Cost;
        }

        Array.Fill(partial, Direct);
        ChooseColumn(0, cost);
    }

    private void ChooseColumn(int depth, int cost)
    {
        if (depth == order.Length)
        {
            Complete();
            return;
        }

        var before = closing[depth].ConvertAll(state => partial[state]);
        foreach (var choice in domains.Of(order[depth]))
        {
            if (
                search.IsDone
                || cost + choice.Cost + cheapest[depth + 1] - search.Jumpers > search.Limit
                || !search.Budget.Step(search.Judge)
            )
            {
                break;
            }

            chosen[order[depth]] = choice;
            if (Fits(depth, before, choice))
            {
                ChooseColumn(depth + 1, cost + choice.Cost);
            }
        }

        for (var i = 0; i < before.Count; i++)
        {
            partial[closing[depth][i]] = before[i];
        }
    }

    /// <summary>Joins the choice in every state that the column belongs to; false when one of them cannot be good any more.</summary>
    private bool Fits(int depth, List<Joining> before, ColumnChoice choice)
    {
        for (var i = 0; i < before.Count; i++)
        {
            var state = closing[depth][i];
            var joined = before[i].With(choice.Joining);
            partial[state] = joined;
            if (!domains.MayGrowFrom(state, joined.Among(search.Nets)))
            {
                return false;
            }
        }

        return finishing[depth]
            .TrueForAll(state => search.Judge.IsGood(problem.States[state], partial[state].Among(search.Nets)));
    }

    private void Complete()
    {
        var lugs = problem.Lugs;
        var on = new int?[lugs.Lugs.Length];
        for (var common = 0; common < labels.Length; common++)
        {
            if (lugs.Commons[common].Fixed is null && search.IsSoldered(labels[common]))
            {
                on[lugs.Lugs.IndexOf(lugs.Commons[common].Lug)] = labels[common];
            }
        }

        var reached = Direct.Joined();
        for (var column = 0; column < lugs.Columns.Length; column++)
        {
            var contacts = lugs.Columns[column].Contacts;
            for (var i = 0; i < contacts.Count; i++)
            {
                if (((chosen[column].Throws >> (i * 5)) & 0x1F) is not 0 and var label)
                {
                    on[lugs.Lugs.IndexOf(contacts[i].Throw)] = (int)label - 1;
                }
            }
        }

        foreach (var label in on.OfType<int>().Where(label => label < search.Nets))
        {
            for (var net = 0; net < search.Nets; net++)
            {
                reached |= Direct[net] == label ? 1 << net : 0;
            }
        }

        var joints = Direct.Rank + on.Count(label => label is not null);
        for (var jumper = search.Nets; jumper < search.Nets + search.Jumpers; jumper++)
        {
            var ends = on.Count(label => label == jumper);
            if (ends == 1)
            {
                return;
            }

            joints -= ends == 0 ? 0 : 1;
        }

        if (problem.MustBeReached.All(group => group.Any(net => (reached & (1 << net)) != 0)))
        {
            search.Keep(
                new Harness(Direct, [.. on], joints, [.. partial.Select(joining => joining.Among(search.Nets))])
            );
        }
    }
}
