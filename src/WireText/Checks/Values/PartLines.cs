using WireText.Circuits;

namespace WireText.Checks.Values;

/// <summary>Writes the line of a part that can be pasted over its own.</summary>
internal static class PartLines
{
    /// <summary>A two-lead part as it is, hung from one lug to another.</summary>
    public static string Hung(Circuit circuit, Part part, int from, int to) =>
        $"{Words(part)} from {circuit.NameOf(from)} to {circuit.NameOf(to)}";

    /// <summary>The lug that a lead is soldered to; the lead itself where it is on none.</summary>
    public static int LugUnder(CheckContext context, int lead) =>
        context
            .WiresAt(lead)
            .Select(wire => wire.From == lead ? wire.To : wire.From)
            .Where(lug => lug >= 0)
            .DefaultIfEmpty(lead)
            .First();

    private static string Words(Part part) =>
        string.Join(' ', new[] { part.Kind, part.Name, part.ValueLabel }.OfType<string>().Concat(part.Traits));
}
