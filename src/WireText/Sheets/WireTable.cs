using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Quantities;

namespace WireText.Sheets;

/// <summary>The words of the wire list.</summary>
public static class WireTable
{
    /// <summary>
    /// Bare wire for a joint, in millimetres: once round an eyelet of 1.6 mm (π × 1.6 = 5 mm), and 1 mm that keeps the
    /// insulation out of the solder.
    /// </summary>
    private const int Strip = 6;

    /// <summary>Where a run passes a lug: both sides of the eyelet, in millimetres.</summary>
    private const int StripOnTheWay = 2 * Strip;

    public static ImmutableArray<string> Heading { get; } =
    ["no.", "colour", "from", "to", "awg", "stated mm", "cut mm", "strip", "sleeve", "joints"];

    public static string Legend { get; } =
        "Cut: the way on the diagram and a tenth more for bends, 15 mm for each end, rounded up to 5 mm; known where the file says "
        + "the places of the parts. 'measure' asks for a string along the real way. A lead that its part came with is trimmed when "
        + "it lies in its place.";

    public static ImmutableArray<string> Cells(WireRow wire) =>
        [
            Text(wire.Number),
            ColourOf(wire),
            wire.Lugs[0] ?? "cut back",
            string.Join(", ", wire.Lugs.Skip(1).Select(lug => lug ?? "cut back")),
            GaugeOf(wire.Gauge),
            wire.StatedMillimetres is { } stated ? Text(stated) : "",
            wire.IsOwnLead ? "own lead"
            : wire.CutMillimetres is { } cut ? Text(cut)
            : wire.StatedMillimetres is null ? "measure"
            : "",
            StripOf(wire),
            wire.IsSleeved ? "yes" : "",
            string.Join(' ', wire.Joints.Select(joint => Text(joint))),
        ];

    private static string ColourOf(WireRow wire)
    {
        var colour = wire.Kind == WireKind.Braid ? "braid" : wire.Colour;
        return wire.TwistedWith.IsEmpty
            ? colour
            : $"{colour}, twisted with {string.Join(" and ", wire.TwistedWith.Select(number => Text(number)))}";
    }

    public static string GaugeOf(double? gauge) => gauge is { } awg ? Text(awg) : "";

    private static string StripOf(WireRow wire)
    {
        if (wire.Colour == InsulationColour.Bare.Name || wire.Kind == WireKind.Braid)
        {
            return "";
        }

        var ends = wire.IsOwnLead ? $"{Strip} mm" : $"2 × {Strip} mm";
        var onTheWay = wire.Lugs.Length - 2;
        return onTheWay == 0 ? ends : $"{ends}, {Text(onTheWay)} × {StripOnTheWay} mm on the way";
    }

    private static string Text(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
