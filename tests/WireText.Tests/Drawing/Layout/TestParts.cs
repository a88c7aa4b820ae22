using System.Collections.Immutable;
using WireText.Drawing.Layout;
using WireText.Geometry;

namespace WireText.Tests.Drawing.Layout;

/// <summary>Parts in the shapes of the usual ones, in millimetres.</summary>
internal static class TestParts
{
    public static LayoutPart Pickup(string id) =>
        Part(id, LayoutZone.Pickup, Rectangle(70, 38), Row(id, 5, 8, 22, Side.South), new Box(-20, -8, 40, 16));

    public static LayoutPart Pot(string id) =>
        WithCase(Part(id, LayoutZone.Pot, Circle(12), Row(id, 3, 5, 15, Side.South), new Box(-8, -4, 16, 8)), 12);

    public static LayoutPart Lever(string id) =>
        Part(
            id,
            LayoutZone.Switch,
            Rectangle(46, 16),
            [.. Row(id, 4, 10, -6, Side.North), .. Row(id, 4, 10, 6, Side.South, 4)],
            new Box(-10, -2, 20, 4)
        );

    /// <summary>Six lugs inside the outline, 4.7 mm apart: most are off the lattice.</summary>
    public static LayoutPart MiniToggle(string id) =>
        Part(
            id,
            LayoutZone.Switch,
            Rectangle(13, 13),
            [.. Row(id, 3, 4.7, -4, Side.North), .. Row(id, 3, 4.7, 4, Side.South, 3)],
            textBox: null
        ) with
        {
            OutsideLabel = new Size(12, 3),
        };

    /// <summary>A pot with six switch lugs inside its disc.</summary>
    public static LayoutPart PushPull(string id)
    {
        ImmutableArray<LayoutLug> lugs =
        [
            .. Row(id, 3, 5, 15, Side.South),
            .. Enumerable
                .Range(0, 6)
                .Select(i => new LayoutLug(
                    $"{id}.{i + 3}",
                    new Point(i < 3 ? -3 : 3, ((i % 3) - 1) * 5),
                    [i < 3 ? Side.West : Side.East]
                )),
        ];
        return WithCase(Part(id, LayoutZone.Pot, Circle(12), lugs, textBox: null), 12) with
        {
            OutsideLabel = new Size(14, 3),
        };
    }

    /// <summary>A common in the middle and six throws around it.</summary>
    public static LayoutPart Rotary(string id)
    {
        (double X, double Y, Side Side)[] at =
        [
            (0, 0, Side.South),
            (-9, 5, Side.West),
            (-10, -2, Side.West),
            (-5, -9, Side.North),
            (5, -9, Side.North),
            (10, -2, Side.East),
            (9, 5, Side.East),
        ];
        ImmutableArray<LayoutLug> lugs =
        [
            .. at.Select((lug, i) => new LayoutLug($"{id}.{i}", new Point(lug.X, lug.Y), [lug.Side])),
        ];
        return Part(id, LayoutZone.Switch, Circle(13), lugs, textBox: null);
    }

    public static LayoutPart Jack(string id) =>
        Part(id, LayoutZone.Jack, Circle(10), Row(id, 2, 14, 7, Side.South), textBox: null);

    public static LayoutPart Capacitor(string id) =>
        Part(
            id,
            LayoutZone.Small,
            Rectangle(8, 4),
            [
                new LayoutLug($"{id}.0", new Point(-8, 0), [Side.West, Side.North, Side.South]),
                new LayoutLug($"{id}.1", new Point(8, 0), [Side.East, Side.North, Side.South]),
            ],
            textBox: null
        ) with
        {
            OutsideLabel = new Size(6, 3),
        };

    public static LayoutPart Splice(string id) =>
        Part(
            id,
            LayoutZone.Small,
            [],
            [new LayoutLug($"{id}.0", default, [Side.North, Side.East, Side.South, Side.West])],
            textBox: null
        );

    public static LayoutPart Ground(string id) =>
        Part(id, LayoutZone.Ground, Circle(4), Row(id, 1, 0, 6, Side.South), textBox: null);

    private static LayoutPart Part(
        string id,
        LayoutZone zone,
        ImmutableArray<Outline> body,
        ImmutableArray<LayoutLug> lugs,
        Box? textBox
    ) => new(id, zone, 1, body, lugs, [], textBox, null, null, null);

    private static LayoutPart WithCase(LayoutPart part, double radius) =>
        part with
        {
            Surfaces = [new LayoutSurface($"{part.Id}.case", new Outline.Circle(default, radius))],
        };

    private static ImmutableArray<Outline> Circle(double radius) => [new Outline.Circle(default, radius)];

    private static ImmutableArray<Outline> Rectangle(double width, double height) =>
        [new Outline.Rectangle(Box.Around(default, width, height))];

    private static ImmutableArray<LayoutLug> Row(
        string id,
        int count,
        double apart,
        double y,
        Side side,
        int first = 0
    ) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(i => new LayoutLug(
                    $"{id}.{first + i}",
                    new Point((i - ((count - 1) / 2.0)) * apart, y),
                    [side]
                )),
        ];
}
