using WireText.Circuits;

namespace WireText.Checks.Connections;

/// <summary>What is soldered to the output jack, and how to solder it the other way round.</summary>
internal static class JackLugs
{
    /// <summary>Where a jack lug stands on the first wire that ends there; the jack's name when none does.</summary>
    public static Text.SourceLocation PlaceOf(CheckContext context, int lug) => Places.Of(context, lug);

    /// <summary>Lines for the wires of two lugs with these lugs exchanged.</summary>
    public static string Exchanged(CheckContext context, int first, int second)
    {
        var lines = context
            .WiresAt(first)
            .Select(wire => Moved(context.Circuit, wire, first, second))
            .Concat(context.WiresAt(second).Select(wire => Moved(context.Circuit, wire, second, first)));
        return string.Join("; ", lines);
    }

    private static string Moved(Circuit circuit, Wire wire, int from, int to)
    {
        var other = wire.From == from ? wire.To : wire.From;
        var otherName = other < 0 ? "cut" : circuit.NameOf(other);
        var colour = WireLines.ColourOf(wire, WireLines.SignalColour);
        return wire.Kind is WireKind.Wire
            ? WireLines.Line(otherName, circuit.NameOf(to), colour)
            : $"{otherName} to {circuit.NameOf(to)}";
    }
}
