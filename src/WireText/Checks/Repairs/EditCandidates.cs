using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks.Repairs;

/// <summary>Every edit worth a try, the likeliest first.</summary>
/// <param name="mayMatter">Whether an edit that changes the net of a lug can change what is expected.</param>
/// <remarks>A missing wire comes last: an added one often imitates another that was moved.</remarks>
internal sealed class EditCandidates(Circuit circuit, Func<int, bool> mayMatter)
{
    private readonly ImmutableArray<LugOnLine> places = [.. LugOnLine.All(circuit)];

    /// <summary>Lugs that wires can end on, by net; in each net the one where most wires meet comes first: the usual place for another.</summary>
    private readonly ImmutableArray<ImmutableArray<int>> nets =
    [
        .. circuit.Nets.Members.Select(net =>
            net.RemoveAll(lug => circuit.Lugs[lug].IsInner)
                .OrderByDescending(lug => circuit.Wires.Count(wire => wire.Touches(lug)))
                .ToImmutableArray()
        ),
    ];

    /// <summary>In rank order. Many make the same nets: they are told apart when they are tried.</summary>
    public IEnumerable<CircuitEdit> All() =>
        Renamings()
            .Concat(MovesOnOnePart())
            .Concat(MovesToOtherParts())
            .Concat(ExchangedEnds())
            .Concat(ExchangedLugs())
            .Concat(Removals())
            .Concat(Additions())
            .Where(edit => edit.LugsIn(circuit) is var lugs && (lugs.IsEmpty || lugs.Any(mayMatter)));

    private IEnumerable<CircuitEdit> Renamings()
    {
        foreach (var control in circuit.Controls.Where(control => control.NamedAt is not null))
        {
            ImmutableArray<int> order = [.. Enumerable.Range(0, control.Positions.Length)];
            foreach (var (first, second) in Pairs(order))
            {
                yield return new RenamePositions(control.Index, order.SetItem(first, second).SetItem(second, first));
            }

            // With three names or fewer, turned round is two exchanged.
            if (order.Length > 3)
            {
                yield return new RenamePositions(control.Index, [.. order.Reverse()]);
            }
        }
    }

    /// <summary>To the other lugs of the part, the nearest in its order first.</summary>
    private IEnumerable<CircuitEdit> MovesOnOnePart() =>
        from place in places
        let at = place.LugIn(circuit)
        let lugs = circuit.PartOf(circuit.Lugs[at]).Lugs
        from lug in lugs.OrderBy(lug => Math.Abs(lugs.IndexOf(lug) - lugs.IndexOf(at)))
        where lug != at && !circuit.Lugs[lug].IsInner
        select new MoveEnd(place, lug);

    /// <summary>To one lug of each net: the others make the same circuit.</summary>
    private IEnumerable<CircuitEdit> MovesToOtherParts() =>
        from place in places
        from net in nets
        let lug = net.FirstOrDefault(lug => CanTake(lug), -1)
        where lug >= 0 && !circuit.Nets.SameNet(lug, place.LugIn(circuit))
        select new MoveEnd(place, lug);

    private IEnumerable<CircuitEdit> ExchangedEnds() =>
        from part in circuit.Parts
        from pair in Pairs([.. places.Where(place => circuit.Lugs[place.LugIn(circuit)].Part == part.Index)])
        where pair.First.LugIn(circuit) != pair.Second.LugIn(circuit) && !pair.First.SharesWireWith(pair.Second)
        select new ExchangeEnds(pair.First, pair.Second);

    private IEnumerable<CircuitEdit> ExchangedLugs() =>
        from part in circuit.Parts
        from pair in Pairs(part.Lugs)
        let first = EndsOn(pair.First)
        let second = EndsOn(pair.Second)
        where first.Count > 0 && second.Count > 0 && first.Count + second.Count > 2
        where first.Concat(second).All(end => LugOnLine.IsWritten(circuit, end))
        select new ExchangeLugs(pair.First, pair.Second, [.. first, .. second]);

    private IEnumerable<CircuitEdit> Removals() =>
        from wire in circuit.Wires
        where wire is { Kind: WireKind.Wire, From: >= 0 }
        select new RemoveWire(wire.Index);

    private IEnumerable<CircuitEdit> Additions() =>
        from pair in Pairs(nets)
        let ends = ShortestWay(pair.First, pair.Second)
        where ends is not null
        select new AddWire(ends.Value.From, ends.Value.To);

    /// <summary>Two lugs of one part where there are such, else the first of each net that a wire can end on.</summary>
    private (int From, int To)? ShortestWay(ImmutableArray<int> first, ImmutableArray<int> second)
    {
        var (from, to) = (first.RemoveAll(lug => !CanTake(lug)), second.RemoveAll(lug => !CanTake(lug)));
        foreach (var lug in from)
        {
            if (to.FirstOrDefault(other => circuit.Lugs[other].Part == circuit.Lugs[lug].Part, -1) is >= 0 and var near)
            {
                return (lug, near);
            }
        }

        return from.IsEmpty || to.IsEmpty ? null : (from[0], to[0]);
    }

    /// <summary>A lug takes any wire, a lead one.</summary>
    private bool CanTake(int lug) => !circuit.Lugs[lug].IsLead || !circuit.Wires.Any(wire => wire.Touches(lug));

    private List<WireEnd> EndsOn(int lug) =>
        [.. circuit.Wires.Where(wire => wire.Touches(lug)).Select(wire => new WireEnd(wire.Index, wire.From == lug))];

    private static IEnumerable<(T First, T Second)> Pairs<T>(ImmutableArray<T> all)
    {
        for (var i = 0; i < all.Length; i++)
        {
            for (var j = i + 1; j < all.Length; j++)
            {
                yield return (all[i], all[j]);
            }
        }
    }
}
