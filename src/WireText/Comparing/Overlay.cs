using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Comparing;

/// <summary>What becomes of a part or a wire.</summary>
public enum Standing
{
    Stays,
    Comes,
    Goes,
}

/// <summary>Two circuits as one, to be drawn: all of the later, and behind it what came out of the earlier.</summary>
/// <param name="Circuit">Its nets and controls are those of the later circuit; a wire that goes joins nothing.</param>
/// <param name="Parts">By part.</param>
/// <param name="Wires">By wire.</param>
/// <param name="Changes">What is to be done, numbered.</param>
public sealed record Overlay(
    Circuit Circuit,
    ImmutableArray<Standing> Parts,
    ImmutableArray<Standing> Wires,
    ImmutableArray<ListedChange> Changes
)
{
    /// <summary>Which wire of the earlier circuit a wire that goes is, by its place in the circuit that is drawn.</summary>
    private ImmutableDictionary<int, Wire> Gone { get; init; } = ImmutableDictionary<int, Wire>.Empty;

    public static Overlay Of(CircuitComparison circuits)
    {
        var builder = new OverlayBuilder(circuits);
        var both = builder.Build();
        var (now, changed) = (circuits.After, circuits.Wires.Select(change => change.After).OfType<Wire>().ToList());
        ImmutableArray<Standing> parts = [.. both.Parts.Select(part => StandingOf(circuits, now, part.Index))];
        return new Overlay(
            both,
            parts,
            [
                .. both.Wires.Select(wire =>
                    wire.Index >= now.Wires.Length ? Standing.Goes
                    : changed.Exists(one => one.Index == wire.Index) ? Standing.Comes
                    // Another part of the same name comes with leads of its own.
                    : wire.Kind == WireKind.PartLead ? parts[both.Lugs[wire.From].Part]
                    : Standing.Stays
                ),
            ],
            ChangeList.Of(circuits)
        )
        {
            Gone = builder.Gone,
        };
    }

    /// <summary>The wires of the drawn circuit that a change is about: what goes, and what comes in its place.</summary>
    public IEnumerable<Wire> WiresOf(ListedChange change) =>
        Circuit.Wires.Where(wire =>
            Gone.TryGetValue(wire.Index, out var was)
                ? was == change.Wire?.Before
                : wire.Index == change.Wire?.After?.Index
        );

    /// <summary>The part of the drawn circuit that a change is about; null for a change of a wire.</summary>
    public Part? PartOf(ListedChange change) =>
        change.After is { } now ? Circuit.Parts[now.Index]
        : change.Before is { } was ? Circuit.Parts.LastOrDefault(part => part.NameAt == was.NameAt)
        : null;

    private static Standing StandingOf(CircuitComparison circuits, Circuit now, int part) =>
        part >= now.Parts.Length ? Standing.Goes
        : circuits.Added.Any(added => added.Index == part) ? Standing.Comes
        : circuits.Changed.Any(change => change.After.Index == part && !change.IsLearnt) ? Standing.Comes
        : Standing.Stays;
}
