using System.Collections.Immutable;
using CsCheck;
using WireText.Drawing.Layout;
using WireText.Geometry;
using Size = WireText.Geometry.Size;

namespace WireText.Tests.Drawing.Layout;

/// <summary>Random layout problems: parts of every shape that the standard parts have, wires between any of their ends.</summary>
internal static class RandomLayouts
{
    private static readonly ImmutableArray<Func<string, LayoutPart>> Shapes =
    [
        TestParts.Pickup,
        TestParts.Pot,
        TestParts.Lever,
        TestParts.MiniToggle,
        TestParts.PushPull,
        TestParts.Rotary,
        TestParts.Jack,
        TestParts.Capacitor,
        TestParts.Splice,
        TestParts.Ground,
    ];

    private static readonly Gen<LayoutPart> Part =
        from shape in Gen.Int[0, Shapes.Length - 1]
        from isGiven in Gen.Int[0, 9]
        from x in Gen.Int[0, 200]
        from y in Gen.Int[0, 150]
        from turn in Gen.Int[0, 3]
        select Shapes[shape]("p") with
        {
            GivenAt = isGiven == 0 ? new Point(x * 0.7, y * 0.7) : null,
            GivenTurn = isGiven <= 1 ? 90 * turn : null,
        };

    /// <param name="mostParts">At least one part, at most so many.</param>
    public static Gen<LayoutProblem> Problem(int mostParts, int mostWires) =>
        from parts in Part.Array[1, mostParts]
        let named = parts.Select((part, i) => Named(part, $"p{i}")).ToImmutableArray()
        let ends = named.SelectMany(Ends).ToArray()
        from wires in Gen.Select(Gen.Int[0, ends.Length - 1], Gen.Int[0, ends.Length - 1], Gen.Int[0, 2]).Array[
            0,
            mostWires
        ]
        select new LayoutProblem(
            named,
            [
                .. wires.Select(
                    (w, i) =>
                        new LayoutWire(
                            $"w{i}",
                            ends[w.Item1],
                            ends[w.Item2],
                            "red",
                            (WireRank)w.Item3,
                            new Size(4, 2.2)
                        )
                ),
            ],
            [],
            []
        );

    private static LayoutPart Named(LayoutPart part, string id) =>
        part with
        {
            Id = id,
            Lugs = [.. part.Lugs.Select(lug => lug with { Id = id + lug.Id[1..] })],
            Surfaces = [.. part.Surfaces.Select(surface => surface with { Id = id + surface.Id[1..] })],
        };

    private static IEnumerable<string> Ends(LayoutPart part) =>
        part.Lugs.Select(lug => lug.Id).Concat(part.Surfaces.Select(surface => surface.Id));
}
