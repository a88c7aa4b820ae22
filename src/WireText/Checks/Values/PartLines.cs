using WireText.Circuits;

namespace WireText.Checks.Values;

/// <summary>Writes the line of a part that can be pasted over its own.</summary>
internal static class PartLines
{
    /// <summary>A two-lead part as it is, hung from one lug to another.</summary>
    public static string Hung(Circuit circuit, Part part, int from, int to) =>
        Hung(part, circuit.NameOf(from), circuit.NameOf(to));

    /// <param name="from">The name of a lug, as <paramref name="to"/> is.</param>
    public static string Hung(Part part, string from, string to) => $"{Words(part)} from {from} to {to}";

    /// <summary>The name of the lug that a lead is soldered to; of the lead itself where it is on none.</summary>
    public static string LugOf(CheckContext context, int lead) =>
        context.Circuit.NameOf(
            context
                .WiresAt(lead)
                .Select(wire => wire.From == lead ? wire.To : wire.From)
                .Where(lug => lug >= 0)
                .DefaultIfEmpty(lead)
                .First()
        );

    private static string Words(Part part) =>
        string.Join(' ', new[] { part.Kind, part.Name, part.ValueLabel }.OfType<string>().Concat(part.Traits));
}
