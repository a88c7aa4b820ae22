using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Roles;

/// <summary>What a dial does in one situation, the other dials at rest.</summary>
/// <param name="State">The states of the situation.</param>
/// <param name="AtZero">What is heard with the dial at 0.</param>
/// <param name="AtFive">With the dial at 5.</param>
/// <param name="AtTen">With the dial at 10.</param>
public sealed record DialEffect(
    Dial Dial,
    State State,
    DialRole Role,
    JackSound AtZero,
    JackSound AtFive,
    JackSound AtTen
)
{
    /// <summary>Null when a network has no solution.</summary>
    internal static DialEffect? Of(SoundMemo sounds, Dial dial, State state, SolveBudget budget)
    {
        var (zero, five, ten) = (
            budget.Count(sounds.Of(state.At(dial, 0))),
            budget.Count(sounds.Of(state.At(dial, SituationOutcomes.Middle))),
            budget.Count(sounds.Of(state.At(dial, Dial.FullyUp)))
        );
        if (new[] { zero, five, ten }.Any(sound => sound.Outcome == Outcome.NotComputed))
        {
            return null;
        }

        var effect = new DialEffect(dial, state, DialRole.Inert, zero, five, ten);
        return effect with { Role = effect.Judge(sounds.Network) };
    }

    /// <summary>How loud a coil is with the dial there, in dB: root mean square over the open strings.</summary>
    public static double DecibelsOf(Coil coil, JackSound sound) =>
        sound.Gains is { } gains && gains.Coils.IndexOf(coil) is >= 0 and var place
            ? Decibels.Of(gains.StringsGain(place))
            : Decibels.Floor;

    /// <summary>The strings' power level with the dial there, in dB.</summary>
    public static double PowerOf(JackSound sound) => sound.Gains?.PowerDecibels ?? Decibels.Floor;

    /// <summary>The strings' treble with the dial there, in dB.</summary>
    public static double TrebleOf(JackSound sound) => sound.Gains?.TrebleDecibels ?? Decibels.Floor;

    /// <summary>The first that fits. Their order matters: a resistance in series takes of the treble as a tone pot does.</summary>
    private DialRole Judge(Network network)
    {
        var (low, high) = (PowerOf(AtZero), PowerOf(AtTen));
        if (low < Thresholds.SilentDecibels != high < Thresholds.SilentDecibels)
        {
            return low < high ? DialRole.Volume : DialRole.VolumeBackwards;
        }

        if (high >= Thresholds.SilentDecibels && NothingIsHeardRoundIt(network))
        {
            return DialRole.VolumeThatLeaks;
        }

        var rises = Coils().Select(coil => Audible(coil, AtTen) - Audible(coil, AtZero)).ToList();
        if (rises.Exists(rise => Math.Abs(rise) >= Thresholds.BlendDecibels))
        {
            return rises.Max() >= Thresholds.BlendDecibels ? DialRole.Blend : DialRole.BlendBackwards;
        }

        var treble = TrebleOf(AtTen) - TrebleOf(AtZero);
        if (Math.Abs(treble) >= Thresholds.ToneDecibels)
        {
            return treble > 0 ? DialRole.Tone : DialRole.ToneBackwards;
        }

        return Math.Abs(high - low) >= Thresholds.MattersDecibels ? DialRole.BassCut
            : LargestChange() < Thresholds.InertDecibels ? DialRole.Inert
            : DialRole.Slight;
    }

    /// <summary>True when all that is heard comes through the dial's tracks: with these away no string is left.</summary>
    private bool NothingIsHeardRoundIt(Network network) => NothingIsHeardWithout(network, TracksIn(network));

    /// <summary>
    /// True when all that is heard comes through the dial's tracks, or round them by a bleed alone: wired so it is a volume, or cuts
    /// the bass.
    /// </summary>
    public bool CarriesAll(Network network)
    {
        var tracks = TracksIn(network);
        return NothingIsHeardWithout(
            network,
            [.. tracks, .. Bleeds.Of(network, State.At(Dial, SituationOutcomes.Middle), tracks)]
        );
    }

    private List<Branch> TracksIn(Network network) =>
        [
            .. network.Branches.Where(branch =>
                network.Circuit.Elements[branch.Element] is Track track && track.Dial == Dial.Index
            ),
        ];

    private bool NothingIsHeardWithout(Network network, IEnumerable<Branch> opened)
    {
        var left = LiveNetwork.Of(
            network,
            State.At(Dial, SituationOutcomes.Middle),
            BranchEdits.None.Open(opened.Select(branch => branch.Index))
        );
        return left.Coils.All(coil =>
            network.Circuit.Elements[left.Branches[coil].Source.Element] is not Coil { HearsStrings: true }
        );
    }

    /// <summary>The string coils that are live with the dial anywhere, in order of declaration.</summary>
    private IEnumerable<Coil> Coils() =>
        new[] { AtZero, AtFive, AtTen }
            .SelectMany(sound => sound.Coils)
            .Select(coil => coil.Coil)
            .DistinctBy(coil => coil.Index)
            .OrderBy(coil => coil.Index);

    /// <summary>The most by which level, treble or any coil that can be heard changes from one travel to another, in dB.</summary>
    private double LargestChange()
    {
        JackSound[] sounds = [AtZero, AtFive, AtTen];
        var spreads = Coils()
            .Select(coil => Spread(sounds.Select(sound => Audible(coil, sound))))
            .Append(Spread(sounds.Select(PowerOf)))
            .Append(Spread(sounds.Select(TrebleOf)));
        return spreads.Max();
    }

    /// <summary>As <see cref="DecibelsOf"/>, but what nobody can hear is all the same.</summary>
    private static double Audible(Coil coil, JackSound sound) =>
        Math.Max(DecibelsOf(coil, sound), Thresholds.SilentDecibels);

    private static double Spread(IEnumerable<double> values)
    {
        var all = values.ToList();
        return all.Max() - all.Min();
    }
}
