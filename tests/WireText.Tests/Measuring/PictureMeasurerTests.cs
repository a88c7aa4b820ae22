using System.Text;
using System.Text.Json;
using WireText.Measuring;
using WireText.Testing;

namespace WireText.Tests.Measuring;

public class PictureMeasurerTests
{
    [Fact]
    public void Measure_RightPicture_IsClean()
    {
        var measure = PictureMeasurer.Measure(SmallPicture.Svg, SmallPicture.Source);

        Assert.Null(measure.Error);
        Assert.Empty(measure.Faults);
        Assert.True(measure.IsClean);
    }

    [Fact]
    public void Measure_RightPicture_CountsAsByHand()
    {
        var measure = PictureMeasurer.Measure(SmallPicture.Svg, SmallPicture.Source);

        Assert.Equal((5, 5), (measure.WiresInSource, measure.WiresInPicture));
        Assert.Equal(1, measure.Crossings);
        Assert.Equal(1, measure.MostCrossingsOnOneWire);
        Assert.Equal(3 / 5.0, measure.ShareWithoutCrossing, 9);
        Assert.Equal(9, measure.Bends, 9);
        Assert.Equal(20 + 27 + 28 + 44 + 55, measure.Length, 9);
        Assert.Equal(20 + 27 + 28 + 34 + 27, measure.LowerBound, 9);
        Assert.Equal((86 - 20) * (55 - 10), measure.Area, 9);
        Assert.Equal((174 * 5) + (60 * 9) + 160, measure.Score, 9);
    }

    [Theory]
    [InlineData("a", "data-colour=\"BK\"", 1, 1)]
    [InlineData("b", "data-colour=\"RD\"", 1, 0)] // insulation without a tag
    [InlineData("a", "data-colour=\"bare\"", 0, 0)]
    [InlineData("a", "data-colour=\"\"", 0, 0)]
    public void Measure_WireOfAColour_WantsATagOnIt(string wire, string colour, int wanted, int placed)
    {
        var measure = SmallPicture.Spoiled(
            $"data-wire=\"{wire}\" data-from",
            $"data-wire=\"{wire}\" {colour} data-from"
        );

        Assert.Equal((wanted, placed), (measure.TagsWanted, measure.TagsPlaced));
    }

    [Fact]
    public void Measure_NoSource_CountsThePictureAlone()
    {
        var measure = PictureMeasurer.Measure(SmallPicture.Svg, source: null);

        Assert.Null(measure.WiresInSource);
        Assert.True(measure.IsClean);
    }

    [Fact]
    public void Measure_TwoLinesCrossingTwice_CountsBoth()
    {
        var measure = Lines("M0 10 L40 10", "M10 0 L10 20 L30 20 L30 0");

        Assert.Equal(2, measure.Crossings);
        Assert.Equal(2, measure.MostCrossingsOnOneWire);
    }

    [Theory]
    [InlineData("M0 10 L40 10", "M10 0 L10 10 L20 10 L20 0", 0)] // comes up to the other, runs on it, goes back
    [InlineData("M0 10 L40 10", "M10 0 L20 10 L30 0", 0)] // a corner that touches
    [InlineData("M0 10 L40 10", "M10 0 L20 10 L30 20", 1)] // straight through a point that is no corner
    [InlineData("M0 10 L20 10 L20 30", "M10 0 L20 10 L30 0", 0)] // corner to corner, both outside
    [InlineData("M0 10 L20 10 L20 30", "M10 20 L20 10 L30 20", 1)] // corner to corner, from inside to outside
    [InlineData("M0 10 L40 10", "M10 0 L10 10", 0)] // ends on the other
    public void Measure_LinesThatMeet_CrossOnlyWhenTheyChangeSides(string one, string two, int crossings) =>
        Assert.Equal(crossings, Lines(one, two).Crossings);

    [Fact]
    public void Measure_ParallelAtOnePitch_IsNoCrowding() =>
        Assert.Empty(Lines("M0 10 L40 10", "M0 12 L40 12").FaultsOf(FaultKind.Crowding));

    [Fact]
    public void Measure_CrossingAtARightAngle_IsNoCrowding() =>
        Assert.Empty(Lines("M0 10 L40 10", "M20 0 L20 40").FaultsOf(FaultKind.Crowding));

    [Fact]
    public void Measure_CrossingAtASmallAngle_IsCrowding() =>
        Assert.Single(Lines("M0 10 L40 10", "M0 5 L40 15").FaultsOf(FaultKind.Crowding));

    [Theory]
    [InlineData("M5 10 L6.1 10", 0)] // 1.1 mm on the other: not yet 0.6 pitch
    [InlineData("M5 10 L6.3 10", 1)]
    public void Measure_ShortOverlap_CountsFromSixTenthsOfAPitch(string two, int overlaps) =>
        Assert.Equal(overlaps, Lines("M0 10 L40 10", two).FaultsOf(FaultKind.Overlap).Count());

    [Fact]
    public void ToJson_RightPicture_IsJsonWithEveryCount()
    {
        var json = PictureMeasurer.Measure(SmallPicture.Svg, SmallPicture.Source).ToJson();

        using var document = JsonDocument.Parse(json);
        var root = document.RootElement;
        Assert.Equal(0, root.GetProperty("hardFaults").GetInt32());
        Assert.Equal(5, root.GetProperty("wires").GetProperty("inPicture").GetInt32());
        Assert.Equal(1, root.GetProperty("crossings").GetProperty("total").GetInt32());
        Assert.Equal(1.279, root.GetProperty("lengthOverLowerBound").GetDouble());
        Assert.Equal(11, root.GetProperty("faults").EnumerateObject().Count());
    }

    [Fact]
    public void ToJson_OtherCulture_IsTheSame()
    {
        var measure = PictureMeasurer.Measure(SmallPicture.Svg, SmallPicture.Source);

        Assert.Equal(
            measure.ToJson(),
            OtherCulture.Run(() => PictureMeasurer.Measure(SmallPicture.Svg, SmallPicture.Source).ToJson())
        );
    }

    [Fact]
    public void Measure_TwoThousandWires_CountsEveryCrossing()
    {
        // A hundred lattices of ten by ten wires, one pitch and a half apart.
        var wires = new StringBuilder();
        for (var lattice = 0; lattice < 100; lattice++)
        {
            var (left, top) = (lattice % 10 * 50, lattice / 10 * 50);
            for (var i = 0; i < 10; i++)
            {
                var (x, y) = (left + 5 + (3 * i), top + 5 + (3 * i));
                Append($"M{left} {y} L{left + 40} {y}");
                Append($"M{x} {top} L{x} {top + 40}");
            }
        }

        var measure = PictureMeasurer.Measure(Drawing(wires.ToString()), source: null);

        Assert.Equal(2_000, measure.WiresInPicture);
        Assert.Equal(100 * 10 * 10, measure.Crossings);
        Assert.Equal(10, measure.MostCrossingsOnOneWire);
        Assert.Empty(measure.FaultsOf(FaultKind.Crowding));

        void Append(string path) => wires.Append(Wire($"w{wires.Length}", path));
    }

    /// <summary>Bare lines on no lugs; their ends are wrong, and that is not what is asked.</summary>
    private static PictureMeasure Lines(params string[] paths) =>
        PictureMeasurer.Measure(Drawing(string.Concat(paths.Select((path, i) => Wire($"w{i}", path)))), source: null);

    private static string Wire(string id, string path) =>
        $"<g class=\"wire\" data-wire=\"{id}\"><path class=\"core\" d=\"{path}\"/></g>";

    private static string Drawing(string inside) => $"<svg viewBox=\"0 0 600 600\">{inside}</svg>";
}
