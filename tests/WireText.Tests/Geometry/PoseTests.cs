using WireText.Geometry;

namespace WireText.Tests.Geometry;

public class PoseTests
{
    // A clock's hand: clockwise from twelve to three, to six, to nine, with y running down the page.
    [Theory]
    [InlineData(0, 0, -5)]
    [InlineData(90, 5, 0)]
    [InlineData(180, 0, 5)]
    [InlineData(270, -5, 0)]
    public void OnPage_OfAHandAtTwelve_TurnsClockwise(int turn, double x, double y)
    {
        var pose = new Pose(new Point(100, 50), turn);

        Assert.Equal(new Point(100 + x, 50 + y), pose.OnPage(new Point(0, -5)));
    }

    [Theory]
    [InlineData(0, Side.North)]
    [InlineData(90, Side.East)]
    [InlineData(180, Side.South)]
    [InlineData(270, Side.West)]
    public void OnPage_OfTheUpperSide_TurnsClockwise(int turn, Side side) =>
        Assert.Equal(side, new Pose(default, turn).OnPage(Side.North));

    [Fact]
    public void OnPage_OfABoxTurnedByAQuarter_LiesOnItsSide()
    {
        // From 1,2 to 4,4; its corners go to -2,1 and -4,4.
        var turned = new Pose(new Point(10, 20), 90).OnPage(new Box(1, 2, 3, 2));

        Assert.Equal(new Box(6, 21, 2, 3), turned);
    }

    [Fact]
    public void OnPage_OfACircle_KeepsItsRadius()
    {
        var moved = new Pose(new Point(10, 20), 180).OnPage(new Outline.Circle(new Point(3, 1), 2));

        Assert.Equal(new Outline.Circle(new Point(7, 19), 2), moved);
    }
}
