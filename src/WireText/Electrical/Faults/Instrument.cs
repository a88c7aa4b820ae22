using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Parts;
using WireText.Text;

namespace WireText.Electrical.Faults;

/// <summary>One piece of conductor, a node of its own: a wire over several lugs, a lead, a core, a braid.</summary>
/// <param name="Node">Where it is in <see cref="Instrument.Right"/>; the lug of its lead where it starts or ends at one.</param>
/// <param name="Words">What it is, in words: <c>wire neck.hot to sel.A1</c>.</param>
/// <param name="Lugs">The lugs that it passes, in the order of its line.</param>
public sealed record Run(int Index, int Node, string Words, ImmutableArray<int> Lugs, ImmutableArray<int> Wires);

/// <summary>Where a run meets a lug that it is soldered to.</summary>
/// <param name="Join">Its place in the joins of <see cref="Instrument.Right"/>.</param>
public sealed record SolderJoint(int Index, int Run, int Lug, int Join);

/// <summary>A contact of a switch or a jack: one leaf, in all positions that close it.</summary>
public sealed record Leaf(int Index, int Control, int Common, int Throw);

/// <summary>A jack and the plug of a lead in it, whose tip and sleeve are nodes of their own.</summary>
/// <param name="Tip">The tip of the plug.</param>
/// <param name="TipSpring">Its place in the joins of <see cref="Instrument.Right"/>.</param>
public sealed record PluggedJack(OutputJack Jack, int Tip, int Sleeve, int TipSpring, int SleeveSpring);

/// <summary>A circuit as it lies on the bench: runs with a joint at each lug, contacts leaf by leaf, a lead in its jack.</summary>
/// <remarks>
/// <see cref="Right"/> has the same nets, elements and states as the circuit: what is computed of the one holds for the other. Its
/// lugs are those of the circuit, then runs and plugs, then loose ends that only faults use.
/// </remarks>
public sealed class Instrument
{
    /// <summary>Loose ends: what a fault lifts hangs on one. Two faults at once use four at most.</summary>
    internal const int LooseEnds = 8;

    private readonly ImmutableArray<Join>.Builder joins = ImmutableArray.CreateBuilder<Join>();
    private readonly ImmutableArray<Lug>.Builder lugs;
    private readonly List<Run> runs = [];
    private readonly List<SolderJoint> joints = [];
    private readonly List<PluggedJack> jacks = [];
    private readonly ILookup<int, SolderJoint> jointsByLug;

    private Instrument(Circuit circuit)
    {
        Circuit = circuit;
        lugs = circuit.Lugs.ToBuilder();
        foreach (var join in circuit.Joins.Where(join => join.Wire < 0))
        {
            Add(join.Kind, join.From, join.To, -1, join.DeclaredAt);
        }

        foreach (var stretches in RunsOf(circuit))
        {
            AddRun(stretches);
        }

        foreach (var jack in circuit.Outputs)
        {
            AddPlug(jack);
        }

        Leaves = [.. LeavesOf(circuit)];
        FirstLoose = lugs.Count;
        for (var i = 0; i < LooseEnds; i++)
        {
            AddNode(0, $"loose end {i}");
        }

        var all = joins.ToImmutable();
        Right = circuit with
        {
            Lugs = lugs.ToImmutable(),
            Joins = all,
            Controls = [.. circuit.Controls.Select(ByLeaves)],
            Outputs = [.. jacks.Select(jack => jack.Jack with { Tip = jack.Tip, Sleeve = jack.Sleeve })],
            Nets = NetBuilder.Build(lugs.Count, all),
        };
        (Runs, Joints, Jacks) = ([.. runs], [.. joints], [.. jacks]);
        jointsByLug = Joints.ToLookup(joint => joint.Lug);
        Touches = [.. all.Where(join => join.Kind == JoinKind.Touch).Select(join => join.Index)];
    }

    /// <summary>As the text says it.</summary>
    public Circuit Circuit { get; }

    /// <summary>The same with nothing wrong, joint by joint.</summary>
    public Circuit Right { get; }

    public ImmutableArray<Run> Runs { get; }

    public ImmutableArray<SolderJoint> Joints { get; }

    public ImmutableArray<Leaf> Leaves { get; }

    /// <summary>In the order of <see cref="Circuits.Circuit.Outputs"/>.</summary>
    public ImmutableArray<PluggedJack> Jacks { get; }

    /// <summary>Joins of metal that is pressed on metal.</summary>
    public ImmutableArray<int> Touches { get; }

    internal int FirstLoose { get; }

    public static Instrument Of(Circuit circuit) => new(circuit);

    /// <summary>The circuit with faults in it, one after the other: the same lugs and states, other nets or values.</summary>
    public Circuit With(IEnumerable<FaultSize> faults) =>
        FaultMaker.Make(this, faults.SelectMany(fault => fault.Edits));

    /// <summary>What is soldered to a lug.</summary>
    internal IEnumerable<SolderJoint> JointsOn(int lug) => jointsByLug[lug];

    /// <summary>True where something besides the lug itself is on its net.</summary>
    internal bool LeadsSomewhere(int lug) => Right.Nets.Members[Right.Nets.OneNet[lug]].Length > 1;

    /// <summary>The joint of a run on a lug; null where the run is the lead itself.</summary>
    /// <param name="wire">A stretch of the run that ends on the lug.</param>
    public SolderJoint? JointAt(int lug, int wire) =>
        Joints.FirstOrDefault(joint => joint.Lug == lug && Runs[joint.Run].Wires.Contains(wire));

    private static IEnumerable<List<Wire>> RunsOf(Circuit circuit)
    {
        var run = new List<Wire>();
        foreach (var wire in circuit.Wires.Where(wire => wire.From >= 0 || wire.To >= 0))
        {
            if (run.Count > 0 && (run[0].Run != wire.Run || wire.Kind != WireKind.Wire || run[0].Kind != WireKind.Wire))
            {
                yield return run;
                run = [];
            }

            run.Add(wire);
        }

        if (run.Count > 0)
        {
            yield return run;
        }
    }

    private void AddRun(List<Wire> stretches)
    {
        ImmutableArray<int> passed =
        [
            .. stretches.Select(wire => wire.From).Append(stretches[^1].To).Where(lug => lug >= 0),
        ];
        var words = WordsOf(stretches[0].Kind, passed);
        var lead = LeadOf(stretches[0], passed);
        var run = runs.Count;
        var node = lead ?? AddNode(Circuit.Lugs[passed[0]].Part, words);
        runs.Add(new Run(run, node, words, passed, [.. stretches.Select(wire => wire.Index)]));
        var kind = stretches[0].Kind == WireKind.SpliceLead ? JoinKind.Splice : JoinKind.Wire;
        foreach (var lug in passed.Where(lug => lug != node))
        {
            joints.Add(new SolderJoint(joints.Count, run, lug, joins.Count));
            Add(kind, node, lug, stretches[0].Index, stretches[0].DeclaredAt);
        }
    }

    /// <summary>The lead that a run is itself, which has no joint there; null where both of its ends are soldered.</summary>
    private int? LeadOf(Wire first, ImmutableArray<int> passed) =>
        first.Kind == WireKind.PartLead || Circuit.Lugs[passed[0]].IsLead ? passed[0]
        : Circuit.Lugs[passed[^1]].IsLead ? passed[^1]
        : null;

    private string WordsOf(WireKind kind, ImmutableArray<int> passed)
    {
        var names = string.Join(" to ", passed.Select(Circuit.NameOf));
        return kind switch
        {
            WireKind.Core => $"core {names}",
            WireKind.Braid => $"braid {names}",
            WireKind.PartLead or WireKind.SpliceLead => $"lead {names}",
            _ => $"wire {names}",
        };
    }

    private void AddPlug(OutputJack jack)
    {
        var part = Circuit.Parts[jack.Part];
        var tip = AddNode(part.Index, $"plug tip in {part.Name}");
        var sleeve = AddNode(part.Index, $"plug sleeve in {part.Name}");
        jacks.Add(new PluggedJack(jack, tip, sleeve, joins.Count, joins.Count + 1));
        Add(JoinKind.Wire, jack.Tip, tip, -1, part.NameAt);
        Add(JoinKind.Wire, jack.Sleeve, sleeve, -1, part.NameAt);
    }

    private int AddNode(int part, string name)
    {
        lugs.Add(new Lug(lugs.Count, part, name, new Terminal(name, TerminalKind.Inner, null, false, true)));
        return lugs.Count - 1;
    }

    private void Add(JoinKind kind, int from, int to, int wire, SourceLocation at) =>
        joins.Add(new Join(joins.Count, kind, from, to, wire, at));

    /// <summary>The leaves of every control: of lugs that a position joins, each other one with the common.</summary>
    private static IEnumerable<Leaf> LeavesOf(Circuit circuit)
    {
        var leaves = new List<Leaf>();
        foreach (var control in circuit.Controls)
        {
            foreach (
                var (common, other) in control.Positions.SelectMany(p => p.Closed).SelectMany(g => Pairs(control, g))
            )
            {
                if (
                    !leaves.Exists(leaf =>
                        leaf.Control == control.Index && leaf.Common == common && leaf.Throw == other
                    )
                )
                {
                    leaves.Add(new Leaf(leaves.Count, control.Index, common, other));
                }
            }
        }

        return leaves;
    }

    private static Control ByLeaves(Control control) =>
        control with
        {
            Positions =
            [
                .. control.Positions.Select(position =>
                    position with
                    {
                        Closed =
                        [
                            .. position
                                .Closed.SelectMany(group => Pairs(control, group))
                                .Select(pair => ImmutableArray.Create(pair.Common, pair.Other)),
                        ],
                    }
                ),
            ],
        };

    /// <summary>The common is the lug that most groups of the control hold, the first of several.</summary>
    private static IEnumerable<(int Common, int Other)> Pairs(Control control, ImmutableArray<int> group)
    {
        var common = group.MaxBy(lug =>
            control.Positions.SelectMany(position => position.Closed).Count(other => other.Contains(lug))
        );
        return group.Where(lug => lug != common).Select(lug => (common, lug));
    }
}
