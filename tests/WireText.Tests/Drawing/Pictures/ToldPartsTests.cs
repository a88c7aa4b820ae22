using WireText.Drawing.Shapes;
using WireText.Testing;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>What the text says of a part or a wire is on the picture.</summary>
public class ToldPartsTests
{
    [Theory]
    [InlineData("pot vol 500k audio \"master\"", "master")]
    [InlineData("pot vol push-pull 500k audio \"tone of the neck pickup\"", "tone of the neck pickup")]
    [InlineData("cap c1 22n \"from the old harness\"", "from the old harness")]
    [InlineData("cap c1 22n film", "film")]
    [InlineData("cap c1 100p ceramic", "ceramic")]
    [InlineData("cap c1 22n paper-in-oil", "paper-in-oil")]
    [InlineData("cap c1 10u electrolytic", "electrolytic")]
    public void Part_WithAValue_ShowsItsRemarkAndWhatItIsMadeOf(string text, string words) =>
        Assert.Contains(words, Texts(text));

    [Fact]
    public void Remark_ThatHasNoRoomOnThePart_StandsWholeUnderThePicture()
    {
        const string Long =
            "the one from the old harness, with the long lead that must stay as long as it is, and its sleeve with it";

        Assert.Contains($"c1: {Long}", Words(Texts($"cap c1 22n \"{Long}\"")));
    }

    [Fact]
    public void Words_OfADefinitionOfOnesOwn_StandUnderThePicture() =>
        Assert.Contains(
            "mix: two wafers, the upper one is spare",
            Texts(
                """
                define switch odd "two wafers, the upper one is spare"
                    lugs A0 A1
                    positions up down
                    at up  A0+A1
                switch mix odd
                """
            )
        );

    [Theory]
    [InlineData("cap c1 22n heat-sensitive", true)]
    [InlineData("cap c1 22n paper-in-oil", true)]
    [InlineData("cap c1 22n film", false)]
    public void Part_ThatHeatHarms_HasASignAndTheLegendTellsIt(string text, bool isSensitive)
    {
        Assert.Equal(isSensitive, Shapes(text).Any(shape => shape.Class == "heat"));
        Assert.Equal(
            isSensitive,
            Texts(text).Any(words => words.StartsWith("heat-sensitive", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void Resistor_ShowsTheBandsOfItsValue() =>
        // Brown, green, yellow: 150 kΩ by IEC 60062.
        Assert.Equal(3, Shapes("resistor r1 150k").Count(shape => shape.Class == "band"));

    [Fact]
    public void Wire_OfAStatedLengthAndGauge_IsListed() =>
        Assert.Contains(
            "vol.2 to out.tip red, sleeved, 120 mm, AWG 22",
            Words(
                Texts(
                    """
                    pot vol 500k audio
                    jack out mono
                    wire vol.2 to out.tip red sleeved length=120mm awg=22
                    """
                )
            )
        );

    [Theory]
    [InlineData(20, false)]
    [InlineData(120, true)]
    public void Lead_LongerThanAPartHas_IsToldToBeExtended(int away, bool isLong) =>
        Assert.Equal(
            isLong,
            Texts(
                    $"""
                    pot vol 500k audio
                    jack out mono
                    cap c1 1n from vol.3 to out.tip
                    place vol at 0,0
                    place c1 at 0,{20}
                    place out at {away},20
                    """
                )
                .Any(words => words.Contains("extend it with sleeved wire", StringComparison.Ordinal))
        );

    [Fact]
    public void BareWire_ThatCrossesABareOne_IsSleevedThere()
    {
        const string Text = """
            metal a
            metal b
            metal c
            metal d
            place a at 0,40
            place b at 80,40
            place c at 40,0
            place d at 40,80
            wire a to b bare
            wire c to d COLOUR
            """;

        Assert.Contains(
            Shapes(Text.Replace("COLOUR", "bare", StringComparison.Ordinal)),
            shape => shape.Class == "sleeve"
        );
        Assert.DoesNotContain(
            Shapes(Text.Replace("COLOUR", "black", StringComparison.Ordinal)),
            shape => shape.Class == "sleeve"
        );
    }

    [Fact]
    public void Cores_ThatAreTwisted_ChangePlacesAndComeBack()
    {
        const string Text = """
            pot vol 250k audio
            jack out mono
            place vol at 40,60
            place out at 130,75
            cable vol.2 to out.tip red and vol.case to out.sleeve black twisted
            """;

        var twists = PictureItems
            .In(Drawings.PictureOf(Text))
            .OfType<PictureGroup>()
            .Where(group => group.Class == "twist")
            .ToArray();

        Assert.True(twists.Length >= 6, $"{twists.Length} changes of place");
        Assert.Equal(0, twists.Length % 2);
        Assert.Equal(2, twists.Select(twist => twist.Shows[0].Value).Distinct().Count());
        Assert.Contains("twisted", Texts(Text));
    }

    [Fact]
    public void Cores_ThatAreTwistedAndLieApart_AreTold()
    {
        const string Text = """
            pot vol 250k audio
            jack out mono
            metal plate
            place vol at 40,40
            place out at 130,40
            place plate at 40,130
            cable vol.2 to out.tip red and vol.case to plate black twisted
            """;

        Assert.DoesNotContain("twisted", Texts(Text));
        Assert.Contains("vol.2 to out.tip with vol.case to plate", Texts(Text));
    }

    [Theory]
    [InlineData("cap c1 22n \"clip a heat sink on each lead, tin first\"")]
    [InlineData("metal plate \"the plate under the controls, shielded with foil\"")]
    public void Remark_OfTwoLines_HasNoWordAloneInTheLast(string text)
    {
        var lines = PictureItems
            .In(Drawings.PictureOf(text))
            .OfType<TextItem>()
            .Where(item => item.Class == "part-remark")
            .Select(item => item.Bounds.Width)
            .ToArray();

        Assert.Equal(2, lines.Length);
        Assert.True(lines.Min() > lines.Max() / 2, string.Join(", ", lines));
    }

    [Fact]
    public void Remark_OfTwoLinesOnAPickup_LeavesTheRoomToItsWinding()
    {
        var texts = Texts("pickup neck single-coil wind=ccw \"the old soapbar, with its cover on a lead of its own\"");

        Assert.Contains("wound ccw", texts);
        Assert.Contains("neck: the old soapbar, with its cover on a lead of its own", Words(texts));
    }

    /// <summary>The sign lies on no word of the pot below it.</summary>
    [Fact]
    public void HeatSign_OfAPartOnAPot_LeavesThePotsWordsFree()
    {
        const string Text = """
            pot tone 250k audio
            cap dark 22n paper-in-oil from tone.2 to tone.case
            """;
        var items = PictureItems.In(Drawings.PictureOf(Text)).ToList();
        var sign = items.OfType<CircleShape>().First(shape => shape is { Class: "heat", Paint.Fill: not null });
        var words = items.OfType<TextItem>().Where(word => word.Class is "part-name" or "part-value").ToList();
        Assert.Contains(words, word => word.Text == "250k audio");

        Every.Item(words, word => Assert.True(word.Ink.DistanceTo(sign.Centre) >= sign.Radius, word.Text));
    }

    private static string[] Texts(string text) =>
        [.. PictureItems.In(Drawings.PictureOf(text)).OfType<TextItem>().Select(item => item.Text)];

    private static IEnumerable<PictureShape> Shapes(string text) =>
        PictureItems.In(Drawings.PictureOf(text)).OfType<PictureShape>();

    /// <summary>Lines that were broken to fit, in one.</summary>
    private static string Words(string[] lines) => string.Join(' ', lines);
}
