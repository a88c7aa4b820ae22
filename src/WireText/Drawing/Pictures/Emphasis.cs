using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Comparing;
using WireText.Electrical.Traces;

namespace WireText.Drawing.Pictures;

/// <summary>What stands out while the rest steps back.</summary>
/// <param name="Lugs">By lug.</param>
/// <param name="Wires">By wire.</param>
/// <param name="Parts">By part.</param>
/// <param name="Kept">How much of its own colour the rest keeps, in percent.</param>
internal sealed record Emphasis(
    ImmutableArray<bool> Lugs,
    ImmutableArray<bool> Wires,
    ImmutableArray<bool> Parts,
    int Kept
)
{
    /// <summary>Beside what is followed: enough to see that it is there. Chosen.</summary>
    private const int KeptBesideATrace = 18;

    /// <summary>Beside what changes: the circuit must still be read, for a change is made in it. Chosen by eye.</summary>
    private const int KeptBesideChanges = 36;

    /// <summary>Null where nothing stands out.</summary>
    public static Emphasis? Of(Scene scene) =>
        scene.Options.Trace is { } trace ? Of(scene.Circuit, trace)
        : scene.Options.Changes is { } changes ? Of(changes.Overlay)
        : null;

    private static Emphasis Of(Circuit circuit, Trace trace) =>
        new(trace.Lugs, trace.Wires, [.. circuit.Parts.Select(trace.Holds)], KeptBesideATrace);

    private static Emphasis Of(Overlay overlay)
    {
        var changed = overlay.Circuit.Wires.Where(wire => overlay.Wires[wire.Index] != Standing.Stays).ToList();
        return new Emphasis(
            [
                .. overlay.Circuit.Lugs.Select(lug =>
                    overlay.Parts[lug.Part] == Standing.Comes || changed.Exists(wire => wire.Touches(lug.Index))
                ),
            ],
            [.. overlay.Wires.Select(standing => standing != Standing.Stays)],
            [.. overlay.Parts.Select(standing => standing != Standing.Goes)],
            KeptBesideChanges
        );
    }
}
