using System.Globalization;

namespace WireText.Proposing;

/// <summary>
/// Looks for the harnesses with fewest joints in which every state is as it must be, and leaves out only what cannot be completed or
/// costs more. See <c>docs/propose.md</c>.
/// </summary>
internal sealed class HarnessSearch
{
    /// <summary>Landing nets that are looked at.</summary>
    internal const int MostNets = 13;

    /// <summary>Harnesses of the least joints that are kept to choose from. Chosen.</summary>
    internal const int MostKept = 3_000;

    /// <summary>Nets of nothing but lugs that a harness may have. Chosen: a second made no harness of the examples smaller.</summary>
    internal const int MostJumpers = 1;

    /// <summary>Contacts that close together in a column: a choice of them is kept in one word.</summary>
    internal const int MostContacts = 12;

    private const int Empty = -1;

    private readonly HarnessProblem problem;
    private readonly JoiningJudge judge;
    private readonly HarnessBudget budget;
    private readonly CancellationToken cancellation;
    private readonly int nets;
    private readonly List<GoodJoinings> states;
    private readonly int[][] closed;
    private readonly int[] withoutThrow;
    private readonly List<Joining> directs;

    private int jumpers;
    private int least;
    private int limit;
    private bool isFirstEnough;
    private List<Harness> found = [];
    private DirectSearch current = null!;

    public HarnessSearch(
        HarnessProblem problem,
        JoiningJudge judge,
        HarnessBudget budget,
        CancellationToken cancellation
    )
    {
        (this.problem, this.judge, this.budget, this.cancellation) = (problem, judge, budget, cancellation);
        nets = problem.Nets.Length;
        closed = [.. problem.States.Select(state => ContactsOf(problem, state))];
        withoutThrow = [.. problem.States.Select(state => ContactsWithoutThrow(problem, state))];
        var free = problem.Nets.Count(net => net.IsFree);
        states =
        [
            .. problem.States.Select(
                (state, i) => GoodJoinings.Of(problem, judge, state, ContactsClosed(problem, state) + free, budget)
            ),
        ];
        directs = states.Exists(state => state.State.IsListed && state.All.Count == 0)
            ? []
            : DirectJoins.Of(problem, states, judge, budget);
    }

    /// <summary>Why a problem cannot be searched; null when it can.</summary>
    public static string? WhyTooLarge(int nets, OpenLugs lugs)
    {
        return nets > MostNets
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"wires may lead to {nets} nets, and {MostNets} are looked at at most: wire some of it, or name fewer controls"
                )
            : nets + MostJumpers + lugs.MayStayUnsoldered > Joining.MostNodes
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"wires may lead to {nets} nets and {lugs.MayStayUnsoldered} commons may stay empty: that is more than is looked at; wire some of it, or name fewer controls"
                )
            : lugs.Columns.Any(column => column.Contacts.Count > MostContacts)
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"more than {MostContacts} contacts close together, which is more than is looked at"
                )
            : null;
    }

    /// <summary>States of which no joining at all is good, wherever contacts could lead.</summary>
    public IEnumerable<HarnessState> Hopeless =>
        states.Where(state => state.State.IsListed && state.All.Count == 0).Select(state => state.State);

    /// <summary>Joints that no harness can do without, as far as it is known without a search.</summary>
    public int Bound { get; private set; }

    /// <summary>All harnesses of the least joints, as many as are kept; empty when there is none, or none was found before the budget ended.</summary>
    /// <param name="mostJumpers">How many nets of lugs alone may be used.</param>
    /// <param name="atLeast">Fewer joints are not looked for.</param>
    /// <param name="atMost">More joints are not looked for.</param>
    /// <param name="isFirstEnough">True to end with the first harness, whatever its joints.</param>
    public List<Harness> Run(int mostJumpers, int atLeast, int atMost, bool isFirstEnough)
    {
        (jumpers, least, limit, this.isFirstEnough, found) = (mostJumpers, atLeast, atMost, isFirstEnough, []);
        if (budget.IsSpent)
        {
            // Of joinings that are listed in part nothing follows.
            return found;
        }

        var ordered = directs
            .Select(direct => new DirectSearch(this, direct))
            .Where(one => one.IsPossible)
            .OrderBy(one => one.Bound)
            .ThenByDescending(one => one.Direct.Rank)
            .ToList();
        Bound = ordered.Count == 0 ? 0 : Math.Max(0, ordered[0].Bound);
        foreach (var one in ordered)
        {
            if (one.Bound > limit || IsDone)
            {
                break;
            }

            current = one;
            one.Run();
        }

        return found;
    }

    private bool IsDone => budget.IsSpent || (isFirstEnough && found.Count > 0);

    private int NodeOfUnsoldered(int place) => nets + jumpers + place;

    private void Keep(Harness harness)
    {
        if (harness.Joints < least || harness.Joints > limit)
        {
            return;
        }

        if (harness.Joints < limit)
        {
            found.Clear();
            limit = harness.Joints;
        }

        if (found.Count < MostKept)
        {
            found.Add(harness);
        }
    }

    private static int ContactsClosed(HarnessProblem problem, HarnessState state) =>
        state.Columns.Sum(column => problem.Lugs.Columns[column].Contacts.Count);

    private static int[] ContactsOf(HarnessProblem problem, HarnessState state)
    {
        var counts = new int[problem.Lugs.Commons.Length];
        foreach (var contact in state.Columns.SelectMany(column => problem.Lugs.Columns[column].Contacts))
        {
            counts[contact.Common]++;
            if (contact.Other is { } other)
            {
                counts[other]++;
            }
        }

        return counts;
    }

    private static int ContactsWithoutThrow(HarnessProblem problem, HarnessState state) =>
        state
            .Columns.SelectMany(column => problem.Lugs.Columns[column].Contacts)
            .Count(contact => contact.Other is not null || problem.Lugs.FixedOn(contact.Throw) is not null);

    /// <summary>What a column may join, and at which cost.</summary>
    private sealed record Choice(Joining Joining, int Cost, ulong Throws);

    /// <summary>The search with some leads joined for good.</summary>
    private sealed class DirectSearch
    {
        private readonly HarnessSearch search;
        private readonly HarnessProblem problem;
        private readonly List<Joining>[] good;
        private readonly int[] labels;
        private readonly int[] assigned;
        private readonly int?[] unsoldered;
        private readonly List<int> nodes = [];
        private readonly Dictionary<(int Column, ulong Labels), List<Choice>> domains = [];
        private readonly int[] order;
        private readonly Joining[] partial;
        private readonly Choice[] chosen;
        private readonly List<int>[] closing;
        private readonly List<int>[] finishing;
        private readonly int[] cheapest;

        public DirectSearch(HarnessSearch search, Joining direct)
        {
            (this.search, problem, Direct) = (search, search.problem, direct);
            var rank = direct.Rank;
            good =
            [
                .. search.states.Select(state =>
                    state.All.FindAll(joining =>
                        joining.Holds(direct) && joining.Rank - rank <= ContactsClosed(problem, state.State)
                    )
                ),
            ];
            IsPossible = search.states.Zip(good).All(one => !one.First.State.IsListed || one.Second.Count > 0);
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

            for (var net = 0; net < search.nets; net++)
            {
                if (direct[net] == net)
                {
                    nodes.Add(net);
                }
            }

            nodes.AddRange(Enumerable.Range(search.nets, search.jumpers));
            order = Order();
            partial = new Joining[problem.States.Length];
            chosen = new Choice[problem.Lugs.Columns.Length];
            cheapest = new int[order.Length + 1];
            closing = [.. order.Select(column => StatesOf(column))];
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

            Bound = rank + (IsPossible ? LeastThrows() : 0) - search.jumpers;
        }

        public Joining Direct { get; }

        public bool IsPossible { get; }

        public int Bound { get; }

        public void Run()
        {
            // A state in which nothing closes is what leads joined for good make it.
            if (
                problem.States.All(state =>
                    state.Columns.Length > 0 || search.judge.IsGood(state, Direct.Among(search.nets))
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

        private List<int> StatesOf(int column) =>
            [
                .. Enumerable
                    .Range(0, problem.States.Length)
                    .Where(state => problem.States[state].Columns.Contains(column)),
            ];

        private bool IsFinishedAt(int state, int depth) =>
            problem.States[state].Columns.All(column => Array.IndexOf(order, column) <= depth);

        /// <summary>Throws that must be wired, by states that share no column: what each joins needs a throw of its own for each join.</summary>
        private int LeastThrows()
        {
            var needs = new List<(int State, int Need)>();
            for (var state = 0; state < good.Length; state++)
            {
                if (search.states[state].State.IsListed)
                {
                    if (LeastJoins(state) is not { } joins)
                    {
                        return int.MaxValue / 2;
                    }

                    needs.Add((state, joins - search.withoutThrow[state]));
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
                    return joining.Rank - Direct.Rank;
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
            for (var net = 0; net < search.nets; net++)
            {
                if (Direct[net] == net)
                {
                    open[joining[net]]++;
                }
            }

            var (free, onJumpers) = (0, 0);
            for (var common = 0; common < labels.Length; common++)
            {
                var contacts = search.closed[state][common];
                if (assigned[common] == 0)
                {
                    free += contacts;
                }
                else if (labels[common] == Empty)
                {
                    continue;
                }
                else if (labels[common] < search.nets)
                {
                    open[joining[labels[common]]] -= contacts;
                }
                else if (labels[common] < search.nets + search.jumpers)
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
            for (var net = 0; net < search.nets; net++)
            {
                if (joining[net] == net && open[net] > 1)
                {
                    needed += open[net] - 1;
                }
            }

            return needed <= free;
        }

        private void ChooseCommon(int common, int cost)
        {
            search.cancellation.ThrowIfCancellationRequested();
            if (search.IsDone || !search.budget.Step(search.judge))
            {
                return;
            }

            if (cost + LeastThrows() - search.jumpers > search.limit)
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
                ChooseCommon(common + 1, cost + (IsSoldered(label) ? 1 : 0));
            }

            labels[common] = Empty;
            assigned[common] = 0;
        }

        private bool IsSoldered(int label) => label != Empty && label < search.nets + search.jumpers;

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

        private int OrderOf(int label) => IsSoldered(label) ? label : Joining.MostNodes;

        private void ChooseColumns(int cost)
        {
            cheapest[order.Length] = 0;
            for (var i = order.Length - 1; i >= 0; i--)
            {
                var domain = DomainOf(order[i]);
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
            foreach (var choice in DomainOf(order[depth]))
            {
                if (
                    search.IsDone
                    || cost + choice.Cost + cheapest[depth + 1] - search.jumpers > search.limit
                    || !search.budget.Step(search.judge)
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
        private bool Fits(int depth, List<Joining> before, Choice choice)
        {
            for (var i = 0; i < before.Count; i++)
            {
                var state = closing[depth][i];
                var joined = before[i].With(choice.Joining);
                partial[state] = joined;
                if (!MayGrowFrom(state, joined.Among(search.nets)))
                {
                    return false;
                }
            }

            return finishing[depth]
                .TrueForAll(state => search.judge.IsGood(problem.States[state], partial[state].Among(search.nets)));
        }

        private bool MayGrowFrom(int state, Joining joining)
        {
            if (!search.states[state].State.IsListed)
            {
                return search.states[state].Allows(joining);
            }

            foreach (var one in good[state])
            {
                if (one.Holds(joining))
                {
                    return true;
                }
            }

            return false;
        }

        /// <summary>All that a column can join with the commons as they are, the cheapest way to each, the cheapest first.</summary>
        private List<Choice> DomainOf(int column)
        {
            var key = (column, KeyOf(column));
            if (!domains.TryGetValue(key, out var domain))
            {
                domains.Add(key, domain = FindDomain(column));
            }

            return domain;
        }

        private ulong KeyOf(int column)
        {
            var key = 0UL;
            foreach (var contact in problem.Lugs.Columns[column].Contacts)
            {
                key = (key * 31) + (ulong)(labels[contact.Common] + 1);
                key = contact.Other is { } other ? (key * 31) + (ulong)(labels[other] + 1) : key;
            }

            return key;
        }

        private List<Choice> FindDomain(int column)
        {
            var states = StatesOf(column);
            var choices = new Dictionary<Joining, Choice> { [Direct] = new(Direct, 0, 0) };
            var contacts = problem.Lugs.Columns[column].Contacts;
            for (var i = 0; i < contacts.Count; i++)
            {
                var next = new Dictionary<Joining, Choice>();
                foreach (var choice in choices.Values)
                {
                    foreach (var grown in Grown(choice, contacts[i], i))
                    {
                        if (
                            (!next.TryGetValue(grown.Joining, out var other) || grown.Cost < other.Cost)
                            && states.TrueForAll(state => MayGrowFrom(state, grown.Joining.Among(search.nets)))
                        )
                        {
                            next[grown.Joining] = grown;
                        }
                    }
                }

                choices = next;
            }

            var alone = states.FindAll(state => problem.States[state].Columns.Length == 1);
            return
            [
                .. choices
                    .Values.Where(choice =>
                        alone.TrueForAll(state =>
                            search.judge.IsGood(problem.States[state], choice.Joining.Among(search.nets))
                        )
                    )
                    .OrderBy(choice => choice.Cost)
                    .ThenBy(choice => choice.Joining.Bits),
            ];
        }

        private IEnumerable<Choice> Grown(Choice choice, OpenContact contact, int place)
        {
            var common = labels[contact.Common];
            if (contact.Other is { } other)
            {
                yield return common == Empty || labels[other] == Empty
                    ? choice
                    : choice with
                    {
                        Joining = choice.Joining.With(common, labels[other]),
                    };
                yield break;
            }

            if (problem.Lugs.FixedOn(contact.Throw) is { } net)
            {
                yield return common == Empty ? choice : choice with { Joining = choice.Joining.With(common, net) };
                yield break;
            }

            var mustBeWired = OpenLugs.MustBeWired(problem.Circuit, contact.Throw);
            if (!mustBeWired)
            {
                yield return choice;
            }

            foreach (var node in nodes)
            {
                if (common != Empty && (mustBeWired || !choice.Joining.AreOne(common, node)))
                {
                    yield return new Choice(
                        choice.Joining.With(common, node),
                        choice.Cost + 1,
                        choice.Throws | ((ulong)(node + 1) << (place * 5))
                    );
                }
            }
        }

        private void Complete()
        {
            var lugs = problem.Lugs;
            var on = new int?[lugs.Lugs.Length];
            for (var common = 0; common < labels.Length; common++)
            {
                if (lugs.Commons[common].Fixed is null && IsSoldered(labels[common]))
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

            foreach (var label in on.OfType<int>().Where(label => label < search.nets))
            {
                for (var net = 0; net < search.nets; net++)
                {
                    reached |= Direct[net] == label ? 1 << net : 0;
                }
            }

            var joints = Direct.Rank + on.Count(label => label is not null);
            for (var jumper = search.nets; jumper < search.nets + search.jumpers; jumper++)
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
                    new Harness(Direct, [.. on], joints, [.. partial.Select(joining => joining.Among(search.nets))])
                );
            }
        }
    }
}
