using WireText.Measuring;
using static WireText.Tests.Measuring.Things;

namespace WireText.Tests.Measuring;

/// <summary>A core in a braid that breaks out near each end to its own lug; and jumpers over their own switch.</summary>
public class BraidMeasureTests
{
    private const string Cable = """
        <svg viewBox="0 0 100 60">
        <g class="part" data-part="pu"><rect class="body" x="2" y="5" width="8" height="20"/></g>
        <g class="part" data-part="vol"><rect class="body" x="80" y="5" width="15" height="20"/></g>
        <g class="lug" data-lug="pu.hot" data-part="pu"><circle class="eyelet" cx="14" cy="10" r="0.8"/></g>
        <g class="lug" data-lug="pu.ground" data-part="pu"><circle class="eyelet" cx="14" cy="18" r="0.8"/></g>
        <g class="lug" data-lug="vol.3" data-part="vol"><circle class="eyelet" cx="74" cy="10" r="0.8"/></g>
        <g class="wire" data-wire="hot" data-from="pu.hot" data-to="vol.3" data-kind="core"><path class="core" d="M14 10 L74 10"/></g>
        <g class="braid" data-wire="screen" data-from="pu.ground" data-to=""><path class="sheath" d="M22 10 L66 10"/></g>
        <g class="braid" data-wire="screen" data-from="pu.ground" data-to=""><path class="core" d="M22 10 L22 18 L14 18"/></g>
        </svg>
        """;

    private static readonly ExpectedWire[] Source = [new("hot", "pu.hot", "vol.3"), new("screen", "pu.ground", null)];

    [Fact]
    public void Measure_BraidOverItsCore_IsClean()
    {
        var measure = PictureMeasurer.Measure(Cable, Source);

        Assert.True(measure.IsClean, measure.ToJson());
        Assert.Equal((2, 0), (measure.WiresInPicture, measure.Crossings));
        Assert.Equal(60 + 16, measure.Length, 9);
    }

    [Theory]
    [InlineData("d=\"M22 10 L22 18 L14 18\"", "d=\"M22 10 L22 18 L17 18\"")] // the tail ends beside its lug
    [InlineData("d=\"M22 10 L22 18 L14 18\"", "d=\"M22 13 L22 18 L14 18\"")] // the tail does not reach the braid
    [InlineData("d=\"M22 10 L66 10\"", "d=\"M22 10 L66 14\"")] // the sheath leaves its core
    [InlineData("<path class=\"core\" d=\"M22 10 L22 18 L14 18\"/>", "")] // no tail
    public void Measure_BraidThatDoesNotReach_HasAWrongEnd(string right, string wrong)
    {
        Assert.Contains(right, Cable, StringComparison.Ordinal);

        var measure = PictureMeasurer.Measure(Cable.Replace(right, wrong, StringComparison.Ordinal), Source);

        Assert.Equal(new PictureFault(FaultKind.WrongEnd, Wire("screen")), Assert.Single(measure.Faults));
    }

    [Fact]
    public void Measure_JumperOnItsOwnSwitch_MayCarryItsTagThere()
    {
        var measure = PictureMeasurer.Measure(Jumper(to: "sel.B1", x: 30), source: null);

        Assert.True(measure.IsClean);
    }

    [Fact]
    public void Measure_WireThatEndsOnASwitch_MayCarryItsTagThere()
    {
        var measure = PictureMeasurer.Measure(Jumper(to: "pot.1", x: 60), source: null);

        Assert.True(measure.IsClean);
    }

    [Fact]
    public void Measure_WireThatDoesNotEndOnASwitch_MayNotCarryItsTagThere()
    {
        var foreign = Jumper(to: "pot.1", x: 60)
            .Replace(
                "data-lug=\"sel.A1\" data-part=\"sel\"",
                "data-lug=\"pot.2\" data-part=\"pot\"",
                StringComparison.Ordinal
            )
            .Replace("data-from=\"sel.A1\"", "data-from=\"pot.2\"", StringComparison.Ordinal);

        var measure = PictureMeasurer.Measure(foreign, source: null);

        Assert.Contains(new PictureFault(FaultKind.LabelOverlap, Part("sel"), Tag("j")), measure.Faults);
    }

    [Theory]
    [InlineData("sel.B1", true)]
    [InlineData("pot.1", false)]
    public void Measure_WireOverABody_IsNoFaultOnlyBetweenTwoLugsOfThatPart(string to, bool isClean)
    {
        // Both lugs lie outside the outline, which the wire crosses from side to side.
        var picture = Jumper(to, x: 60).Replace("cx=\"15\"", "cx=\"5\"", StringComparison.Ordinal);
        var across = picture.Replace("M15 20", "M5 20", StringComparison.Ordinal);

        var measure = PictureMeasurer.Measure(across, source: null);

        Assert.Equal(isClean, !measure.FaultsOf(FaultKind.ThroughBody).Any());
    }

    /// <summary>A wire from a lug inside a switch's outline to another lug, its tag over the outline.</summary>
    private static string Jumper(string to, int x) =>
        $"""
            <svg viewBox="0 0 100 60">
            <g class="part" data-part="sel"><rect class="body" x="10" y="10" width="30" height="20"/></g>
            <g class="lug" data-lug="sel.A1" data-part="sel"><circle class="eyelet" cx="15" cy="20" r="0.8"/></g>
            <g class="lug" data-lug="{to}" data-part="{to.Split('.')[
                0
            ]}"><circle class="eyelet" cx="{x}" cy="20" r="0.8"/></g>
            <g class="wire" data-wire="j" data-from="sel.A1" data-to="{to}"><path class="core" d="M15 20 L{x} 20"/></g>
            <g class="tag" data-wire="j"><rect class="tag-box" x="20" y="18.65" width="4" height="2.7"/></g>
            </svg>
            """;
}
