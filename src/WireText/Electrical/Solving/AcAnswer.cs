using System.Collections.Immutable;
using System.Numerics;

namespace WireText.Electrical.Solving;

/// <summary>What a network does at each frequency: its impedance at the jack and the gain of every live coil to the tip.</summary>
public sealed class AcAnswer
{
    private readonly Complex[] impedances;
    private readonly Complex[][] gains;

    internal AcAnswer(ImmutableArray<double> hertz, ImmutableArray<int> coils, Complex[] impedances, Complex[][] gains)
    {
        Hertz = hertz;
        Coils = coils;
        this.impedances = impedances;
        this.gains = gains;
    }

    public ImmutableArray<double> Hertz { get; }

    /// <summary>The live coils, as indices into <see cref="Circuits.Circuit.Elements"/>, in order of declaration.</summary>
    public ImmutableArray<int> Coils { get; }

    /// <summary>The impedance between tip and sleeve, in ohms, with the load if it was solved with one.</summary>
    public Complex ImpedanceAt(int frequency) => impedances[frequency];

    /// <summary>The voltage at the tip for 1 V of EMF in a coil that raises its finish.</summary>
    /// <param name="coil">Its place in <see cref="Coils"/>.</param>
    /// <param name="frequency">Its place in <see cref="Hertz"/>.</param>
    public Complex GainAt(int coil, int frequency) => gains[coil][frequency];
}
