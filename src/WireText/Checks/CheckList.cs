using System.Collections.Immutable;
using WireText.Checks.Batteries;
using WireText.Checks.Beliefs;
using WireText.Checks.Building;
using WireText.Checks.Connections;
using WireText.Checks.Controls;
using WireText.Checks.Grounding;
using WireText.Checks.Intent;
using WireText.Checks.Sound;
using WireText.Checks.Switching;
using WireText.Checks.Values;

namespace WireText.Checks;

/// <summary>Every check, each on its own line. A check comes before those that it silences.</summary>
public static class CheckList
{
    public static ImmutableArray<ICheck> All { get; } =
    [
        new WireToItself(),
        new WireTwice(),
        new TipSleeveSwapped(),
        new SleeveOnHot(),
        new CoilShorted(),
        new ShortedOutput(),
        new PartShorted(),
        new PartUnused(),
        new UnconnectedLug(),
        new HotCase(),
        new GroundThroughPart(),
        new MuteOpensHot(),
        new FloatingGround(),
        new GroundThroughContact(),
        new BraidOnlyReturn(),
        new TooManySituations(),
        new MuteRight(),
        new MuteChangeover(),
        new MuteAtRest(),
        new MuteUpstream(),
        new SupplyReversed(),
        new ElectrolyticReversed(),
        new NoSupply(),
        new BatteryDrain(),
        new DirectCurrentAtJack(),
        new NoSound(),
        new NeverHeard(),
        new ExpectConflict(),
        new Expect(),
        new ExpectUnknown(),
        new ExpectNotJudged(),
        new NotJudged(),
        new DeadPosition(),
        new HangingCoil(),
        new PickupShorted(),
        new PositionName(),
        new JoinName(),
        new OutOfPhase(),
        new BlendEnds(),
        new ToneWithoutCapacitor(),
        new BackwardsControl(),
        new VolumeNotSilent(),
        new FedOnTheWiper(),
        new ControlsUnlike(),
        new VolumesLinked(),
        new ToneForSome(),
        new HumPartner(),
        new InertControl(),
        new IdlePart(),
        new ShortsWhileSwitching(),
        new Gap(),
        new BleedMisplaced(),
        new BleedBehindContact(),
        new BleedUnlike(),
        new CapacitorOutOfRow(),
        new HeavyLoad(),
        new CapacitorMagnitude(),
        new CrowdedLug(),
        new CaseJoints(),
        new Heat(),
        new EarthColour(),
        new ColourHabit(),
        new WireTooShort(),
        new Loop(),
        new TwistedPair(),
        new BraidEnd(),
    ];

    /// <summary>Those whose findings no wire that is still to be found can mend.</summary>
    public static ImmutableArray<ICheck> WhileOpen { get; } =
    [.. All.Where(check => check is WireToItself or WireTwice or ExpectConflict or CrowdedLug)];

    /// <summary>Those that look without being asked: what is harmless is told on request alone.</summary>
    public static ImmutableArray<ICheck> Usual { get; } = [.. All.Where(check => !check.Description.OnlyWhenAsked)];
}
