using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Parts;

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
            Assert.All(
                Along(braid.Sheath[core]),
                at =>
                    Assert.True(
                        others.Min(other => LayoutMeasure.Apart(at, other)) <= 4.5,
                        $"core {core} alone at {at}"
                    )
            );
        }
    }

    [Fact]
    public void Sheath_OfEachCore_LeavesItsLugsBare()
    {
        var laid = LayoutEngine.Lay(FaceBuilder.BuildProblem(Drawings.CircuitOf(ThreeCores)), LayoutEffort.Full);
        var braid = Assert.Single(laid.Braids);

        foreach (var (id, sheath) in braid.Cable.Cores.Zip(braid.Sheath))
        {
            var points = laid.Wires.Single(wire => wire.Wire.Id == id).Points;
            Assert.All(
                new[] { points[0], points[^1] },
                end => Assert.True(LayoutMeasure.Apart(end, sheath) > BareRoundACorner, $"{id} at {end}")
            );
        }
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
