using WireText.Text;

namespace WireText.Tests.Checks.Grounding;

/// <summary>Grounds that hang on a braid, and pickups whose own screen is no fault.</summary>
public class BraidOnlyReturnTests
{
    private const string Start = """
        pickup neck single-coil
        pot vol 250k audio
        jack out
        neck.hot ~ vol.3; neck.ground ~ vol.1; vol.1 ~ vol.case

        """;

    [Theory]
    [InlineData(
        "cable vol.2 to out.tip white braid vol.case to out.sleeve",
        "'vol.case' comes to the sleeve by this braid alone"
    )]
    [InlineData(
        "cable out.tip to vol.2 white braid out.sleeve to vol.case",
        "'vol.case' comes to the sleeve by this braid alone"
    )]
    [InlineData("cable vol.2 to out.tip white braid vol.case to out.sleeve\nvol.case ~ out.sleeve", null)]
    [InlineData("cable vol.2 to out.tip white and vol.case to out.sleeve black braid vol.case to out.sleeve", null)]
    [InlineData("cable vol.2 to out.tip white braid vol.case to cut\nvol.case ~ out.sleeve", null)]
    public void BraidOnlyReturn_OfACableToTheJack_IsToldWithoutAWireBesideIt(string text, string? message) =>
        Check(Start + text, message);

    /// <summary>A screened lead to the jack is often wired so, and it works.</summary>
    [Fact]
    public void BraidOnlyReturn_WhichIsOrdinaryWork_IsANote() =>
        Assert.Equal(
            Severity.Note,
            Assert
                .Single(
                    Found.Of("braid-only-return", Start + "cable vol.2 to out.tip white braid vol.case to out.sleeve")
                )
                .Severity
        );

    [Fact]
    public void BraidOnlyReturn_OfTwoBraids_IsNoWireEither() =>
        Check(
            $"{Start}splice b vol.3\ncable vol.2 to out.tip white braid vol.case to out.sleeve\ncable vol.3 to b white braid vol.case to out.sleeve",
            "'vol.case' comes to the sleeve by this braid alone"
        );

    [Theory]
    [InlineData(
        "pickup h humbucker\ncable h.hot to vol.3 white braid h.ground to vol.case\nvol.case ~ out.sleeve; vol.2 ~ out.tip"
    )]
    [InlineData(
        "pickup h humbucker-4\nsplice link h.n-finish h.s-finish\nsplice back h.s-start h.shield\n"
            + "cable h.n-start to vol.3 white braid back to vol.case\nvol.case ~ out.sleeve; vol.2 ~ out.tip"
    )]
    [InlineData(
        "pickup s single-coil\ncable s.hot to vol.3 white braid s.ground to vol.case\nvol.case ~ out.sleeve; vol.2 ~ out.tip"
    )]
    public void BraidOnlyReturn_OfAPickupsOwnCable_IsNone(string text) => Check(Start + text, null);

    [Fact]
    public void BraidOnlyReturn_OfAPlateBehindAPickupsBraid_IsTold() =>
        Check(
            $"{Start}pickup h humbucker\nmetal plate\nsplice back h.ground\nplate ~ back\ncable h.hot to vol.3 white braid back to vol.case\nvol.case ~ out.sleeve; vol.2 ~ out.tip",
            "'back' comes to the sleeve by this braid alone"
        );

    private static void Check(string text, string? message) =>
        Assert.Equal(
            message is null ? [] : [message],
            Found.Of("braid-only-return", text).Select(finding => finding.Message)
        );
}
