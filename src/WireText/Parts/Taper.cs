using System.Collections.Immutable;

namespace WireText.Parts;

/// <summary>How the resistance from a track's low end to its wiper grows with travel.</summary>
/// <remarks>
/// Named laws are exponential: with the ratio m at half travel, a = (1/m - 1)^2 and y(t) = (a^t - 1)/(a - 1);
/// a reverse law is 1 - y(1 - t). The codes and the percentages at half travel are those of IEC 60393-1:2008.
/// </remarks>
public sealed record Taper(string Name, ImmutableArray<TaperPoint> Points, double? MiddleFraction, bool IsReverse)
{
    public static readonly Taper Linear = new("linear", [], null, false);
    public static readonly Taper Audio = new("audio", [], 0.15, false);
    public static readonly Taper Audio10 = new("audio-10", [], 0.10, false);
    public static readonly Taper ReverseAudio = new("reverse-audio", [], 0.15, true);
    public static readonly Taper ReverseAudio10 = new("reverse-audio-10", [], 0.10, true);

    public static ImmutableArray<Taper> Named { get; } = [Linear, Audio, Audio10, ReverseAudio, ReverseAudio10];

    /// <summary>The fraction of the resistance below the wiper, 0 to 1, at a travel from 0 to 10.</summary>
    /// <remarks>Exactly 0 at travel 0 and exactly 1 at travel 10 for the named laws; straight lines between given points.</remarks>
    public double FractionAt(double travel)
    {
        if (!Points.IsEmpty)
        {
            return Interpolate(travel);
        }

        var t = Math.Clamp(travel / 10, 0, 1);
        return MiddleFraction is not { } middle ? t
            : IsReverse ? 1 - Exponential(1 - t, middle)
            : Exponential(t, middle);
    }

    private static double Exponential(double t, double middle)
    {
        if (t is 0 or 1)
        {
            return t;
        }

        var a = ((1 / middle) - 1) * ((1 / middle) - 1);
        return (Math.Pow(a, t) - 1) / (a - 1);
    }

    private double Interpolate(double travel)
    {
        var after = 0;
        while (after < Points.Length && Points[after].Travel < travel)
        {
            after++;
        }

        if (after == 0)
        {
            return Points[0].Fraction;
        }

        if (after == Points.Length)
        {
            return Points[^1].Fraction;
        }

        var (low, high) = (Points[after - 1], Points[after]);
        var share = (travel - low.Travel) / (high.Travel - low.Travel);
        return low.Fraction + (share * (high.Fraction - low.Fraction));
    }
}

/// <summary>One given point of a taper: travel 0 to 10, fraction 0 to 1.</summary>
public readonly record struct TaperPoint(double Travel, double Fraction);
