using WireText.Geometry;

namespace WireText.Tests.Geometry;

public class SegmentTests
{
    private static readonly Box Square = new(0, 0, 10, 10);

    [Theory]
    [InlineData(-5, 5, 15, 5, true)]
    [InlineData(2, 2, 3, 3, true)]
    [InlineData(-5, 3, 3, -5, false)]
    [InlineData(-3, 5, 5, -3, true)]
    [InlineData(-5, -1, 15, -1, false)]
    [InlineData(-5, 0, 15, 0, false)]
    [InlineData(-5, 5, -1, 5, false)]
    public void Meets_ASquare_OnlyWhenItComesInside(double x1, double y1, double x2, double y2, bool meets) =>
        Assert.Equal(meets, new Segment(new Point(x1, y1), new Point(x2, y2)).Meets(Square));

    [Theory]
    [InlineData(5, -5, 5, 5, true)]
    [InlineData(5, 0, 5, 5, false)]
    [InlineData(11, -5, 11, 5, false)]
    public void Cross_WithALineFrom0To10_OnlyWhenEachGoesThroughTheOther(
        double x1,
        double y1,
        double x2,
        double y2,
        bool cross
    )
    {
        var line = new Segment(default, new Point(10, 0));
        var other = new Segment(new Point(x1, y1), new Point(x2, y2));

        Assert.Equal(cross, Segment.Cross(line, other));
        Assert.Equal(cross, Segment.Cross(other, line));
    }

    [Theory]
    [InlineData(3, 4, true)]
    [InlineData(6, 8, true)]
    [InlineData(9, 12, false)]
    [InlineData(3, 5, false)]
    public void Contains_APoint_OnlyBetweenTheEnds(double x, double y, bool contains) =>
        Assert.Equal(contains, new Segment(default, new Point(6, 8)).Contains(new Point(x, y)));

    [Fact]
    public void Near_OfAGrid_GivesWhatTouchesInTheOrderOfAdding()
    {
        var grid = new SegmentGrid();
        grid.Add(new Segment(new Point(0, 0), new Point(0, 100)), owner: 7);
        grid.Add(new Segment(new Point(50, 0), new Point(50, 100)), owner: 8);
        grid.Add(new Segment(new Point(-20, 90), new Point(20, 90)), owner: 9);

        Assert.Equal([7, 9], grid.Near(new Box(-5, 80, 10, 20)).Select(found => found.Owner));
    }
}
