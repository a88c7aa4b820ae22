using System.Collections.Immutable;

namespace WireText.Pages;

/// <summary>What is told of one state.</summary>
/// <param name="Heard">How the heard coils are joined, or why nothing is heard; and what else is to be known.</param>
/// <param name="Level">Over the loudest position of the page's circuit, its knobs at rest.</param>
/// <param name="Curve">The level over frequency; null where nothing sounds.</param>
/// <param name="Least">Where what nobody knows makes it a band: its lower edge. Null for none.</param>
/// <param name="Most">The upper edge.</param>
/// <param name="Unknown">What nobody knows of what it rests on; empty where all is known.</param>
/// <param name="Assumed">What the curve rests on that nobody gave; empty where all is given.</param>
internal sealed record Told(
    string Heard,
    string Level,
    string Hum,
    string Meter,
    string Peak,
    ToldCurve? Curve,
    ToldCurve? Least,
    ToldCurve? Most,
    string Unknown,
    string Assumed
)
{
    /// <summary>What the first five are called.</summary>
    public static ImmutableArray<string> Labels { get; } = ["heard", "level", "hum", "meter", "peak"];
}

/// <summary>The level over frequency.</summary>
/// <param name="Code">As <see cref="LevelCode"/> writes it, at <see cref="StateTeller.Hertz"/>.</param>
/// <param name="Lowest">In dB.</param>
/// <param name="Highest">In dB.</param>
internal sealed record ToldCurve(string Code, double Lowest, double Highest);
