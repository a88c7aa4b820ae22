using System.Collections.Immutable;
using WireText.Parts;

namespace WireText.Circuits;

/// <summary>An electrical element inside a part, between lugs given as indices into <see cref="Circuit.Lugs"/>. SI units.</summary>
/// <param name="Index">Its place in <see cref="Circuit.Elements"/>.</param>
/// <param name="Name">The part's name, with the section where there are several: <c>bridge.n</c>, <c>vol.top</c>.</param>
public abstract record Element(int Index, int Part, string Name)
{
    /// <summary>The lugs that current flows between; for an amplifier its input and common.</summary>
    public abstract ImmutableArray<int> Ends { get; }

    /// <summary>How far the value may be off, as a fraction of it (0.1 is ±10 %); null when not stated.</summary>
    public double? Tolerance { get; init; }

    /// <summary>Between what its value lies where nobody knows it; null where it is known.</summary>
    public ValueDoubt? Doubt { get; init; }
}

/// <summary>EMF, resistance and inductance in series, with a capacitance across.</summary>
/// <param name="Ohms">Winding resistance at 20 °C.</param>
/// <param name="EddyOhms">A resistance across the coil that signals see and a meter does not; null for none.</param>
/// <param name="Winding">Null when not stated: clockwise is assumed, and what depends on it is marked.</param>
/// <param name="Magnet">Null when not stated: north is assumed, and what depends on it is marked.</param>
public sealed record Coil(
    int Index,
    int Part,
    string Name,
    int Start,
    int Finish,
    double Ohms,
    double Henries,
    double Farads,
    double? EddyOhms,
    Winding? Winding,
    MagnetPole? Magnet
) : Element(Index, Part, Name)
{
    public override ImmutableArray<int> Ends => [Start, Finish];

    /// <summary>
    /// True when the eddy loss lies across the inductance alone, as in a core, and not across the terminals. Not yet in the
    /// language.
    /// </summary>
    public bool IsEddyInside { get; init; }

    /// <summary>Its number of turns, which tells how much hum it picks up; null when not stated.</summary>
    public double? Turns { get; init; }

    /// <summary>Its wire, as far as it is said; null when nothing is.</summary>
    public CoilWire? Wire { get; init; }

    public CoilOrigins Origins { get; init; } = CoilOrigins.AllAssumed;

    /// <summary>Where it lies under the strings, as far as it is said. No level, reading or resonance depends on it.</summary>
    public StringSpot Spot { get; init; } = StringSpot.Unsaid;

    /// <summary>
    /// Where the coil resonates by itself, with no cable, pot or amplifier on it: 1/(2π√(LC)) hertz. Null without a
    /// capacitance.
    /// </summary>
    public double? OwnResonanceHertz => Henries * Farads > 0 ? 1 / (2 * Math.PI * Math.Sqrt(Henries * Farads)) : null;

    /// <summary>True when a string is heard: it has a magnet.</summary>
    public bool HearsStrings => Magnet != MagnetPole.None;
}

/// <summary>The track of a pot: low end to wiper to high end, split by a dial.</summary>
/// <param name="FreeAt">The travel at which the wiper rests on the high lug, off the track; null when it never does.</param>
public sealed record Track(
    int Index,
    int Part,
    string Name,
    int Low,
    int Wiper,
    int High,
    int Dial,
    double Ohms,
    Taper Taper,
    double? FreeAt
) : Element(Index, Part, Name)
{
    public override ImmutableArray<int> Ends => [Low, Wiper, High];

    /// <summary>True where nobody knows how its resistance grows with travel; computed as linear.</summary>
    public bool IsTaperUnknown { get; init; }
}

public sealed record Resistor(int Index, int Part, string Name, int A, int B, double Ohms) : Element(Index, Part, Name)
{
    public override ImmutableArray<int> Ends => [A, B];
}

public sealed record Capacitor(int Index, int Part, string Name, int A, int B, double Farads)
    : Element(Index, Part, Name)
{
    public override ImmutableArray<int> Ends => [A, B];
}

/// <param name="Ohms">Its resistance to direct current; above 0.</param>
public sealed record Inductor(int Index, int Part, string Name, int A, int B, double Henries, double Ohms)
    : Element(Index, Part, Name)
{
    /// <summary>Taken when not stated; a choke without resistance would have no solution (assumed; not measured).</summary>
    public const double UsualOhms = 1;

    public override ImmutableArray<int> Ends => [A, B];
}

/// <param name="Ohms">Its internal resistance.</param>
public sealed record Battery(int Index, int Part, string Name, int Plus, int Minus, double Volts, double Ohms)
    : Element(Index, Part, Name)
{
    /// <summary>Internal resistance of a fresh block battery in ohms, taken when not stated (assumed; not measured).</summary>
    public const double UsualOhms = 2;

    public override ImmutableArray<int> Ends => [Plus, Minus];
}

/// <summary>A voltage amplifier from input and common to output; see <see cref="Inside.AmplifierInside"/> for the units.</summary>
public sealed record Amplifier(
    int Index,
    int Part,
    string Name,
    int In,
    int Out,
    int Common,
    double Gain,
    double InputOhms,
    double OutputOhms,
    int? Supply,
    double IdleFraction,
    double DrawAmperes
) : Element(Index, Part, Name)
{
    public override ImmutableArray<int> Ends => [In, Common];
}
