namespace WireText.Electrical.Tolerances;

/// <summary>The figures that are told of an instrument in a state: those of the table of positions.</summary>
public enum RunFigure
{
    /// <summary>What an ohmmeter on the plug reads, in ohms.</summary>
    Reading,

    /// <summary>The strings' level, in dB over the EMF of one coil.</summary>
    Level,

    /// <summary>Where the highest resonance lies, in hertz.</summary>
    Peak,

    /// <summary>How far it stands over the level at 100 Hz, in dB.</summary>
    Height,
}
