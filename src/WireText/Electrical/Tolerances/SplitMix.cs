namespace WireText.Electrical.Tolerances;

/// <summary>Numbers that look random and follow from a seed alone, the same on every machine; any of them is had without those before it.</summary>
/// <remarks>
/// SplitMix64: the n-th number is the seed plus (n + 1) times the golden gamma, mixed. Source: Steele, Lea and Flood, "Fast
/// splittable pseudorandom number generators", OOPSLA 2014; the constants are those of its 64-bit mixer, from memory, and a test holds them to published
/// outputs.
/// </remarks>
/// <param name="seed">Any number.</param>
public readonly struct SplitMix(ulong seed)
{
    private const ulong GoldenGamma = 0x9E3779B97F4A7C15;

    /// <summary>The number of that place, all 64 bits of it.</summary>
    /// <param name="place">From 0.</param>
    public ulong At(ulong place)
    {
        unchecked
        {
            var z = seed + ((place + 1) * GoldenGamma);
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>The number of that place as a fraction: 0 or above and below 1, each of 2^53 steps as likely.</summary>
    /// <inheritdoc cref="At"/>
    public double FractionAt(ulong place) => (At(place) >> 11) * (1.0 / (1UL << 53));
}
