using WireText.Electrical.Mutes;
using WireText.Electrical.Roles;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;

namespace WireText.Tests.Electrical.Roles;

/// <summary>What pots do, in circuits worked out by hand (<see cref="RightVerdicts"/>) and in usual ones (common practice).</summary>
public class DialRolesTests
{
    private const string Rig =
        "pickup neck single-coil dcr=6.4k l=2.2H c=110p\npot vol 250k linear\njack out\n"
        + "neck.ground ~ vol.case; vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip\n";

    [Theory]
    [InlineData(11, "vol", DialRole.Volume)]
    [InlineData(19, "vol", DialRole.Volume)]
    [InlineData(20, "vol", DialRole.Blend)]
    [InlineData(20, "v2", DialRole.Blend)]
    [InlineData(27, "tone", DialRole.Volume)]
    [InlineData(28, "tone", DialRole.ToneBackwards)]
    [InlineData(28, "vol", DialRole.Volume)]
    [InlineData(29, "vol", DialRole.VolumeThatLeaks)]
    [InlineData(30, "vol", DialRole.VolumeBackwards)]
    [InlineData(32, "mix", DialRole.Blend)]
    public void Pot_OfTheThirtyFiveCircuits_HasItsRole(int number, string dial, DialRole role) =>
        Assert.Equal(role, Assert.Single(RolesOf(RightVerdicts.Of(number), dial)));

    [Theory]
    [InlineData(
        "pot tone 250k linear\ncap c 22n from tone.1 to vol.case\nneck.hot ~ vol.3; vol.3 ~ tone.2",
        DialRole.Tone
    )]
    [InlineData(
        "pot tone 250k linear\ncap c 22n from tone.3 to vol.case\nneck.hot ~ vol.3; vol.3 ~ tone.2",
        DialRole.ToneBackwards
    )]
    [InlineData(
        "pot tone 1M linear\ncap c 2.2n from neck.hot to vol.3\nneck.hot ~ tone.2; tone.3 ~ vol.3",
        DialRole.BassCut
    )]
    [InlineData(
        "pot tone 250k linear\nresistor r 220k from tone.2 to vol.case\nneck.hot ~ vol.3; vol.3 ~ tone.3",
        DialRole.Slight
    )]
    public void Pot_BesideAVolume_HasTheRoleItIsWiredFor(string wiring, DialRole role) =>
        Assert.Equal(role, Assert.Single(RolesOf(Bench.Of(Rig + wiring), "tone")));

    [Fact]
    public void Pot_WithBothEndsOnOneNet_IsNowhereLive() =>
        Assert.Empty(
            RolesOf(Bench.Of(Rig + "pot tone 250k linear\nneck.hot ~ vol.3; vol.3 ~ tone.1; tone.3 ~ tone.1"), "tone")
        );

    [Fact]
    public void VolumeOfOnePickup_BehindASelector_IsAVolumeAloneAndABlendWithTheOther()
    {
        var bench = Bench.Of(
            """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    nv     250k linear
            switch sel    toggle-3way
            jack   out
            neck.hot ~ nv.2; nv.3 ~ sel.A1; bridge.hot ~ sel.B1; sel.A0 ~ sel.B0 ~ out.tip
            neck.ground ~ bridge.ground ~ nv.1 ~ nv.case ~ out.sleeve
            """
        );

        Assert.Equal([DialRole.Volume, DialRole.Blend], RolesOf(bench, "nv"));
    }

    [Fact]
    public void Volume_AtFiveOfALinearTrack_TakesSixDecibelsOfTheLevel()
    {
        // A voltage divider by two, its source impedance small against the track: 6.02 dB, and the load's part besides.
        var effect = Assert.Single(EffectsOf(RightVerdicts.Of(11), "vol"));

        Assert.InRange(DialEffect.PowerOf(effect.AtTen) - DialEffect.PowerOf(effect.AtFive), 6.0, 7.0);
    }

    private static List<DialRole> RolesOf(Bench bench, string dial) =>
        [.. EffectsOf(bench, dial).Select(effect => effect.Role)];

    private static IEnumerable<DialEffect> EffectsOf(Bench bench, string dial)
    {
        var tree = SituationTree.Of(bench.Network);
        var outcomes = new SituationOutcomes(bench.Network, tree);
        var roles = DialRoles.Of(
            new SoundMemo(bench.Network),
            tree.Situations,
            MuteFinder.Find(bench.Network, outcomes)
        );
        return roles.EffectsOf(bench.Circuit.Dials.Single(one => one.Name == dial));
    }
}
