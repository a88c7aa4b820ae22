using System.Numerics;
using WireText.Circuits;

namespace WireText.Electrical.Sound;

/// <summary>What the hum of a state would be with something changed and everything else as it is.</summary>
public static class HumResidue
{
    /// <summary>In dB over the same coils all added up, with the leads of some coils exchanged.</summary>
    public static double WithReversed(JackSound sound, IEnumerable<Coil> reversed)
    {
        var turned = reversed.Select(coil => coil.Index).ToHashSet();
        return Of(sound, coil => turned.Contains(coil.Index) ? -CoilSigns.Hum(coil) : CoilSigns.Hum(coil));
    }

    /// <summary>In dB over the same coils all added up, with the hum of one coil coming in with another sign.</summary>
    /// <param name="sign">+1 or −1, for a voltage in the direction of the coil that is live now.</param>
    public static double WithSign(JackSound sound, Coil live, int sign) =>
        Of(sound, coil => coil.Index == live.Index ? sign : CoilSigns.Hum(coil));

    /// <summary>
    /// The sign of a partner's hum in the direction of a coil, from a state in which both are live; null when they are not.
    /// </summary>
    public static int? PartnerSign(JackSound both, Coil coil, Coil partner)
    {
        if (both.Gains is not { } gains || gains.Coils.IndexOf(coil) is var one && one < 0)
        {
            return null;
        }

        var other = gains.Coils.IndexOf(partner);
        var direction = other < 0 ? 0 : (gains.AtMains(one) * Complex.Conjugate(gains.AtMains(other))).Real;
        return direction == 0 ? null : Math.Sign(direction) * CoilSigns.Hum(partner);
    }

    private static double Of(JackSound sound, Func<Coil, int> signOf)
    {
        if (sound.Gains is not { } gains)
        {
            return 0;
        }

        var (sum, total) = (Complex.Zero, 0.0);
        for (var place = 0; place < gains.Coils.Length; place++)
        {
            sum += signOf(gains.Coils[place]) * gains.AtMains(place);
            total += Complex.Abs(gains.AtMains(place));
        }

        return total > 0 ? Decibels.Of(Complex.Abs(sum) / total) : 0;
    }
}
