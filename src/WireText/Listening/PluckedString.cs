namespace WireText.Listening;

/// <summary>An ideal string between nut or fret and bridge, plucked at a point and let go from rest.</summary>
/// <remarks>
/// <para>
/// A string that is pulled aside at the distance p from one end begins as a triangle, and partial n of it has the displacement
/// 2h/(n²π²β(1−β))·sin(nπβ), β = p/L (Fletcher and Rossing, The Physics of Musical Instruments, 2nd edition, 1998, sections 2.6 and
/// 2.7; Morse, Vibration and Sound, 1948, chapter III). A coil hears velocity, which is n times that: sin(nπβ)/n, and nothing of every
/// partial with a node at the pluck point.
/// </para>
/// <para>
/// Each partial dies away as exp(−σt) with σ = b1 + b3·ω² (the law that Chaigne and Askenfelt, JASA 95(2), 1994, take for struck
/// strings). The figures of b1 and b3 are assumed and not measured: 8 s to fall by 60 dB at 100 Hz, 2 s at 4 kHz.
/// </para>
/// <para>Left out: stiffness, so partials are harmonic; the second plane of motion; what frets and body take from single notes.</para>
/// </remarks>
/// <param name="Hertz">The fundamental.</param>
/// <param name="Metres">What swings: from the bridge to the nut or the fret.</param>
/// <param name="PluckMetres">From the bridge to the pluck point.</param>
public sealed record PluckedString(double Hertz, double Metres, double PluckMetres)
{
    /// <summary>Nothing above is heard.</summary>
    public const double HighestHertz = 20e3;

    private const double LowHertz = 100;
    private const double LowSeconds = 8;
    private const double HighHertz = 4e3;
    private const double HighSeconds = 2;

    /// <summary>Three times the natural logarithm of 10: exp of minus that is −60 dB.</summary>
    private const double SixtyDecibels = 6.907755278982137;

    /// <summary>How many partials lie below both the limit of hearing and half of a sample rate.</summary>
    /// <param name="rate">Samples a second.</param>
    public int CountBelow(int rate) => (int)Math.Floor(Math.Min(HighestHertz, 0.49 * rate) / Hertz);

    /// <summary>The velocity of partial n where it is largest, against a string that swings in its fundamental alone.</summary>
    public double Velocity(int n)
    {
        var beta = PluckMetres / Metres;
        return 2 * PortableMath.Turn(n * beta / 2).Sine / (n * Math.PI * Math.PI * beta * (1 - beta));
    }

    /// <summary>How fast a partial dies away: σ of exp(−σt), in 1/s.</summary>
    public static double DecayOf(double hertz)
    {
        var (low, high) = (SixtyDecibels / LowSeconds, SixtyDecibels / HighSeconds);
        return low
            + (
                (high - low)
                * ((hertz * hertz) - (LowHertz * LowHertz))
                / ((HighHertz * HighHertz) - (LowHertz * LowHertz))
            );
    }

    /// <summary>What share of a partial's largest velocity a coil hears, with its sign.</summary>
    /// <remarks>
    /// At x from the bridge partial n moves as sin(nπx/L), so that a pickup is a comb whose notches are the partials with a node above
    /// it; the mean over an aperture w is that times sin(u)/u, u = nπw/(2L) (Paiva, Pakarinen and Välimäki, Acoustics and Modeling of
    /// Pickups, JAES 60(10), 2012, sections on position and width).
    /// </remarks>
    /// <param name="metres">From the bridge to the middle of the coil.</param>
    /// <param name="aperture">The length of string that it hears, in metres.</param>
    public double HeardAt(int n, double metres, double aperture)
    {
        var comb = PortableMath.Turn(n * metres / (2 * Metres)).Sine;
        var turns = n * aperture / (4 * Metres);
        return turns == 0 ? comb : comb * PortableMath.Turn(turns).Sine / (2 * Math.PI * turns);
    }
}
