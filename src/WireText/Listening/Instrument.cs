using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Listening;

/// <summary>The strings that are heard, and how long they are.</summary>
/// <param name="Strings">Which.</param>
/// <param name="ScaleMetres">From nut to bridge, open.</param>
/// <param name="IsScaleAssumed">True when the text does not say how long.</param>
/// <param name="AreStringsAssumed">True when the text does not say which.</param>
public sealed record Instrument(StringSet Strings, double ScaleMetres, bool IsScaleAssumed, bool AreStringsAssumed)
{
    /// <summary>25.5 inches, rounded. Common practice.</summary>
    private const double UsualGuitarScale = 0.648;

    /// <summary>34 inches, rounded. Common practice.</summary>
    private const double UsualBassScale = 0.864;

    /// <summary>
    /// The open strings from the lowest, in hertz: the notes that strings are tuned to, in equal temperament on A4 = 440 Hz (ISO 16).
    /// </summary>
    private static readonly ImmutableArray<OpenString> GuitarStrings =
    [
        new("E2", 82.4068892282175),
        new("A2", 110),
        new("D3", 146.832383958704),
        new("G3", 195.997717990875),
        new("B3", 246.941650628062),
        new("E4", 329.62755691287),
    ];

    private static readonly ImmutableArray<OpenString> BassStrings =
    [
        new("E1", 41.2034446141087),
        new("A1", 55),
        new("D2", 73.4161919793519),
        new("G2", 97.9988589954373),
    ];

    /// <summary>From the lowest.</summary>
    public ImmutableArray<OpenString> Open => Strings == StringSet.Bass ? BassStrings : GuitarStrings;

    /// <summary>The frets of E major, a string each.</summary>
    public ImmutableArray<int> ChordFrets => Strings == StringSet.Bass ? [0, 2, 2, 1] : [0, 2, 2, 1, 0, 0];

    /// <summary>What swings of the string that is fretted highest.</summary>
    public double ShortestMetres => ScaleMetres / Math.Pow(2, ChordFrets.Max() / 12.0);

    public static Instrument Of(Circuit circuit)
    {
        var (scale, strings) = (circuit.Surroundings.ScaleMetres, circuit.Surroundings.Strings);
        var set = strings ?? StringSet.Guitar;
        return new Instrument(
            set,
            scale ?? (set == StringSet.Bass ? UsualBassScale : UsualGuitarScale),
            scale is null,
            strings is null
        );
    }
}

/// <param name="Name">The note and its octave.</param>
/// <param name="Hertz">Its fundamental.</param>
public sealed record OpenString(string Name, double Hertz);
