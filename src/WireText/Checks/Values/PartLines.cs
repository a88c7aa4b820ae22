using WireText.Circuits;

namespace WireText.Checks.Values;

/// <summary>Writes the line of a part that can be pasted over its own.</summary>
internal static class PartLines
{
    /// <summary>A two-lead part as it is, hung from one lug to another.</summary>
    public static string Hung(Circuit circuit, Part part, int from, int to) =>
        $"{Words(part)} from {circuit.NameOf(from)} to {circuit.NameOf(to)}";

    private static string Words(Part part) =>
        string.Join(' ', new[] { part.Kind, part.Name, part.ValueLabel }.OfType<string>().Concat(part.Traits));
}
