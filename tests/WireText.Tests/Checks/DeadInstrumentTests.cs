using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>An instrument that gives no sound in any position is an error, whatever else is found in it.</summary>
public class DeadInstrumentTests
{
    private const string One =
        "pickup neck single-coil; pot vol 250k audio; jack out mono; neck.ground ~ vol.case ~ out.sleeve; ";

    private const string Buffered =
        "pickup neck single-coil; preamp pre buffer; battery cell 9V; switch power spdt; jack out mono; "
        + "neck.hot ~ pre.in; neck.ground ~ pre.common ~ cell.minus ~ out.sleeve; pre.out ~ out.tip; ";

    /// <summary>What is silent follows from the pot: the whole track lies from lug 1 to lug 3, the wiper at lug 3 at 10.</summary>
    [Theory]
    // Both ends of the track at the hot: the wiper has no ground, and the jack no return but the case.
    [InlineData(
        One + "neck.hot ~ vol.3; vol.1 ~ vol.3; vol.3 ~ vol.case; vol.2 ~ out.tip",
        "coil-shorted|no-sound|shorted-output"
    )]
    // Lugs 1 and 3 exchanged: the wiper stands at ground at 10.
    [InlineData(One + "neck.hot ~ vol.1; vol.3 ~ vol.case; vol.2 ~ out.tip", "backwards-control")]
    // Lugs 1 and 2 exchanged, a bleed across: the tip is fed by the track, shorted at 10 by the grounded wiper.
    [InlineData(
        One
            + "cap bleed 1n from vol.3 to out.tip; resistor beside 150k from vol.3 to out.tip; "
            + "neck.hot ~ vol.3; vol.2 ~ vol.case; vol.1 ~ out.tip",
        "no-sound"
    )]
    // The plus of the buffer on the throw that the battery is not on, in both positions of the switch.
    [InlineData(Buffered + "cell.plus ~ power.A1; pre.plus ~ power.A2", "no-supply|no-sound")]
    public void Instrument_SilentInEveryPosition_IsAnError(string text, string expected)
    {
        var errors = Checked
            .Findings(Bench.Of(text).Circuit)
            .Where(finding => finding.Severity == Severity.Error)
            .Select(finding => finding.Id)
            .ToList();

        Assert.NotEmpty(errors);
        Assert.Contains(errors, id => expected.Split('|').Contains(id, StringComparer.Ordinal));
    }

    /// <summary>A board without its supply gives nothing: what sounds is judged with it.</summary>
    [Fact]
    public void Position_InWhichTheBoardHasNoSupply_IsDead()
    {
        var found = Checked.Findings(Bench.Of(Buffered + "cell.plus ~ power.A0; pre.plus ~ power.A1").Circuit);

        var dead = Assert.Single(found, finding => finding.Id == "dead-position");
        Assert.Contains("'pre' gets no supply there", dead.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Position_NamedOff_MayTakeTheSupply()
    {
        var found = Checked.Findings(
            Bench.Of(Buffered + "positions power on off; cell.plus ~ power.A0; pre.plus ~ power.A1").Circuit
        );

        Assert.DoesNotContain(found, finding => finding.Id is "dead-position" or "mute-opens-hot");
    }
}
