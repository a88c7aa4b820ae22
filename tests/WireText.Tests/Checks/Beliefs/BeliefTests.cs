using WireText.Electrical.Sound;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Checks.Beliefs;

/// <summary>What is harmless is said to be so, with figures from the HU rows of the reference tables.</summary>
public class BeliefTests
{
    private const string Start = """
        pickup neck single-coil
        pot vol 250k audio
        pot tone 250k audio
        cap dark 22n from tone.1 to tone.case
        metal plate
        jack out
        neck.hot ~ vol.3; neck.ground ~ vol.case; vol.3 ~ tone.2; vol.1 ~ vol.case; plate ~ vol.case; vol.case ~ out.sleeve

        """;

    /// <summary>HU-02, -07, -10, -16 and -20: square centimetres, microtesla, nanovolts at 50 and at 60 Hz.</summary>
    [Theory]
    [InlineData(1, 0.1, 3.142, 3.770)]
    [InlineData(3, 0.2, 18.85, 22.62)]
    [InlineData(5, 0.1, 15.71, 18.85)]
    [InlineData(10, 1.0, 314.2, 377.0)]
    [InlineData(20, 1.0, 628.3, 754.0)]
    public void InducedVolts_OfALoop_AreThoseOfTheTable(double area, double microtesla, double at50, double at60)
    {
        Assert.Equal(at50, Nanovolts(50), at50 * 5e-4);
        Assert.Equal(at60, Nanovolts(60), at60 * 5e-4);

        double Nanovolts(double hertz) => StrayField.InducedVolts(hertz, microtesla * 1e-6, area * 1e-4) * 1e9;
    }

    /// <summary>HU-30: 8,000 turns of 4.776 cm² in 0.1 µT give 120.0 µV at 50 Hz and 144.0 µV at 60 Hz.</summary>
    [Theory]
    [InlineData(50, 120.0e-6)]
    [InlineData(60, 144.0e-6)]
    public void InducedVolts_OfACoil_AreThoseOfTheTable(double hertz, double volts) =>
        Assert.Equal(
            volts,
            StrayField.InducedVolts(
                hertz,
                StrayField.UsualTesla,
                StrayField.UsualTurnSquareMetres,
                StrayField.UsualCoilTurns
            ),
            volts * 5e-4
        );

    /// <summary>HU-10 and HU-30: 15.71 and 18.85 nV, 120.0 and 144.0 µV, 77.66 dB apart.</summary>
    [Fact]
    public void Loop_SaysWhatItPicksUpBesideACoil()
    {
        var found = Assert.Single(Found.Of("loop", $"{Start}vol.2 ~ out.tip; tone.case ~ plate; tone.case ~ vol.case"));

        Assert.Equal("tone.case to vol.case", found.Location.Text);
        Assert.EndsWith(
            "an assumed 5 cm² in a field of 0.1 µT picks up 15.7 nV at 50 Hz and 18.8 nV at 60 Hz, "
                + "a coil of 8,000 turns 120 µV and 144 µV: 78 dB more",
            found.Help,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("vol.2 ~ out.tip; tone.case ~ vol.case", 0)]
    [InlineData("vol.2 ~ out.tip; tone.case ~ vol.case\ntouch tone.case plate", 1)] // by way of the plate it sits in
    [InlineData("tone.case ~ vol.case\ncable vol.2 to out.tip white braid vol.case to out.sleeve", 1)]
    [InlineData("tone.case ~ vol.case\ncable vol.2 to out.tip white braid vol.case to cut", 0)]
    [InlineData("tone.case ~ vol.case; vol.2 ~ out.tip; tone.3 ~ tone.2; tone.3 ~ vol.3", 1)] // the signal's metal counts as well
    public void Loop_OfSolderAndTouchingMetal_IsToldForEachWireThatClosesOne(string text, int count) =>
        Assert.Equal(count, Found.Of("loop", Start + text).Count);

    [Theory]
    [InlineData("cable vol.2 to out.tip white and vol.case to out.sleeve black twisted", 1)]
    [InlineData("cable vol.2 to out.tip white twisted", 0)]
    [InlineData("cable vol.2 to out.tip white and vol.case to out.sleeve black braid vol.case to cut", 0)]
    public void TwistedPair_OfHotAndGround_IsToldToBringNothing(string cable, int count) =>
        Assert.Equal(count, Found.Of("twisted-pair", $"{Start}tone.case ~ vol.case\n{cable}").Count);

    [Fact]
    public void TwistedPair_OfTheTwoEndsOfACoilThatFloats_IsLeftAlone() =>
        Assert.Empty(
            Found.Of(
                "twisted-pair",
                $"{Start}tone.case ~ vol.case; vol.2 ~ out.tip\npickup b single-coil\nswitch ph dpdt\n"
                    + "cable b.hot to ph.A0 white and b.ground to ph.B0 black twisted\nph.A1 ~ ph.B2 ~ vol.3; ph.A2 ~ ph.B1 ~ vol.case"
            )
        );

    [Theory]
    [InlineData("braid vol.case to cut", 1)]
    [InlineData("braid cut to out.sleeve", 1)]
    [InlineData("braid vol.case to out.sleeve", 0)]
    [InlineData("braid cut to cut", 0)] // that one is not grounded at all
    public void BraidEnd_OfABraidCutAtOneEnd_IsSaidToBeEnough(string braid, int count) =>
        Assert.Equal(
            count,
            Found.Of("braid-end", $"{Start}tone.case ~ vol.case\ncable vol.2 to out.tip white {braid}").Count
        );

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Allow_OfABelief_IsInUseWhetherItIsAskedForOrNot(bool withHarmless)
    {
        var text =
            $"{Start}vol.2 ~ out.tip; tone.case ~ plate; tone.case ~ vol.case; allow loop \"it holds when a joint fails\"";

        Assert.Empty(Checked.Findings(Electrical.Bench.CompileText(Electrical.Bench.Expand(text)), withHarmless));
    }

    [Fact]
    public void Beliefs_OfEveryKind_AreNotesThatNameNoMistake() =>
        Every.Item(
            new[] { "loop", "twisted-pair", "braid-end", "gap", "shorts-while-switching" },
            id =>
            {
                var description = WireText.Checks.FindingCatalogue.Find(id)!;
                Assert.True(description.OnlyWhenAsked);
                Assert.Equal(Severity.Note, description.Severity);
                Assert.StartsWith("Nothing", description.Mend, StringComparison.Ordinal);
            }
        );
}
