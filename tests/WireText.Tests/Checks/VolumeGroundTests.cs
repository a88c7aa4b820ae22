using WireText.Tests.Electrical;

namespace WireText.Tests.Checks;

/// <summary>A volume whose lug 1 has no ground leaves something at 0, whatever lies across it.</summary>
public class VolumeGroundTests
{
    private const string One =
        "pickup neck single-coil; pot vol 250k audio; jack out mono; neck.hot ~ vol.3; neck.ground ~ vol.case ~ out.sleeve; vol.2 ~ out.tip; ";

    private const string Two =
        "pickup neck single-coil; pickup bridge single-coil; switch sel lever-3way; positions sel bridge both neck; "
        + "pot va 250k audio; pot vb 250k audio; jack out mono; neck.hot ~ va.3; bridge.hot ~ vb.3; vb.2 ~ sel.A1; sel.A2 ~ sel.A1; "
        + "va.2 ~ sel.B3; sel.B2 ~ sel.B3; sel.A0 ~ sel.B0 ~ out.tip; neck.ground ~ bridge.ground ~ va.case ~ vb.case ~ out.sleeve; va.1 ~ va.case; ";

    /// <summary>Without ground on lug 1 the track is a resistance in series and the jack is never joined to ground by it (Ohm's law).</summary>
    [Theory]
    [InlineData(One)]
    [InlineData(One + "cap bleed 1n from vol.3 to vol.2")]
    [InlineData(One + "cap bleed 1n from vol.3 to vol.2; resistor beside 150k from vol.3 to vol.2")]
    [InlineData(
        One + "cap bleed 1n; resistor beside 150k; splice air bleed.2 beside.1; bleed.1 ~ vol.3; beside.2 ~ vol.2"
    )]
    [InlineData(Two)]
    [InlineData(Two + "cap bleed 1n from vb.3 to vb.2")]
    public void Volume_WithoutGround_IsToldWithTheWire(string text)
    {
        var found = Checked.Findings(Bench.Of(text).Circuit);

        var told = Assert.Single(found, finding => finding.Id == "volume-not-silent");
        Assert.StartsWith("ground the free end: wire v", told.Help, StringComparison.Ordinal);
    }

    /// <summary>With its ground a bleed changes nothing at 0.</summary>
    [Theory]
    [InlineData(One + "vol.1 ~ vol.case; cap bleed 1n from vol.3 to vol.2")]
    [InlineData(Two + "vb.1 ~ vb.case; cap bleed 1n from vb.3 to vb.2")]
    public void Volume_WithItsGround_IsNotTold(string text) =>
        Assert.DoesNotContain(Checked.Findings(Bench.Of(text).Circuit), finding => finding.Id == "volume-not-silent");

    /// <summary>Two volumes whose first lugs are joined with each other and not with ground: all at 0, the tracks lie in the way, no more.</summary>
    [Theory]
    [InlineData("vol-neck.1 ~ vol-bridge.1", 1)]
    [InlineData("vol-neck.1 ~ vol-bridge.1 ~ vol-neck.case", 0)]
    public void Volumes_WithoutGroundTogether_AreToldOnce(string wires, int count) =>
        Assert.Equal(
            count,
            Found
                .Of(
                    "volume-not-silent",
                    """
                    pickup neck single-coil; pickup bridge single-coil
                    pot vol-neck 500k audio; pot vol-bridge 500k audio
                    jack out
                    neck.hot ~ vol-neck.2; bridge.hot ~ vol-bridge.2; vol-neck.3 ~ vol-bridge.3 ~ out.tip
                    neck.ground ~ bridge.ground ~ vol-neck.case ~ vol-bridge.case ~ out.sleeve

                    """ + wires
                )
                .Count
        );
}
