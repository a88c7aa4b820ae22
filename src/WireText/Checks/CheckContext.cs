using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Circuits.States;
using WireText.Electrical.Expectations;
using WireText.Electrical.Grounds;
using WireText.Electrical.Mutes;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Roles;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks;

/// <summary>What checks may ask of a circuit. Everything is worked out once, when first asked for.</summary>
public sealed class CheckContext
{
    private readonly Lazy<SituationTree?> tree;
    private readonly Lazy<SituationOutcomes?> outcomes;
    private readonly Lazy<ImmutableArray<Mute>> mutes;
    private readonly Lazy<ImmutableArray<MetalNet>> metal;
    private readonly Lazy<SoundMemo?> sounds;
    private readonly Lazy<SituationSounds> heard;
    private readonly Lazy<DialRoles?> roles;
    private readonly Lazy<ExpectationJudge?> judge;
    private readonly Lazy<ImmutableArray<ExpectationConflict>> conflicts;
    private readonly ILookup<int, Wire> wiresAt;
    private readonly bool[] isJointed;

    public CheckContext(Circuit circuit)
    {
        Circuit = circuit;
        Network = Network.Of(circuit);
        Sides = new Sides(circuit);
        wiresAt = circuit
            .Wires.SelectMany(
                wire => wire.From == wire.To ? [wire.From] : new[] { wire.From, wire.To },
                (wire, lug) => (wire, lug)
            )
            .ToLookup(end => end.lug, end => end.wire);
        isJointed = Jointed(circuit);
        tree = new(() => Network is null ? null : SituationTree.Of(Network));
        outcomes = new(() =>
            Network is null || tree.Value is not { IsComplete: true }
                ? null
                : new SituationOutcomes(Network, tree.Value)
        );
        mutes = new(() => Network is null ? [] : MuteFinder.Find(Network, outcomes.Value));
        sounds = new(() => Network is null ? null : new SoundMemo(Network));
        heard = new(() =>
            sounds.Value is null || outcomes.Value is null
                ? new SituationSounds([])
                : SituationSounds.Of(sounds.Value, outcomes.Value.Situations, mutes.Value)
        );
        roles = new(() =>
            sounds.Value is null || outcomes.Value is null
                ? null
                : DialRoles.Of(sounds.Value, outcomes.Value.Situations, mutes.Value)
        );
        judge = new(() => Sounds is null ? null : new ExpectationJudge(new Analyst(Sounds)));
        conflicts = new(() => ExpectationConflict.Find(circuit, judge.Value));
        metal = new(() => Network is null ? [] : MetalNetFinder.Find(Network, outcomes.Value));
    }

    public Circuit Circuit { get; }

    /// <summary>Null when there is no output jack to look from.</summary>
    public Network? Network { get; }

    public Sides Sides { get; }

    /// <summary>Null when there is no output jack.</summary>
    public SituationTree? Tree => tree.Value;

    /// <summary>All situations with their outcomes; null when there is no output jack or there are too many to list.</summary>
    public SituationOutcomes? Outcomes => outcomes.Value;

    public ImmutableArray<Mute> Mutes => mutes.Value;

    /// <summary>What is heard in states; null when there is no output jack.</summary>
    public SoundMemo? Sounds => sounds.Value;

    /// <summary>What is heard in every unmuted situation; empty when that could not be worked out.</summary>
    public SituationSounds Heard => heard.Value;

    /// <summary>What every dial does; null when there is no output jack or there are too many situations to list.</summary>
    public DialRoles? Roles => roles.Value;

    /// <summary>Proves and refutes what is expected; null when there is no output jack.</summary>
    public ExpectationJudge? Judge => judge.Value;

    /// <summary>Claims that exclude each other: neither can be held against the circuit.</summary>
    public ImmutableArray<ExpectationConflict> Conflicts => conflicts.Value;

    /// <summary>What is expected and can be held against the circuit.</summary>
    public IEnumerable<Expectation> ClearExpectations
    {
        get
        {
            var unclear = new HashSet<object>(
                Conflicts.SelectMany(conflict => new[] { conflict.Earlier, conflict.Later }),
                ReferenceEqualityComparer.Instance
            );
            return Circuit.Expectations.Where(one => !unclear.Contains(one));
        }
    }

    /// <summary>How bare metal comes to the sleeve, net by net.</summary>
    public ImmutableArray<MetalNet> Metal => metal.Value;

    /// <summary>The stretches that end on a lug, in order of declaration.</summary>
    public IEnumerable<Wire> WiresAt(int lug) => wiresAt[lug];

    /// <summary>True when something is soldered to the lug or pressed on it, or on one that is joined with it inside the part.</summary>
    public bool IsJointed(int lug) => isJointed[lug];

    public Mute? MuteOf(int control) => Mutes.FirstOrDefault(mute => mute.Control == control);

    public Subject Subject(int lug) => Text.Subject.Lug(Circuit.NameOf(lug));

    /// <summary>The name of a control's position as it is written: <c>sel=both</c>.</summary>
    public string PositionName(int control, int position) => StateText.Of(Circuit.Controls[control], position);

    /// <summary>The controls that a situation asks, plugs left out.</summary>
    public IEnumerable<Control> Stated(State state) => StateText.Stated(Circuit, state);

    /// <summary>A situation in words, with <c> at </c> before it; empty where no control is asked.</summary>
    public string AtText(State state) =>
        StateText.OfStated(Circuit, state) is { Length: > 0 } words ? " at " + words : "";

    /// <summary>What a situation asks, for a drawing to mark.</summary>
    public IEnumerable<Subject> StatedSubjects(State state) =>
        Stated(state).Select(control => Text.Subject.Position(control.Name, StateText.PositionOf(control, state)));

    /// <summary>True when some state that an expectation means belongs to the situation.</summary>
    public static bool Covers(Expectation expectation, Situation situation) => expectation.State.Meets(situation.State);

    /// <summary>Where a control is declared: the name of its part.</summary>
    public SourceLocation PlaceOf(Control control) => Circuit.Parts[control.Part].NameAt;

    private static bool[] Jointed(Circuit circuit)
    {
        var sets = new DisjointSets(circuit.Lugs.Length);
        var soldered = new bool[circuit.Lugs.Length];
        foreach (var join in circuit.Joins)
        {
            if (join.Kind == JoinKind.Joined)
            {
                sets.Unite(join.From, join.To);
            }
            else if (join.From != join.To)
            {
                soldered[join.From] = soldered[join.To] = true;
            }
        }

        var roots = circuit.Lugs.Where(lug => soldered[lug.Index]).Select(lug => sets.Find(lug.Index)).ToHashSet();
        return [.. circuit.Lugs.Select(lug => roots.Contains(sets.Find(lug.Index)))];
    }
}
