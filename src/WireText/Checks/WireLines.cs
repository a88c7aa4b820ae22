using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Writes wiring lines that can be pasted.</summary>
public static class WireLines
{
    /// <summary>The usual colour of a ground wire. Common practice.</summary>
    public const string GroundColour = "black";

    /// <summary>The usual colour of a signal wire. Common practice.</summary>
    public const string SignalColour = "white";

    public static string Line(string from, string to, string colour) => $"wire {from} to {to} {colour}";

    /// <summary>A stretch as a line of its own.</summary>
    public static string Line(Circuit circuit, Wire wire) =>
        Line(EndName(circuit, wire.From), EndName(circuit, wire.To), ColourOf(wire, SignalColour));

    /// <summary>A line put in below the last wire of a circuit; nothing where it has none.</summary>
    public static ImmutableArray<TextEdit> Added(Circuit circuit, string line) =>
        LastOf(circuit) is { } last ? [TextEdit.LineBelow(last.DeclaredAt, line)] : [];

    /// <summary>The last wire that has a line of its own; null for none.</summary>
    public static Wire? LastOf(Circuit circuit) => circuit.Wires.LastOrDefault(wire => wire.Kind == WireKind.Wire);

    /// <summary>The wire's colour, or another where it has none.</summary>
    public static string ColourOf(Wire wire, string otherwise) => wire.Colour?.Name ?? otherwise;

    /// <summary>A stretch as one speaks of it, its ends in quotes.</summary>
    public static string Ends(Circuit circuit, Wire wire) =>
        $"'{EndName(circuit, wire.From)}' to '{EndName(circuit, wire.To)}'";

    private static string EndName(Circuit circuit, int lug) => lug < 0 ? "cut" : circuit.NameOf(lug);
}
