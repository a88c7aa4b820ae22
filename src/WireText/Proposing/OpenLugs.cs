using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Proposing;

/// <summary>The lugs that are open, and how contacts join them: stars round commons, in columns.</summary>
internal sealed class OpenLugs
{
    /// <summary>Positions that a control may have.</summary>
    public const int MostPositions = 64;

    private readonly Dictionary<int, int> fixedNets;

    private OpenLugs(
        ImmutableArray<int> lugs,
        ImmutableArray<OpenCommon> commons,
        ImmutableArray<ContactColumn> columns,
        Dictionary<int, int> fixedNets
    ) => (Lugs, Commons, Columns, this.fixedNets) = (lugs, commons, columns, fixedNets);

    /// <summary>Indices into <see cref="Circuit.Lugs"/>, in order.</summary>
    public ImmutableArray<int> Lugs { get; }

    public ImmutableArray<OpenCommon> Commons { get; }

    public ImmutableArray<ContactColumn> Columns { get; }

    /// <summary>How many commons may stay without a wire and yet join their throws where several close together.</summary>
    public int MayStayUnsoldered => Enumerable.Range(0, Commons.Length).Count(MayStayEmptyAndJoin);

    public bool MayStayEmptyAndJoin(int common)
    {
        var own = Columns
            .Where(column => column.Contacts.Exists(contact => contact.Common == common || contact.Other == common))
            .ToList();
        return Commons[common] is { MustBeWired: false, Fixed: null }
            && (
                own.Exists(column => own.Exists(other => other != column && (column.Positions & other.Positions) != 0))
                || own.Exists(column =>
                    column.Contacts.Count(contact => contact.Common == common || contact.Other == common) > 1
                )
            );
    }

    /// <summary>The landing net that is on a lug already; null for none.</summary>
    public int? FixedOn(int lug) => fixedNets.TryGetValue(lug, out var net) ? net : null;

    /// <summary>The lugs that positions of the open controls join.</summary>
    public static ImmutableArray<int> Of(Circuit circuit) =>
        [
            .. circuit
                .Open.SelectMany(open => circuit.Controls[open.Control].Positions)
                .SelectMany(position => position.Closed)
                .SelectMany(group => group)
                .Distinct()
                .Order(),
        ];

    /// <param name="fixedNets">For each open lug that has a wire already, its landing net.</param>
    public static OpenLugs Of(Circuit circuit, Dictionary<int, int> fixedNets)
    {
        var pairs = new Dictionary<(int Control, int Centre, int Other), ulong>();
        foreach (var open in circuit.Open)
        {
            AddPairs(circuit.Controls[open.Control], pairs);
        }

        var ends = pairs.Keys.SelectMany(pair => new[] { pair.Centre, pair.Other }).CountBy(lug => lug).ToDictionary();
        var lugs = Of(circuit);
        var isCommon = lugs.Where(lug => ends[lug] > 1 || fixedNets.ContainsKey(lug)).ToHashSet();

        // Of a contact that stands alone one lug is as good a common as the other.
        isCommon.UnionWith(
            pairs
                .Keys.Where(pair => !isCommon.Contains(pair.Centre) && !isCommon.Contains(pair.Other))
                .Select(pair => pair.Centre)
                .ToList()
        );
        var places = lugs.Where(isCommon.Contains)
            .Select((lug, i) => (lug, i))
            .ToDictionary(one => one.lug, one => one.i);
        var columns = pairs
            .GroupBy(pair => (pair.Key.Control, pair.Value))
            .Select(same => new ContactColumn(
                same.Key.Control,
                same.Key.Value,
                [.. same.Select(pair => ContactOf(places, pair.Key.Centre, pair.Key.Other))]
            ))
            .ToImmutableArray();
        return new OpenLugs(lugs, CommonsOf(circuit, places, pairs, fixedNets), columns, fixedNets);
    }

    /// <summary>Each group of closed lugs as a star round the lug that most positions join.</summary>
    private static void AddPairs(Control control, Dictionary<(int, int, int), ulong> pairs)
    {
        var weights = control
            .Positions.SelectMany(position => position.Closed.SelectMany(group => group).Distinct())
            .CountBy(lug => lug)
            .ToDictionary();
        for (var position = 0; position < control.Positions.Length; position++)
        {
            foreach (var group in control.Positions[position].Closed)
            {
                var centre = group.OrderByDescending(lug => weights[lug]).ThenBy(lug => lug).First();
                foreach (var lug in group.Distinct().Where(lug => lug != centre))
                {
                    var pair = (control.Index, centre, lug);
                    pairs[pair] = pairs.GetValueOrDefault(pair) | (1UL << position);
                }
            }
        }
    }

    private static OpenContact ContactOf(Dictionary<int, int> places, int centre, int other) =>
        places.TryGetValue(centre, out var common)
            ? new OpenContact(common, other, places.TryGetValue(other, out var second) ? second : null)
            : new OpenContact(places[other], centre, null);

    private static ImmutableArray<OpenCommon> CommonsOf(
        Circuit circuit,
        Dictionary<int, int> places,
        Dictionary<(int Control, int Centre, int Other), ulong> pairs,
        Dictionary<int, int> fixedNets
    )
    {
        var known = new Dictionary<string, int>(StringComparer.Ordinal);
        var commons = ImmutableArray.CreateBuilder<OpenCommon>();
        foreach (var (lug, place) in places.OrderBy(one => one.Value))
        {
            var own = pairs.Where(pair => pair.Key.Centre == lug || pair.Key.Other == lug).ToList();
            var others = own.ConvertAll(pair => pair.Key.Centre == lug ? pair.Key.Other : pair.Key.Centre);
            var isPlain = !fixedNets.ContainsKey(lug) && !others.Exists(places.ContainsKey);
            var contacts = own.Zip(
                others,
                (pair, other) => $"{pair.Value:X}{(MustBeWired(circuit, other) ? "!" : "")}"
            );
            var likeness = string.Join(
                ' ',
                contacts.Order(StringComparer.Ordinal).Prepend($"{own[0].Key.Control}{MustBeWired(circuit, lug)}")
            );
            int? alike = isPlain && known.TryGetValue(likeness, out var earlier) ? earlier : null;
            if (isPlain)
            {
                known[likeness] = place;
            }

            commons.Add(
                new OpenCommon(
                    lug,
                    own[0].Key.Control,
                    MustBeWired(circuit, lug),
                    fixedNets.TryGetValue(lug, out var net) ? net : null,
                    alike
                )
            );
        }

        return commons.ToImmutable();
    }

    public static bool MustBeWired(Circuit circuit, int lug) =>
        circuit.Lugs[lug] is { IsInner: false, IsMetal: false, Terminal.IsSpare: false };
}
