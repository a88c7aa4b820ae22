using System.Collections.Immutable;

namespace WireText.Electrical.Sound;

/// <summary>The frequencies at which everything is judged, in hertz: open strings, their octaves, the mains. Chosen.</summary>
public static class FixedFrequencies
{
    /// <summary>Where strength is judged: low enough that no pickup is in resonance.</summary>
    public const double Strength = 330;

    /// <summary>The six open strings of a guitar in standard tuning, equal temperament on A = 440 Hz (ISO 16).</summary>
    public static readonly ImmutableArray<double> OpenStrings = [82.41, 110.00, 146.83, 196.00, 246.94, 329.63];

    /// <summary>The open strings and two octaves above the highest.</summary>
    public static readonly ImmutableArray<double> Balance = [.. OpenStrings, 659.26, 1318.51];

    /// <summary>The whole band in ten steps.</summary>
    public static readonly ImmutableArray<double> Band = [.. Balance, 2637.02, 5274.04];
}
