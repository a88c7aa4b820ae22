using System.Collections.Immutable;
using WireText.Geometry;

namespace WireText.Tests.Geometry;

public class PolylineTests
{
    /// <summary>Ten to the right, then five down.</summary>
    private static readonly ImmutableArray<Point> Hook = [new(0, 0), new(10, 0), new(10, 5)];

    [Fact]
    public void Length_OfAHook_IsThatOfBothArms() => Assert.Equal(15, Polyline.Length(Hook.AsSpan()));

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(4, 4, 0)]
    [InlineData(12, 10, 2)]
    [InlineData(99, 10, 5)]
    public void At_SoFarAlong_TurnsTheCorner(double walked, double x, double y) =>
        Assert.Equal(new Point(x, y), Polyline.At(Hook.AsSpan(), walked));

    [Theory]
    [InlineData(4, 0, 4)]
    [InlineData(10, 2, 12)]
    [InlineData(3, 3, 15)]
    public void PositionOf_APoint_IsTheWayToIt(double x, double y, double walked) =>
        Assert.Equal(walked, Polyline.PositionOf(Hook.AsSpan(), new Point(x, y)));

    [Fact]
    public void Piece_RoundTheCorner_HasTheCornerInIt()
    {
        Assert.Equal<Point>([new(8, 0), new(10, 0), new(10, 1)], Polyline.Piece(Hook.AsSpan(), 8, 11));
        Assert.Empty(Polyline.Piece(Hook.AsSpan(), 8, 8));
    }

    [Fact]
    public void Towards_AnotherPoint_GoesSoFarAndOnPastIt()
    {
        var (from, to) = (new Point(1, 1), new Point(4, 5));

        Assert.Equal(new Point(2.5, 3), from.Towards(to, 2.5));
        Assert.Equal(new Point(7, 9), from.Towards(to, 10));
        Assert.Equal(from, from.Towards(from, 3));
    }
}
