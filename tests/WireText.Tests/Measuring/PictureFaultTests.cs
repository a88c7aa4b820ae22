using WireText.Measuring;
using static WireText.Tests.Measuring.Things;

namespace WireText.Tests.Measuring;

/// <summary>A right drawing is spoiled in one way at a time; the measure names that fault and no other.</summary>
public class PictureFaultTests
{
    [Fact]
    public void Measure_WireThroughABody_NamesBoth()
    {
        var measure = SmallPicture.Spoiled("L60 55 L60 48 L66 48", "L78 55 L78 48 L66 48");

        AssertOnly(measure, FaultKind.ThroughBody, Wire("d"), Part("out"));
    }

    [Fact]
    public void Measure_WireBackThroughItsOwnCase_IsThroughTheBody()
    {
        // Comes out of its own pot's case and crosses the case once more.
        var measure = SmallPicture.Spoiled("M34 50 L34 55 L60 55", "M32 50 L32 54 L20 54 L20 51 L41 51 L41 55 L60 55");

        AssertOnly(measure, FaultKind.ThroughBody, Wire("d"), Part("vol"));
    }

    [Fact]
    public void Measure_WireOnAnother_IsAnOverlap()
    {
        var measure = SmallPicture.Spoiled("M44 45 L50 45 L50 26", "M44 45 L44 34 L50 34 L50 26");

        AssertOnly(measure, FaultKind.Overlap, Wire("b"), Wire("e"));
    }

    [Fact]
    public void Measure_WireTooNearAnother_IsCrowding()
    {
        var measure = SmallPicture.Spoiled("M44 45 L50 45 L50 26", "M44 45 L44.6 42.5 L44.6 34 L50 34 L50 26");

        AssertOnly(measure, FaultKind.Crowding, Wire("b"), Wire("e"));
    }

    [Theory]
    [InlineData("L44 30 L44 45\"", "L44 30 L44 43\"", "b")] // short of its lug
    [InlineData("M34 50 L34 55", "M34 53 L34 55", "d")] // beside its case
    public void Measure_WireOffItsLug_HasAWrongEnd(string right, string wrong, string wire)
    {
        var measure = SmallPicture.Spoiled(right, wrong);

        AssertOnly(measure, FaultKind.WrongEnd, Wire(wire));
    }

    [Fact]
    public void Measure_WireDrawnFromTheOtherEnd_IsRight() =>
        Assert.True(SmallPicture.Spoiled("d=\"M24 22 L24 42\"", "d=\"M24 42 L24 22\"").IsClean);

    [Fact]
    public void Measure_WireBetweenOtherLugsThanTheSource_HasAWrongEnd()
    {
        ExpectedWire[] source = [.. SmallPicture.Source.Where(wire => wire.Id != "b"), new("b", "sel.4", "vol.2")];

        var measure = PictureMeasurer.Measure(SmallPicture.Svg, source);

        AssertOnly(measure, FaultKind.WrongEnd, Wire("b"));
    }

    [Fact]
    public void Measure_WireWithoutAPath_IsMissing()
    {
        var measure = SmallPicture.Spoiled(
            "<path class=\"core\" d=\"M34 50 L34 55 L60 55 L60 48 L66 48\"/>",
            "<!-- forgotten -->"
        );

        AssertOnly(measure, FaultKind.MissingWire, Wire("d"));
    }

    [Fact]
    public void Measure_WireOfTheSourceNotInThePicture_IsMissing()
    {
        var measure = PictureMeasurer.Measure(SmallPicture.Svg, [.. SmallPicture.Source, new("f", "sel.1", "sel.4")]);

        AssertOnly(measure, FaultKind.MissingWire, Wire("f"));
        Assert.Equal((6, 5), (measure.WiresInSource, measure.WiresInPicture));
    }

    [Fact]
    public void Measure_WireThatTheSourceDoesNotHave_IsExtra()
    {
        var measure = PictureMeasurer.Measure(SmallPicture.Svg, SmallPicture.Source[..^1]);

        AssertOnly(measure, FaultKind.ExtraWire, Wire("e"));
    }

    [Fact]
    public void Measure_WireDrawnTwice_IsExtra()
    {
        var measure = SmallPicture.With(
            "<g class=\"wire\" data-wire=\"a\" data-from=\"sel.1\" data-to=\"vol.case\"><path class=\"core\" d=\"M24 22 L24 42\"/></g>"
        );

        AssertOnly(measure, FaultKind.ExtraWire, Wire("a"));
    }

    [Fact]
    public void Measure_WirePastAForeignLug_IsAFalseJoint()
    {
        var measure = SmallPicture.Spoiled("cx=\"48\" cy=\"22\" r=\"0.8\"", "cx=\"49\" cy=\"32\" r=\"0.8\"");

        AssertOnly(measure, FaultKind.FalseJoint, Wire("e"), Lug("sel.4"));
    }

    [Fact]
    public void Measure_TagOnAnotherWire_IsALabelOverlap()
    {
        var measure = SmallPicture.Spoiled("x=\"59\" y=\"38.65\" width=\"4\"", "x=\"49\" y=\"38.65\" width=\"14\"");

        AssertOnly(measure, FaultKind.LabelOverlap, Tag("c"), Wire("e"));
    }

    [Fact]
    public void Measure_LabelOnALug_IsALabelOverlap()
    {
        var measure = SmallPicture.Spoiled("x=\"46\" y=\"22.7\"", "x=\"48\" y=\"22.7\"");

        AssertOnly(measure, FaultKind.LabelOverlap, LugLabel("sel.4"), Lug("sel.4"));
    }

    [Fact]
    public void Measure_LabelOnAForeignBody_IsALabelOverlap()
    {
        var measure = SmallPicture.Spoiled("x=\"46\" y=\"22.7\"", "x=\"84\" y=\"50\"");

        AssertOnly(measure, FaultKind.LabelOverlap, LugLabel("sel.4"), Part("out"));
    }

    [Fact]
    public void Measure_TextThatSaysItsPart_MayLieOnIt()
    {
        const string text =
            "<text class=\"section-label\" {0} x=\"80\" y=\"47\" font-size=\"2\" textLength=\"1\">a</text>";

        Assert.True(SmallPicture.With(text.Replace("{0}", "data-part=\"out\"", StringComparison.Ordinal)).IsClean);
        AssertOnly(
            SmallPicture.With(text.Replace("{0}", "", StringComparison.Ordinal)),
            FaultKind.LabelOverlap,
            Part("out"),
            Words("a")
        );
    }

    [Fact]
    public void Measure_NameOnValue_IsALabelOverlap()
    {
        var measure = SmallPicture.Spoiled("x=\"30\" y=\"48\"", "x=\"30\" y=\"46\"");

        AssertOnly(measure, FaultKind.LabelOverlap, PartName("vol"), PartValue("vol"));
    }

    [Fact]
    public void Measure_LettersThatHangBelowTheLine_CountWithThem()
    {
        // Without a hanging letter the name's ink ends on its line, at 45; the value's begins at 45.1.
        var apart = SmallPicture.Spoiled("x=\"30\" y=\"48\"", "x=\"30\" y=\"46.6\"");
        var touching = PictureMeasurer.Measure(
            SmallPicture
                .Svg.Replace("x=\"30\" y=\"48\"", "x=\"30\" y=\"46.6\"", StringComparison.Ordinal)
                .Replace(">vol<", ">gap<", StringComparison.Ordinal),
            SmallPicture.Source
        );

        Assert.True(apart.IsClean);
        Assert.Equal(FaultKind.LabelOverlap, Assert.Single(touching.Faults).Kind);
    }

    [Fact]
    public void Measure_TagOnAHop_IsALabelOverlap()
    {
        var measure = SmallPicture.With(
            "<g class=\"tag\" data-wire=\"e\"><rect class=\"tag-box\" x=\"51\" y=\"24.65\" width=\"4.2\" height=\"2.7\"/></g>"
        );

        AssertOnly(measure, FaultKind.LabelOverlap, Hop("e"), Tag("e"));
    }

    [Fact]
    public void Measure_PartOnPart_IsALabelOverlap()
    {
        var measure = SmallPicture.With(
            "<g class=\"part\" data-part=\"cap\"><rect class=\"body\" x=\"85\" y=\"30\" width=\"6\" height=\"6\"/></g>"
        );

        AssertOnly(measure, FaultKind.LabelOverlap, Part("cap"), Part("out"));
    }

    // A capacitor on the back of a pot lies there as on the bench: common practice. The picture says so, or it is a fault.
    [Theory]
    [InlineData(" data-on=\"out\"", true)]
    [InlineData(" data-on=\"vol\"", false)]
    public void Measure_PartThatLiesOnAnother_IsRightWhereThePictureSaysSo(string on, bool isRight)
    {
        var measure = SmallPicture.With(
            $"<g class=\"part\" data-part=\"cap\"{on}><rect class=\"body\" x=\"85\" y=\"30\" width=\"6\" height=\"6\"/></g>"
        );

        if (isRight)
        {
            Assert.True(measure.IsClean);
        }
        else
        {
            AssertOnly(measure, FaultKind.LabelOverlap, Part("cap"), Part("out"));
        }
    }

    [Fact]
    public void Measure_JointsThatMelt_AreALabelOverlap()
    {
        var measure = SmallPicture.Spoiled("cx=\"34\" cy=\"50\" r=\"0.95\"", "cx=\"25.5\" cy=\"42\" r=\"0.95\"");

        AssertOnly(measure, FaultKind.LabelOverlap, Joint("vol.case:a"), Joint("vol.case:d"));
    }

    [Fact]
    public void Measure_TagBesideItsWire_IsStray()
    {
        var measure = SmallPicture.Spoiled(
            "x=\"22.65\" y=\"28\" width=\"2.7\" height=\"4\"/><text class=\"tag-text\" x=\"24.7\" y=\"30\" transform=\"rotate(-90 24.7 30)\"",
            "x=\"12.65\" y=\"28\" width=\"2.7\" height=\"4\"/><text class=\"tag-text\" x=\"14.7\" y=\"30\" transform=\"rotate(-90 14.7 30)\""
        );

        AssertOnly(measure, FaultKind.StrayTag, Tag("a"));
    }

    [Theory]
    [InlineData("x=\"5\" y=\"58\"", "x=\"-3\" y=\"58\"", ThingKind.Text, "A right drawing")]
    [InlineData("x=\"5\" y=\"58\"", "x=\"5\" y=\"61\"", ThingKind.Text, "A right drawing")]
    [InlineData("L60 55 L60 48 L66 48", "L60 55 L60 60.5 L64 60.5 L64 48 L66 48", ThingKind.Wire, "d")]
    [InlineData("y=\"35\" width=\"16\"", "y=\"35\" width=\"31\"", ThingKind.Part, "out")]
    public void Measure_OffThePage_IsNamed(string right, string wrong, ThingKind kind, string id)
    {
        var measure = SmallPicture.Spoiled(right, wrong);

        AssertOnly(measure, FaultKind.OutsidePage, new DrawnThing(kind, id));
    }

    [Fact]
    public void Measure_TurnedTextOffThePage_IsNamed()
    {
        // Read upwards from 5 below the top edge, 8 long: it runs over the edge by 3.
        var measure = SmallPicture.With(
            "<text x=\"4\" y=\"5\" transform=\"rotate(-90 4 5)\" font-size=\"2\" textLength=\"8\">upwards</text>"
        );

        AssertOnly(measure, FaultKind.OutsidePage, Words("upwards"));
    }

    [Theory]
    [InlineData(54, true)] // 2 mm from corner to hop
    [InlineData(53, false)] // 3 mm
    public void Measure_HopBesideACorner_IsCramped(int corner, bool isCramped)
    {
        var measure = SmallPicture.Spoiled("L50 45 L50 26", $"L{corner} 45 L{corner} 26");

        if (isCramped)
        {
            AssertOnly(measure, FaultKind.CrampedHop, Wire("e"));
        }
        else
        {
            Assert.True(measure.IsClean);
        }
    }

    /// <summary>The measure has that one fault, and none else.</summary>
    private static void AssertOnly(PictureMeasure measure, FaultKind kind, DrawnThing first, DrawnThing? second = null)
    {
        Assert.Null(measure.Error);
        Assert.Equal(new PictureFault(kind, first, second), Assert.Single(measure.Faults));
    }
}
