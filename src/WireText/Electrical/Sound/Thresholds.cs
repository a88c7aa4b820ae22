namespace WireText.Electrical.Sound;

/// <summary>Where one word ends and the next begins. Every one is chosen; none is a standard's.</summary>
public static class Thresholds
{
    /// <summary>A coil is unheard when its gain is below this: −60 dB.</summary>
    public const double UnheardGain = 0.001;

    /// <summary>A jack that nothing drives is quiet up to this impedance at the mains, in ohms; above it is dead and hums.</summary>
    public const double QuietOhms = 10e3;

    /// <summary>A dial silences when it leaves less than this, in dB.</summary>
    public const double SilentDecibels = -60;

    /// <summary>A dial blends when it brings a coil up or down by this between 0 and 10, in dB.</summary>
    public const double BlendDecibels = 15;

    /// <summary>A dial is a tone control when it changes the treble by this between 0 and 10, in dB.</summary>
    public const double ToneDecibels = 6;

    /// <summary>A dial that changes nothing by this is inert, in dB.</summary>
    public const double InertDecibels = 0.05;

    /// <summary>A volume is linked when at 5 it takes this of one coil more than of another, in dB.</summary>
    public const double LinkedDecibels = 6;

    /// <summary>A coil is heard down to this, in dB below the loudest.</summary>
    public const double HeardDecibels = -26;

    /// <summary>A coil is a trace down to this, in dB below the loudest.</summary>
    public const double TraceDecibels = -40;

    /// <summary>A sum this far below the coils' power is thin: it cancels in the model, not quite on real strings.</summary>
    public const double ThinDecibels = -20;

    /// <summary>Below this correlation two coils are out of phase; above its opposite they are in phase.</summary>
    public const double OutOfPhaseCorrelation = -0.5;

    /// <summary>Hum is cancelled at or below this residue, in dB.</summary>
    public const double CancelledDecibels = -12;

    /// <summary>Hum is left over at or below this residue, in dB; above it is full.</summary>
    public const double LeftOverDecibels = -3;

    /// <summary>An element matters when taking it out moves something by this, in dB.</summary>
    public const double MattersDecibels = 3;

    /// <summary>A fixed resistor in series with everything is named from this on, in ohms.</summary>
    public const double NamedSeriesOhms = 1e3;

    /// <summary>A direct voltage at the jack is told above this, in volts.</summary>
    public const double JackVolts = 1e-3;

    /// <summary>An electrolytic bears this much the wrong way round, in volts: common practice, its oxide holds a little.</summary>
    public const double ReversedVolts = 0.5;

    /// <summary>Balance is not looked at further down, in dB.</summary>
    public const double BalanceFloorDecibels = -60;
}
