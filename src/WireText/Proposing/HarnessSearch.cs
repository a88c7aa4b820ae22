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

    private readonly List<Joining> directs;

    private int least;
    private bool isFirstEnough;
    private List<Harness> found = [];

    public HarnessSearch(
        HarnessProblem problem,
        JoiningJudge judge,
        HarnessBudget budget,
        CancellationToken cancellation
    )
    {
        (Problem, Judge, Budget, Cancellation) = (problem, judge, budget, cancellation);
        Closed = [.. problem.States.Select(state => ContactsOf(problem, state))];
        WithoutThrow = [.. problem.States.Select(state => ContactsWithoutThrow(problem, state))];
        var free = problem.Nets.Count(net => net.IsFree);
        States =
        [
            .. problem.States.Select(
                (state, i) => GoodJoinings.Of(problem, judge, state, ContactsClosed(problem, state) + free, budget)
            ),
        ];
        directs = States.Exists(state => state.State.IsListed && state.All.Count == 0)
            ? []
            : DirectJoins.Of(problem, States, judge, budget);
    }

    public HarnessProblem Problem { get; }

    public JoiningJudge Judge { get; }

    public HarnessBudget Budget { get; }

    public CancellationToken Cancellation { get; }

    /// <summary>Landing nets.</summary>
    public int Nets => Problem.Nets.Length;

    /// <summary>For each state what may be joined in it.</summary>
    public List<GoodJoinings> States { get; }

    /// <summary>For each state, how many contacts close on each common.</summary>
    public int[][] Closed { get; }

    /// <summary>For each state, how many contacts close that need no throw of their own.</summary>
    public int[] WithoutThrow { get; }

    /// <summary>Nets of lugs alone that the run may use.</summary>
    public int Jumpers { get; private set; }

    /// <summary>More joints are no longer looked for.</summary>
    public int Limit { get; private set; }

    /// <summary>True when nothing more is looked for.</summary>
    public bool IsDone => Budget.IsSpent || (isFirstEnough && found.Count > 0);

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
        States.Where(state => state.State.IsListed && state.All.Count == 0).Select(state => state.State);

    /// <summary>Joints that no harness can do without, as far as it is known without a search.</summary>
    public int Bound { get; private set; }

    /// <summary>All harnesses of the least joints, as many as are kept; empty when there is none, or none was found before the budget ended.</summary>
    /// <param name="mostJumpers">How many nets of lugs alone may be used.</param>
    /// <param name="atLeast">Fewer joints are not looked for.</param>
    /// <param name="atMost">More joints are not looked for.</param>
    /// <param name="isFirstEnough">True to end with the first harness, whatever its joints.</param>
    public List<Harness> Run(int mostJumpers, int atLeast, int atMost, bool isFirstEnough)
    {
        (Jumpers, least, Limit, this.isFirstEnough, found) = (mostJumpers, atLeast, atMost, isFirstEnough, []);
        if (Budget.IsSpent)
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
            if (one.Bound > Limit || IsDone)
            {
                break;
            }

            one.Run();
        }

        return found;
    }

    /// <summary>The node of a common that stays without a wire and still joins its contacts.</summary>
    public int NodeOfUnsoldered(int place) => Nets + Jumpers + place;

    /// <summary>True for a node that a lug can be soldered to; <see cref="DirectSearch.Empty"/> and the nodes of unsoldered commons are none.</summary>
    public bool IsSoldered(int node) => node != DirectSearch.Empty && node < Nets + Jumpers;

    /// <summary>Keeps a harness that needs no more joints than those before.</summary>
    public void Keep(Harness harness)
    {
        if (harness.Joints < least || harness.Joints > Limit)
        {
            return;
        }

        if (harness.Joints < Limit)
        {
            found.Clear();
            Limit = harness.Joints;
        }

        if (found.Count < MostKept)
        {
            found.Add(harness);
        }
    }

    /// <summary>Contacts that close in a state.</summary>
    public static int ContactsClosed(HarnessProblem problem, HarnessState state) =>
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
}
