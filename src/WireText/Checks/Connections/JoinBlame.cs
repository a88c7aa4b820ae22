using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Checks.Connections;

/// <summary>Finds the wire to blame when two lugs are joined that must not be.</summary>
internal sealed class JoinBlame
{
    /// <summary>A smallest set of wires larger than this explains nothing. Chosen.</summary>
    internal const int MaxWires = 8;

    private readonly CheckContext context;
    private readonly State? state;
    private readonly List<(int A, int B)> edges = [];

    /// <summary>For each edge the wire it is, or -1 for a contact, a joined track section or metal inside a part.</summary>
    private readonly List<int> wires = [];

    private JoinBlame(CheckContext context, State? state)
    {
        this.context = context;
        this.state = state;
        foreach (var join in context.Circuit.Joins)
        {
            Add(join.From, join.To, join.Wire);
        }

        AddContacts();
        AddTracks();
    }

    /// <summary>
    /// The wires whose removal parts two lugs: one wire where one is enough, else the smallest set; empty when no few wires do.
    /// </summary>
    /// <param name="hot">The lug whose side should hold what is hot.</param>
    /// <param name="ground">The lug whose side should hold what is ground.</param>
    /// <param name="state">Closes contacts, and joins the track sections that are zero; null to look at solder alone.</param>
    public static ImmutableArray<Wire> Between(CheckContext context, int hot, int ground, State? state) =>
        Likeliest(context, hot, ground, state)[0];

    /// <summary>
    /// As <see cref="Between"/>, but of single wires all that leave as few lugs on the wrong side as the best, each alone.
    /// </summary>
    public static ImmutableArray<ImmutableArray<Wire>> Likeliest(
        CheckContext context,
        int hot,
        int ground,
        State? state
    )
    {
        var blame = new JoinBlame(context, state);
        var single = blame.SingleWires(blame.PathBetween(hot, ground), hot);
        return single.IsEmpty
            ? [blame.SmallestSet(hot, ground)]
            : [.. single.Where(cut => cut.Wrong == single[0].Wrong).Select(cut => ImmutableArray.Create(cut.Wire))];
    }

    private void Add(int a, int b, int wire)
    {
        if (a != b)
        {
            edges.Add((a, b));
            wires.Add(wire);
        }
    }

    private void AddContacts()
    {
        foreach (var (control, position) in state?.Stated ?? [])
        {
            foreach (var group in context.Circuit.Controls[control].Positions[position].Closed)
            {
                foreach (var lug in group.Skip(1))
                {
                    Add(group[0], lug, wire: -1);
                }
            }
        }
    }

    private void AddTracks()
    {
        if (state is null || context.Study?.Network is not { } network)
        {
            return;
        }

        var dials = network.DialsOf(state);
        foreach (var branch in network.Branches)
        {
            if (context.Circuit.Elements[branch.Element] is Track track && dials.StateOf(branch) == SectionState.Joined)
            {
                Add(branch.Kind == BranchKind.TrackLow ? track.Low : track.High, track.Wiper, wire: -1);
            }
        }
    }

    /// <summary>Edges of a shortest way, from the first lug to the second; empty when there is none.</summary>
    private List<int> PathBetween(int from, int to) => PathBetween(from, to, (_, _) => true);

    private List<int> PathBetween(int from, int to, Func<int, int, bool> mayPass)
    {
        var incident = new List<int>?[context.Circuit.Lugs.Length];
        for (var e = 0; e < edges.Count; e++)
        {
            (incident[edges[e].A] ??= []).Add(e);
            (incident[edges[e].B] ??= []).Add(e);
        }

        var enteredBy = new int[incident.Length];
        Array.Fill(enteredBy, -1);
        var queue = new Queue<int>([from]);
        while (queue.TryDequeue(out var lug) && lug != to)
        {
            foreach (var e in incident[lug] ?? [])
            {
                var next = edges[e].A == lug ? edges[e].B : edges[e].A;
                if (next != from && enteredBy[next] < 0 && mayPass(e, lug))
                {
                    enteredBy[next] = e;
                    queue.Enqueue(next);
                }
            }
        }

        var path = new List<int>();
        for (var lug = to; lug != from && enteredBy[lug] >= 0; )
        {
            path.Add(enteredBy[lug]);
            lug = edges[enteredBy[lug]].A == lug ? edges[enteredBy[lug]].B : edges[enteredBy[lug]].A;
        }

        path.Reverse();
        return path;
    }

    /// <summary>Wires on the way that every way uses, best first: those that leave the fewest lugs on the wrong side.</summary>
    private ImmutableArray<(Wire Wire, int Wrong)> SingleWires(List<int> path, int hot)
    {
        var blockOf = BiconnectedBlocks.Label(context.Circuit.Lugs.Length, edges.ToArray());
        var sizes = blockOf.CountBy(block => block).ToDictionary();
        var cuts = path.Where(e => wires[e] >= 0 && sizes[blockOf[e]] == 1).ToList();
        var wrong = LugsOnTheWrongSide(cuts, hot);
        return
        [
            .. cuts.Select((e, i) => (Wire: context.Circuit.Wires[wires[e]], Wrong: wrong[i]))
                .OrderBy(cut => cut.Wrong)
                .ThenByDescending(cut => IsAtAThrowOfThisPosition(cut.Wire))
                .ThenByDescending(cut => cut.Wire.Index),
        ];
    }

    /// <summary>For each cut in the order of the way, the hot-like lugs behind it and the ground-like lugs before it.</summary>
    private int[] LugsOnTheWrongSide(List<int> cuts, int hot)
    {
        var pieces = new DisjointSets(context.Circuit.Lugs.Length);
        var isCut = cuts.ToHashSet();
        for (var e = 0; e < edges.Count; e++)
        {
            if (!isCut.Contains(e))
            {
                pieces.Unite(edges[e].A, edges[e].B);
            }
        }

        // The cuts lie in a chain of pieces: number them from the hot end.
        var order = new Dictionary<int, int> { [pieces.Find(hot)] = 0 };
        foreach (var e in cuts)
        {
            var (a, b) = (pieces.Find(edges[e].A), pieces.Find(edges[e].B));
            order.TryAdd(order.ContainsKey(a) ? b : a, order.Count);
        }

        var (hotIn, groundIn) = (new int[order.Count], new int[order.Count]);
        foreach (var lug in context.Circuit.Lugs)
        {
            if (order.TryGetValue(pieces.Find(lug.Index), out var piece))
            {
                hotIn[piece] += context.Sides.IsHotLike(lug.Index) ? 1 : 0;
                groundIn[piece] += context.Sides.IsGroundLike(lug.Index) ? 1 : 0;
            }
        }

        var (hotBehind, groundBefore) = (hotIn.Sum(), 0);
        var wrong = new int[cuts.Count];
        for (var i = 0; i < cuts.Count; i++)
        {
            hotBehind -= hotIn[i];
            groundBefore += groundIn[i];
            wrong[i] = hotBehind + groundBefore;
        }

        return wrong;
    }

    private bool IsAtAThrowOfThisPosition(Wire wire) =>
        state is not null
        && state.Stated.Any(at =>
            new[] { wire.From, wire.To }.Any(lug => ClosedIn(at.Control, lug) is [var only] && only == at.Position)
        );

    private List<int> ClosedIn(int control, int lug)
    {
        var all = context.Circuit.Controls[control].Positions;
        return [.. Enumerable.Range(0, all.Length).Where(p => all[p].Closed.Any(group => group.Contains(lug)))];
    }

    /// <summary>A minimum cut in which only wires can be cut: every wire carries one unit of flow, the insides of parts any amount.</summary>
    private ImmutableArray<Wire> SmallestSet(int hot, int ground)
    {
        var flow = new int[edges.Count];
        for (var found = 0; ; found++)
        {
            var path = PathBetween(hot, ground, (e, lug) => HasRoom(e, lug));
            if (path.Count == 0)
            {
                return found == 0 ? [] : CutOf(hot);
            }

            // All of it inside parts: no wire ends it.
            if (found == MaxWires || path.TrueForAll(e => wires[e] < 0))
            {
                return [];
            }

            var lug = hot;
            foreach (var e in path)
            {
                flow[e] += edges[e].A == lug ? 1 : -1;
                lug = edges[e].A == lug ? edges[e].B : edges[e].A;
            }
        }

        bool HasRoom(int e, int lug) => wires[e] < 0 || (edges[e].A == lug ? flow[e] : -flow[e]) < 1;

        ImmutableArray<Wire> CutOf(int start)
        {
            var reached = new HashSet<int> { start };
            bool grew;
            do
            {
                grew = false;
                for (var e = 0; e < edges.Count; e++)
                {
                    grew |= reached.Contains(edges[e].A) && HasRoom(e, edges[e].A) && reached.Add(edges[e].B);
                    grew |= reached.Contains(edges[e].B) && HasRoom(e, edges[e].B) && reached.Add(edges[e].A);
                }
            } while (grew);

            return
            [
                .. Enumerable
                    .Range(0, edges.Count)
                    .Where(e => wires[e] >= 0 && reached.Contains(edges[e].A) != reached.Contains(edges[e].B))
                    .Select(e => context.Circuit.Wires[wires[e]]),
            ];
        }
    }
}
