namespace WireText.Proposing;

/// <summary>What each column of contacts can join while the commons are labelled as they are; kept for each labelling.</summary>
/// <param name="direct">Leads joined for good.</param>
/// <param name="good">For each state the good joinings that hold them.</param>
/// <param name="nodes">The nodes that a throw may be soldered to.</param>
/// <param name="labels">For each common the node on it, as the search goes on.</param>
internal sealed class ColumnDomains(
    HarnessSearch search,
    Joining direct,
    List<Joining>[] good,
    List<int> nodes,
    int[] labels
)
{
    private readonly HarnessProblem problem = search.Problem;
    private readonly Dictionary<(int Column, ulong Labels), List<ColumnChoice>> domains = [];

    /// <summary>True where more joins can still make a state good.</summary>
    public bool MayGrowFrom(int state, Joining joining)
    {
        if (!search.States[state].State.IsListed)
        {
            return search.States[state].Allows(joining);
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
    public List<ColumnChoice> Of(int column)
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

    private List<ColumnChoice> FindDomain(int column)
    {
        var states = problem.StatesOf(column);
        var choices = new Dictionary<Joining, ColumnChoice> { [direct] = new(direct, 0, 0) };
        var contacts = problem.Lugs.Columns[column].Contacts;
        for (var i = 0; i < contacts.Count; i++)
        {
            var next = new Dictionary<Joining, ColumnChoice>();
            foreach (var choice in choices.Values)
            {
                foreach (var grown in Grown(choice, contacts[i], i))
                {
                    if (
                        (!next.TryGetValue(grown.Joining, out var other) || grown.Cost < other.Cost)
                        && states.TrueForAll(state => MayGrowFrom(state, grown.Joining.Among(search.Nets)))
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
                        search.Judge.IsGood(problem.States[state], choice.Joining.Among(search.Nets))
                    )
                )
                .OrderBy(choice => choice.Cost)
                .ThenBy(choice => choice.Joining.Bits),
        ];
    }

    private IEnumerable<ColumnChoice> Grown(ColumnChoice choice, OpenContact contact, int place)
    {
        var common = labels[contact.Common];
        if (contact.Other is { } other)
        {
            yield return common == DirectSearch.Empty || labels[other] == DirectSearch.Empty
                ? choice
                : choice with
                {
                    Joining = choice.Joining.With(common, labels[other]),
                };
            yield break;
        }

        if (problem.Lugs.FixedOn(contact.Throw) is { } net)
        {
            yield return common == DirectSearch.Empty
                ? choice
                : choice with
                {
                    Joining = choice.Joining.With(common, net),
                };
            yield break;
        }

        var mustBeWired = OpenLugs.MustBeWired(problem.Circuit, contact.Throw);
        if (!mustBeWired)
        {
            yield return choice;
        }

        foreach (var node in nodes)
        {
            if (common != DirectSearch.Empty && (mustBeWired || !choice.Joining.AreOne(common, node)))
            {
                yield return new ColumnChoice(
                    choice.Joining.With(common, node),
                    choice.Cost + 1,
                    choice.Throws | ((ulong)(node + 1) << (place * 5))
                );
            }
        }
    }
}
