using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Sheets;

/// <summary>A line of the parts list: parts that are bought alike.</summary>
/// <param name="What">Kind, model and words: <c>cap film</c>.</param>
/// <param name="Value">With the taper of a pot; empty for none.</param>
/// <param name="Tolerance">Empty where the file does not say.</param>
/// <param name="Marking">What to look for on the part by IEC 60062; empty for none.</param>
internal sealed record PartRow(
    int Quantity,
    string What,
    string Value,
    string Tolerance,
    string Marking,
    ImmutableArray<string> Names
)
{
    /// <summary>The parts to have on the bench, in the order of the file. Splices are made there, and metal is on the instrument.</summary>
    /// <param name="parts">Of the circuit.</param>
    public static ImmutableArray<PartRow> ListOf(Circuit circuit, IEnumerable<Part> parts) =>
        [
            .. parts
                .Where(part => part.Kind is not (PartKinds.Splice or PartKinds.Metal))
                .Select(part => Of(circuit, part))
                .GroupBy(row => (row.What, row.Value, row.Tolerance, row.Marking))
                .Select(alike =>
                    alike.First() with
                    {
                        Quantity = alike.Count(),
                        Names = [.. alike.SelectMany(row => row.Names)],
                    }
                ),
        ];

    private static PartRow Of(Circuit circuit, Part part)
    {
        var model = part.Definition.Model == PartDefinition.StandardModel ? null : part.Definition.Model;
        ImmutableArray<Element> elements = [.. part.Elements.Select(element => circuit.Elements[element])];
        return new PartRow(
            1,
            string.Join(' ', new[] { part.Kind, model }.Concat(part.Traits).OfType<string>().Distinct()),
            string.Join(' ', new[] { part.ValueLabel, part.TaperLabel }.OfType<string>()),
            string.Join(
                ", ",
                elements.Select(element => element.Tolerance).OfType<double>().Distinct().Select(InPercent)
            ),
            elements is [var only] ? MarkingOf(only) : "",
            [part.Name]
        );
    }

    private static string MarkingOf(Element element) =>
        element switch
        {
            { Doubt: not null } => null,
            Capacitor capacitor => MarkingCode.OfCapacitor(capacitor.Farads),
            Resistor resistor => MarkingCode.OfResistor(resistor.Ohms),
            _ => null,
        } ?? "";

    private static string InPercent(double fraction) =>
        string.Create(CultureInfo.InvariantCulture, $"±{fraction * 100:0.##} %");
}
