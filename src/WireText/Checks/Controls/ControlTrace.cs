using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Sound;

namespace WireText.Checks.Controls;

/// <summary>What tells one state from another: the sound, the coils that hang or are shorted, the metal that is grounded.</summary>
internal sealed record ControlTrace(JackSound Sound, ImmutableArray<CoilPlace> Coils, ImmutableArray<bool> Grounded)
{
    /// <summary>Gains that differ by less than this part of the larger are the same: rounding alone.</summary>
    private const double Rounding = 1e-9;

    public static ControlTrace Of(StudyContext context, State state)
    {
        var network = context.Study.Network;
        var nodeOf = network.InContact(state);
        return new ControlTrace(
            context.Study.Sounds.Of(state),
            [.. CoilPlacement.Of(network, state).Select(coil => coil.Place)],
            [
                .. context
                    .Circuit.Lugs.Where(lug => lug.IsMetal)
                    .Select(lug => nodeOf[context.Circuit.Nets.OneNet[lug.Index]] == nodeOf[network.Sleeve]),
            ]
        );
    }

    public bool IsSameAs(ControlTrace other) =>
        Sound.Outcome == other.Sound.Outcome
        && Coils.SequenceEqual(other.Coils)
        && Grounded.SequenceEqual(other.Grounded)
        && (Sound.Outcome != Outcome.Sound || HaveSameGains(Sound.Gains!, other.Sound.Gains!));

    /// <summary>True when all gains over the band are equal, or all are opposite: one pickup alone turned round sounds the same.</summary>
    private static bool HaveSameGains(FixedGains one, FixedGains other)
    {
        if (!one.Coils.SequenceEqual(other.Coils))
        {
            return false;
        }

        var pairs = Enumerable
            .Range(0, one.Coils.Length)
            .SelectMany(coil => one.BandGains(coil).Zip(other.BandGains(coil)))
            .ToList();
        return pairs.TrueForAll(pair => AreNear(pair.First, pair.Second))
            || pairs.TrueForAll(pair => AreNear(pair.First, -pair.Second));
    }

    private static bool AreNear(Complex a, Complex b) =>
        Complex.Abs(a - b) <= Rounding * Math.Max(Complex.Abs(a), Complex.Abs(b));
}
