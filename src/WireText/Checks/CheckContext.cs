using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Electrical.Situations;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Checks;

/// <summary>What checks may ask: an index of the circuit, its words, and what the electrical stage found out.</summary>
public class CheckContext
{
    private readonly Lazy<ImmutableArray<ExpectationConflict>> conflicts;
    private readonly Lazy<ImmutableArray<Lug>> groundedMetal;
    private readonly ILookup<int, Wire> wiresAt;
    private readonly bool[] isJointed;

    /// <param name="circuit">Its places and colours count; <paramref name="study"/> may speak of a twin of it.</param>
    protected CheckContext(Circuit circuit, Study? study, CancellationToken cancellation)
    {
        Circuit = circuit;
        Cancellation = cancellation;
        Sides = new Sides(circuit);
        wiresAt = circuit
            .Wires.SelectMany(
                wire => wire.From == wire.To ? [wire.From] : new[] { wire.From, wire.To },
                (wire, lug) => (wire, lug)
            )
            .ToLookup(end => end.lug, end => end.wire);
        isJointed = Jointed(circuit);
        groundedMetal = new(() => Grounded(circuit));
        conflicts = new(() => ExpectationConflict.Find(circuit, study is null ? null : study.JudgeOf, cancellation));
    }

    public Circuit Circuit { get; }

    /// <summary>What the electrical stage found out; null when there is no output jack to look from.</summary>
    public virtual Study? Study => null;

    public CancellationToken Cancellation { get; }

    public Sides Sides { get; }

    /// <summary>Claims that exclude each other: neither can be held against the circuit.</summary>
    public ImmutableArray<ExpectationConflict> Conflicts => conflicts.Value;

    /// <summary>The cases and plates that are soldered to the sleeve, in the order of their parts; only with an output jack.</summary>
    public ImmutableArray<Lug> GroundedMetal => groundedMetal.Value;

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

    /// <param name="study">Of the circuit or a twin of it; null when it has no output jack.</param>
    public static CheckContext Of(Circuit circuit, Study? study, CancellationToken cancellation = default) =>
        study is null
            ? new CheckContext(circuit, null, cancellation)
            : new StudyContext(circuit, study.Until(cancellation), cancellation);

    /// <summary>The stretches that end on a lug, in order of declaration.</summary>
    public IEnumerable<Wire> WiresAt(int lug) => wiresAt[lug];

    /// <summary>True when something is soldered to the lug or pressed on it, or on one that is joined with it inside the part.</summary>
    public bool IsJointed(int lug) => isJointed[lug];

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

    private static ImmutableArray<Lug> Grounded(Circuit circuit)
    {
        var sleeve = circuit.Outputs[0].Sleeve;
        return
        [
            .. circuit.Lugs.Where(lug =>
                lug.IsMetal && !lug.IsLead && !lug.IsInner && circuit.Nets.SameSolder(lug.Index, sleeve)
            ),
        ];
    }

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
