using System.Numerics;

namespace WireText.Electrical.Sound;

public enum HumWord
{
    Cancelled,

    LeftOver,

    /// <summary>One coil, or coils whose hum does not cancel.</summary>
    Full,
}

/// <summary>The hum of all live coils in one uniform field at the mains frequency.</summary>
/// <param name="Decibels">Over the hum of one coil.</param>
/// <param name="ResidueDecibels">Over the hum of the same coils if all added up.</param>
/// <param name="IsByTurns">True when every coil states its turns and they weigh; else all coils pick up the same.</param>
public sealed record Hum(double Decibels, double ResidueDecibels, bool IsByTurns)
{
    public HumWord Word =>
        ResidueDecibels <= Thresholds.CancelledDecibels ? HumWord.Cancelled
        : ResidueDecibels <= Thresholds.LeftOverDecibels ? HumWord.LeftOver
        : HumWord.Full;

    /// <summary>Null when no coil is live.</summary>
    public static Hum? Of(FixedGains gains)
    {
        if (gains.Coils.IsEmpty)
        {
            return null;
        }

        // The same area is assumed for all coils: a mean coil picks up 1 V.
        var isByTurns = gains.Coils.All(coil => coil.Turns > 0);
        var mean = isByTurns ? gains.Coils.Average(coil => coil.Turns!.Value) : 1;
        var (sum, total) = (Complex.Zero, 0.0);
        for (var place = 0; place < gains.Coils.Length; place++)
        {
            var coil = gains.Coils[place];
            var emf = isByTurns ? coil.Turns!.Value / mean : 1;
            sum += CoilSigns.Hum(coil) * emf * gains.AtMains(place);
            total += emf * Complex.Abs(gains.AtMains(place));
        }

        var level = Complex.Abs(sum);
        return new Hum(Sound.Decibels.Of(level), total > 0 ? Sound.Decibels.Of(level / total) : 0, isByTurns);
    }
}
