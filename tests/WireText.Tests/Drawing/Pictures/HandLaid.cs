using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Geometry;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>A layout made by hand, so that a judged picture changes only when its look does.</summary>
internal static class HandLaid
{
    public static LayoutResult OnePickup(string text)
    {
        var problem = FaceBuilder.BuildProblem(Drawings.CircuitOf(text));
        var places = new Dictionary<string, Point>(StringComparer.Ordinal)
        {
            ["bridge"] = new(50, 20),
            ["vol"] = new(50, 70),
            ["out"] = new(110, 70),
        };
        return new LayoutResult(
            [.. problem.Parts.Select(part => Placed(part, places[part.Id]))],
            [.. problem.Wires.Select(wire => Route(wire))],
            [],
            new Box(7, 8, 121, 92),
            []
        );
    }

    private static PlacedPart Placed(LayoutPart part, Point at) =>
        new(
            part,
            at,
            Turn: 0,
            part.OutsideLabel is { } size ? Box.Around(new Point(at.X, at.Y - 15), size.Width, size.Height) : null
        );

    private static RoutedWire Route(LayoutWire wire) =>
        wire.From switch
        {
            "bridge.hot" => Routed(
                wire,
                [new(44, 34), new(44, 45), new(34, 45), new(34, 91), new(45, 91), new(45, 85)],
                new Point(34, 70),
                isVertical: true
            ),
            "bridge.ground" => Routed(wire, [new(56, 34), new(56, 62)], new Point(56, 48), isVertical: true),
            "vol.2" => Routed(wire, [new(50, 85), new(50, 92), new(103, 92), new(103, 77)], new Point(72, 92)),
            "vol.1" => Routed(wire, [new(55, 85), new(59, 85), new(59, 76)], null),
            _ => Routed(
                wire,
                [new(60, 68), new(88, 68), new(88, 98), new(117, 98), new(117, 77)],
                new Point(74, 68)
            ) with
            {
                Hops = [new Point(88, 92)],
            },
        };

    private static RoutedWire Routed(LayoutWire wire, ImmutableArray<Point> points, Point? tag, bool isVertical = false)
    {
        var size = wire.Tag ?? default;
        var box =
            tag is not { } at ? (Box?)null
            : isVertical ? Box.Around(at, size.Height, size.Width)
            : Box.Around(at, size.Width, size.Height);
        return new RoutedWire(wire, points, [], box, isVertical);
    }
}
