using System.Collections.Immutable;
using CsCheck;

namespace WireText.Tests.Checks.Mutants.Harnesses;

internal enum CoilSwitch
{
    None,
    CutToNorth,
    CutToSouth,
    SeriesParallel,

    /// <summary>One coil, both, the other.</summary>
    EitherCoil,
    Phase,
}

internal enum VolumePlace
{
    Master,

    /// <summary>One a pickup before the selector, the pickup on lug 3.</summary>
    EachOnTheEnd,

    /// <summary>One a pickup before the selector, the pickup on the wiper.</summary>
    EachOnTheWiper,
}

internal enum Bleed
{
    None,
    Capacitor,
    CapacitorBesideResistor,
    CapacitorThenResistor,
}

internal enum TonePlace
{
    None,

    /// <summary>On the pickups' side of each volume.</summary>
    BeforeVolume,

    /// <summary>One, on the jack's side of the volumes.</summary>
    AfterVolume,
}

/// <summary>On which lugs the track of a tone control and its capacitor are.</summary>
internal enum ToneWiring
{
    SignalOnEnd,
    SignalOnWiper,
    CapacitorFirstOnEnd,
    CapacitorFirstOnWiper,
}

internal enum Board
{
    None,
    BeforeVolume,
    AfterVolume,
}

/// <summary>A switch besides the selector and those of coils.</summary>
internal enum Extra
{
    None,
    MomentaryMute,
    LatchingMute,
    CapacitorChoice,
    SixCapacitors,
    TwelveCapacitors,
    ToneLift,
    JackThatShortsWithoutAPlug,
}

/// <summary>The choices that make a harness.</summary>
/// <param name="Models">Of each pickup.</param>
/// <param name="Values">For each pickup and pot a number from 0 to 9 that its values follow from.</param>
internal sealed record HarnessChoices(
    Selector Selector,
    ImmutableArray<string> Models,
    ImmutableArray<CoilSwitch> Coils,
    VolumePlace Volume,
    Bleed Bleed,
    TonePlace Tone,
    ToneWiring ToneWiring,
    Board Board,
    Extra Extra,
    bool IsPushPull,
    ImmutableArray<int> Values
)
{
    private static readonly string[] PickupModels = ["single-coil", "single-coil-cover", "humbucker", "humbucker-4"];

    public static Gen<HarnessChoices> Around(Selector selector, Extra extra) =>
        from models in Gen.Int[0, PickupModels.Length - 1].Array[selector.Pickups]
        from coils in Gen.Enum<CoilSwitch>().Array[selector.Pickups]
        from volume in Gen.Enum<VolumePlace>()
        from bleed in Gen.Enum<Bleed>()
        from tone in Gen.Enum<TonePlace>()
        from wiring in Gen.Enum<ToneWiring>()
        from board in Gen.Frequency(
            (3, Gen.Const(Board.None)),
            (1, Gen.Const(Board.BeforeVolume)),
            (1, Gen.Const(Board.AfterVolume))
        )
        from isPushPull in Gen.Bool
        from values in Gen.Int[0, 9].Array[6]
        select new HarnessChoices(
            selector,
            [.. models.Select(model => PickupModels[model])],
            [.. coils],
            volume,
            bleed,
            tone,
            wiring,
            board,
            extra,
            isPushPull,
            [.. values]
        ).Sensible();

    /// <summary>The same where the choices go together; where they do not, the plainer of two.</summary>
    private HarnessChoices Sensible()
    {
        var volume =
            Selector.LiftsGround || Selector.IsBlend || Selector.Pickups == 1 ? VolumePlace.Master
            : Selector.Model.Length == 0 ? VolumePlace.EachOnTheWiper
            : Volume;
        var models = Models;
        if (Selector.LiftsGround && models[0] == "humbucker")
        {
            models = models.SetItem(0, "single-coil-cover");
        }

        return this with
        {
            Models = models,
            Coils = [.. Coils.Select((coil, i) => SensibleFor(models[i], i, coil))],
            Volume = volume,
            Board = volume == VolumePlace.Master ? Board : Board.None,
            Tone = Extra == Extra.ToneLift && Tone == TonePlace.None ? TonePlace.BeforeVolume : Tone,
            Extra =
                Extra == Extra.JackThatShortsWithoutAPlug && Board != Board.None && volume == VolumePlace.Master
                    ? Extra.MomentaryMute
                    : Extra,
        };
    }

    private CoilSwitch SensibleFor(string model, int pickup, CoilSwitch coil) =>
        (model, coil) switch
        {
            (_, CoilSwitch.None) => CoilSwitch.None,
            ("humbucker-4", CoilSwitch.Phase) => CoilSwitch.SeriesParallel,
            ("humbucker-4", _) => Selector.LiftsGround && pickup == 0 ? CoilSwitch.None : coil,
            ("humbucker", _) => CoilSwitch.None,
            // A phase switch is for the second of two pickups.
            _ => pickup == 1 && !Selector.LiftsGround && Selector.Stops.Any(stop => stop.Heard is "01")
                ? CoilSwitch.Phase
                : CoilSwitch.None,
        };
}
