using WireText.Quantities;

namespace WireText.Circuits;

/// <summary>What a winder knows of a coil before there is one to measure; null for what is not said.</summary>
/// <param name="Turns">Of this coil alone.</param>
/// <param name="Gauge">The American wire gauge of its copper wire.</param>
/// <param name="TurnMetres">The mean length of a turn, in metres.</param>
public sealed record CoilWire(double? Turns, double? Gauge, double? TurnMetres)
{
    /// <summary>The resistance at 20 °C, in ohms, of the wire with its exact diameter; null until all three are said.</summary>
    public double? Ohms =>
        (Turns, Gauge, TurnMetres) is ({ } turns, { } gauge, { } metres)
            ? CopperWire.CoilOhms(turns, gauge, metres)
            : null;
}
