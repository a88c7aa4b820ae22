using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Geometry;
using WireText.Testing;

namespace WireText.Tests.Drawing.Layout;

/// <summary>One braid over several cores covers them where they run together, and none of them alone.</summary>
public class BraidOverCoresTests
{
    /// <summary>Four millimetres of bare core, of which half may go round a corner.</summary>
    private const double BareRoundACorner = 2.8;

    private const string ThreeCores = """
        circuit "three cores in one braid"
        pickup neck humbucker-4
        switch join slide-dpdt
        pot    vol  500k audio
        jack   out  mono
        arrange
            neck .    .
            .    join .
            .    vol  out
        cable  neck.n-start to join.A0 red and neck.n-finish to join.B0 white and neck.s-finish to join.A1 green braid cut to vol.case
        wire   neck.s-start to vol.case black
        wire   neck.shield  to vol.case bare
        wire   join.A2      to vol.3 blue
        wire   join.B1      to join.B2 to vol.case yellow
        wire   vol.2        to out.tip white
        wire   vol.case     to out.sleeve black
        """;

    [Theory]
    [InlineData(LayoutEffort.Quick)]
    [InlineData(LayoutEffort.Full)]
    public void Sheath_OfEachCore_RunsBesideAnother(LayoutEffort effort)
    {
        var laid = LayoutEngine.Lay(FaceBuilder.BuildProblem(Drawings.CircuitOf(ThreeCores)), effort);
        var braid = Assert.Single(laid.Braids);

        Assert.Equal(3, braid.Sheath.Length);
        for (var core = 0; core < 3; core++)
        {
            var others = braid.Sheath.Where((_, other) => other != core).ToList();
            Assert.True(braid.Sheath[core].Length >= 2, $"core {core} is not covered");
            var places = Along(braid.Sheath[core]).ToList();
            var alone = places.FindAll(at => others.Min(other => LayoutMeasure.Apart(at, other)) > 4.5);
            // The first core is covered up to its tail, wherever the others part from it: there alone, and nowhere else.
            Assert.True(core == 0 || alone.Count == 0, $"core {core}: {alone.Count} of {places.Count} alone");
            Assert.True(alone.Count < places.Count / 2, $"core {core}: {alone.Count} of {places.Count} alone");
            Assert.True(
                alone.SequenceEqual(places.TakeLast(alone.Count)) || alone.SequenceEqual(places.Take(alone.Count)),
                $"core {core} is alone before its end"
            );
        }
    }

    [Fact]
    public void Sheath_OfEachCore_LeavesItsLugsBare()
    {
        var laid = LayoutEngine.Lay(FaceBuilder.BuildProblem(Drawings.CircuitOf(ThreeCores)), LayoutEffort.Full);
        var braid = Assert.Single(laid.Braids);

        Every.Item(
            braid.Tails,
            tail =>
                Assert.True(LayoutMeasure.Apart(tail.Points[0], braid.Sheath[0]) < 1e-6, "a tail leaves a bare core")
        );
        foreach (var (id, sheath) in braid.Cable.Cores.Zip(braid.Sheath))
        {
            var points = laid.Wires.Single(wire => wire.Wire.Id == id).Points;
            Every.Item(
                new[] { points[0], points[^1] },
                end => Assert.True(LayoutMeasure.Apart(end, sheath) > BareRoundACorner, $"{id} at {end}")
            );
        }
    }

    [Fact]
    public void Sheath_OfCoresThatNeverMeet_IsOneForEach()
    {
        // The second core goes from part to part on the other side of the page.
        var laid = LayoutEngine.Lay(
            FaceBuilder.BuildProblem(
                Drawings.CircuitOf(
                    """
                    metal a1 "a"
                    metal a2 "a"
                    metal b1 "b"
                    metal b2 "b"
                    metal case "case"
                    place a1 at 40,40
                    place a2 at 140,40
                    place b1 at 40,240
                    place b2 at 140,240
                    place case at 90,80
                    cable a1 to a2 red and b1 to b2 white braid cut to case
                    """
                )
            ),
            LayoutEffort.Quick
        );
        var braid = Assert.Single(laid.Braids);

        Assert.Equal(2, braid.Sheath.Length);
        Every.Item(braid.Sheath, sheath => Assert.True(sheath.Length >= 2, "a core has no sheath"));
    }

    private static IEnumerable<Point> Along(IReadOnlyList<Point> path)
    {
        for (var i = 0; i + 1 < path.Count; i++)
        {
            for (var share = 0.0; share <= 1; share += 0.125)
            {
                yield return new Point(
                    path[i].X + ((path[i + 1].X - path[i].X) * share),
                    path[i].Y + ((path[i + 1].Y - path[i].Y) * share)
                );
            }
        }
    }
}
