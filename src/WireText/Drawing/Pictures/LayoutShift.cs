using System.Collections.Immutable;
using WireText.Drawing.Layout;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Moves a whole layout to its place on the page.</summary>
internal static class LayoutShift
{
    public static LayoutResult By(LayoutResult layout, Point by) =>
        layout with
        {
            Parts =
            [
                .. layout.Parts.Select(part =>
                    part with
                    {
                        At = part.At + by,
                        Label = part.Label is { } label ? Move(label, by) : null,
                    }
                ),
            ],
            Wires = [.. layout.Wires.Select(wire => Move(wire, by))],
            Braids =
            [
                .. layout.Braids.Select(braid =>
                    braid with
                    {
                        Sheath = [.. braid.Sheath.Select(points => Move(points, by))],
                        Tails = [.. braid.Tails.Select(tail => Move(tail, by))],
                    }
                ),
            ],
            Extent = Move(layout.Extent, by),
        };

    private static RoutedWire Move(RoutedWire wire, Point by) =>
        wire with
        {
            Points = Move(wire.Points, by),
            Hops = Move(wire.Hops, by),
            Gaps = Move(wire.Gaps, by),
            Tag = wire.Tag is { } tag ? Move(tag, by) : null,
        };

    private static ImmutableArray<Point> Move(ImmutableArray<Point> points, Point by) =>
        [.. points.Select(point => point + by)];

    private static Box Move(Box box, Point by) => box with { X = box.X + by.X, Y = box.Y + by.Y };
}
