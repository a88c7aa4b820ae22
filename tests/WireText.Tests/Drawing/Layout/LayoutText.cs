using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Drawing.Layout;
using WireText.Geometry;

namespace WireText.Tests.Drawing.Layout;

/// <summary>A finished layout as text, a part or a wire a line, in millimetres: what a difference between two layouts is read from.</summary>
internal static class LayoutText
{
    public static string Of(LayoutResult layout)
    {
        var text = new StringBuilder();
        foreach (var part in layout.Parts)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"part {part.Part.Id} at {Place(part.At)} turned {part.Turn}{Named("label", part.Label)}\n"
            );
        }

        foreach (var wire in layout.Wires)
        {
            Append(text, $"wire {wire.Wire.Id}", wire);
        }

        foreach (var braid in layout.Braids)
        {
            foreach (var sheath in braid.Sheath)
            {
                text.Append(CultureInfo.InvariantCulture, $"sheath {braid.Cable.BraidId}: {Places(sheath)}\n");
            }

            foreach (var tail in braid.Tails)
            {
                Append(text, $"tail {braid.Cable.BraidId}", tail);
            }
        }

        foreach (var wire in layout.Unrouted)
        {
            text.Append(CultureInfo.InvariantCulture, $"unrouted {wire}\n");
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, string name, RoutedWire wire)
    {
        text.Append(CultureInfo.InvariantCulture, $"{name}: {Places(wire.Points)}");
        text.Append(wire.Hops.IsEmpty ? "" : $" hops {Places(wire.Hops)}");
        text.Append(wire.Gaps.IsEmpty ? "" : $" gaps {Places(wire.Gaps)}");
        text.Append(Named(wire.IsTagVertical ? "upright tag" : "tag", wire.Tag)).Append('\n');
    }

    private static string Named(string name, Box? box) =>
        box is { } b ? $" {name} {Place(new Point(b.X, b.Y))} {Place(new Point(b.Width, b.Height))}" : "";

    private static string Places(ImmutableArray<Point> points) => string.Join(' ', points.Select(Place));

    private static string Place(Point point) =>
        string.Create(CultureInfo.InvariantCulture, $"{point.X:0.###},{point.Y:0.###}");
}
