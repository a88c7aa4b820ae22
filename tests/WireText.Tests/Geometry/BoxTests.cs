using WireText.Geometry;

namespace WireText.Tests.Geometry;

public class BoxTests
{
    private static readonly Box Square = new(0, 0, 10, 10);

    [Theory]
    [InlineData(9, 9, true)]
    [InlineData(10, 0, false)]
    [InlineData(0, 10, false)]
    [InlineData(11, 0, false)]
    [InlineData(-3, 4, true)]
    public void Overlaps_ABoxOfFourAtAPlace_CountsAreaAndNotEdges(double x, double y, bool overlaps)
    {
        var other = new Box(x, y, 4, 4);

        Assert.Equal(overlaps, Square.Overlaps(other));
        Assert.Equal(overlaps, other.Overlaps(Square));
    }

    [Theory]
    [InlineData(5, 5, 0)]
    [InlineData(10, 10, 0)]
    [InlineData(13, 14, 5)]
    [InlineData(5, -7, 7)]
    public void DistanceTo_APoint_IsToTheNearestEdge(double x, double y, double distance) =>
        Assert.Equal(distance, Square.DistanceTo(new Point(x, y)));

    [Theory]
    [InlineData(5, 4, 4)]
    [InlineData(9, 5, 1)]
    [InlineData(12, 5, -2)]
    public void Depth_OfAPoint_IsNegativeOutside(double x, double y, double depth) =>
        Assert.Equal(depth, Square.Depth(new Point(x, y)));

    [Fact]
    public void Union_OfTwoApart_HoldsBothAndNoMore() =>
        Assert.Equal(new Box(-2, 0, 12, 25), Box.Union(Square, new Box(-2, 20, 3, 5)));

    [Fact]
    public void Distance_OfTwoApartBothWays_IsTheDiagonalOfTheGap() =>
        Assert.Equal(5, Box.Distance(Square, new Box(13, 14, 1, 1)));

    [Fact]
    public void Grown_ByLessThanNothing_Shrinks()
    {
        Assert.Equal(new Box(-1, -1, 12, 12), Square.Grown(1));
        Assert.Equal(new Box(2, 2, 6, 6), Square.Grown(-2));
    }
}
