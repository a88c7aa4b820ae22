using WireText.Circuits;
using WireText.Parts;

namespace WireText.Electrical.Sound;

/// <summary>Which way a coil's voltage points, from its start to its finish: plus at the finish is +1.</summary>
public static class CoilSigns
{
    /// <summary>The sign of hum, which depends on the winding alone; clockwise when not stated.</summary>
    public static int Hum(Coil coil) => coil.Winding == Winding.CounterClockwise ? -1 : 1;

    /// <summary>The sign of the strings, which depends on winding and magnet; 0 for a coil without one, north when not stated.</summary>
    public static int Strings(Coil coil) =>
        coil.Magnet switch
        {
            MagnetPole.None => 0,
            MagnetPole.South => -Hum(coil),
            _ => Hum(coil),
        };

    /// <summary>True when the winding or the magnet is not stated, so that phase is a guess.</summary>
    public static bool ArePhaseAssumed(Coil coil) => coil.Winding is null || coil.Magnet is null;
}
