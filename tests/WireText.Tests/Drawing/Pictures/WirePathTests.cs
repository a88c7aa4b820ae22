using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Geometry;

namespace WireText.Tests.Drawing.Pictures;

public class WirePathTests
{
    [Fact]
    public void Draw_AtACorner_RoundsItWithTheFullRadius()
    {
        var drawn = WirePath.Draw([new(0, 0), new(20, 0), new(20, 20)], []);

        var turn = Assert.IsType<PathStep.Turn>(drawn.Steps[2]);
        Assert.Equal(20 - Tokens.CornerRadius, drawn.Steps[1].To.X, 1e-9);
        Assert.Equal(new Point(20, 0), turn.Corner);
        Assert.Equal(Tokens.CornerRadius, turn.To.Y, 1e-9);
        Assert.Equal(new PathStep.Line(new Point(20, 20)), drawn.Steps[3]);
    }

    [Fact]
    public void Draw_OnAShortLeg_RoundsByHalfOfIt()
    {
        var drawn = WirePath.Draw([new(0, 0), new(20, 0), new(20, 2), new(40, 2)], []);

        Assert.Equal(new PathStep.Turn(new Point(20, 0), new Point(20, 1)), drawn.Steps[2]);
    }

    [Fact]
    public void Draw_WithAHop_MakesHalfACircleToTheLeft()
    {
        var drawn = WirePath.Draw([new(0, 0), new(20, 0)], [new WireHop(new Point(10, 0), HopBulge.Left)]);

        Assert.Equal(
            new PathStep.Hop(Tokens.HopRadius, IsClockwise: true, new Point(10 + Tokens.HopRadius, 0)),
            drawn.Steps[2]
        );
        Assert.Single(drawn.Gaps);
    }

    [Fact]
    public void Draw_WithAHopByACorner_GivesTheHopItsRoom()
    {
        var hop = new WireHop(new Point(18, 0), HopBulge.Left);
        var drawn = WirePath.Draw([new(0, 0), new(20, 0), new(20, 20)], [hop]);

        var end = drawn.Steps.OfType<PathStep.Hop>().Single().To.X;
        var turn = drawn.Steps.OfType<PathStep.Turn>().Single();
        Assert.True(end <= 20 - (turn.To.Y - 0) + 1e-9);
    }

    [Fact]
    public void Draw_WithAHopThatHasNoRoom_LeavesAGapOfPaper()
    {
        var drawn = WirePath.Draw([new(0, 0), new(20, 0)], [new WireHop(new Point(0.5, 0), HopBulge.Left)]);

        Assert.DoesNotContain(drawn.Steps, step => step is PathStep.Hop);
        Assert.Single(drawn.Gaps);
    }

    [Theory]
    [InlineData(HopBulge.Left)]
    [InlineData(HopBulge.Right)]
    public void Air_OfAHop_LiesOnItsOuterSideOnly(HopBulge bulge)
    {
        const double Wire = 1.4;
        var drawn = WirePath.Draw([new(0, 0), new(20, 0)], [new WireHop(new Point(10, 0), bulge)]);

        var air = WirePath.Air(drawn.Gaps[0], Wire, Theme.Light.Paper);

        var (arc, width) = (Assert.IsType<PathStep.Hop>(air.Steps[1]), air.Paint.LineWidth);
        Assert.Equal(bulge == HopBulge.Left, arc.IsClockwise);
        Assert.Equal(Tokens.HopRadius - (Wire / 2), arc.Radius - (width / 2), precision: 9);
        Assert.Equal(Tokens.HopRadius + (Wire / 2) + Tokens.Gap, arc.Radius + (width / 2), precision: 9);
        Assert.Equal(2 * arc.Radius, arc.To.X - air.Steps[0].To.X, precision: 9);
    }

    [Fact]
    public void Air_OfAStraightStretch_LiesOnBothSides()
    {
        var drawn = WirePath.Draw([new(0, 0), new(20, 0)], [new WireHop(new Point(10, 0), HopBulge.None)]);

        var air = WirePath.Air(drawn.Gaps[0], 1.4, Theme.Light.Paper);

        Assert.Equal(1.4 + (2 * Tokens.Gap), air.Paint.LineWidth, precision: 9);
    }
}
