using System.Text;

namespace WireText.Tests.Diagnosing;

/// <summary>Numbers drawn at random, the same for the same words in every run (SplitMix64, Steele et al. 2014).</summary>
internal sealed class Draw
{
    private ulong state;

    public Draw(string words)
    {
        // FNV-1a of the words.
        state = 14695981039346656037;
        foreach (var one in Encoding.UTF8.GetBytes(words))
        {
            state = unchecked((state ^ one) * 1099511628211);
        }
    }

    /// <summary>From 0 up to, and without, 1.</summary>
    public double Uniform()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return ((z ^ (z >> 31)) >> 11) / (double)(1UL << 53);
        }
    }

    /// <summary>From one to the other.</summary>
    public double Between(double least, double most) => least + ((most - least) * Uniform());

    /// <summary>Of mean 0 and deviation 1 (Box and Muller 1958).</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - Uniform())) * Math.Cos(2 * Math.PI * Uniform());

    public bool Happens(double chance) => Uniform() < chance;

    /// <summary>From 0 up to, and without, the count.</summary>
    public int Below(int count) => Math.Min((int)(Uniform() * count), count - 1);
}
