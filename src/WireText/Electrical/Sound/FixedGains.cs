using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Sound;

/// <summary>The gains of the live coils at the fixed frequencies, from one solve, and what is summed up from them.</summary>
public sealed class FixedGains
{
    private static readonly Range StringsRange = 2..8;
    private static readonly Range BalanceRange = 2..10;
    private static readonly Range TrebleRange = 9..12;
    private static readonly Range BandRange = 2..12;

    private readonly AcAnswer answer;
    private readonly ImmutableArray<int> stringSigns;

    private FixedGains(Circuit circuit, AcAnswer answer)
    {
        this.answer = answer;
        Coils = [.. answer.Coils.Select(element => (Coil)circuit.Elements[element])];
        stringSigns = [.. Coils.Select(CoilSigns.Strings)];
    }

    /// <summary>The live coils, in order of declaration. Their places here are those of the other members.</summary>
    public ImmutableArray<Coil> Coils { get; }

    /// <summary>Null when the network has no solution.</summary>
    /// <param name="solver">Prepared with the load.</param>
    public static FixedGains? Of(Circuit circuit, AcSolver solver)
    {
        double[] hertz = [circuit.Surroundings.MainsHertz, FixedFrequencies.Strength, .. FixedFrequencies.Band];
        return solver.Solve(hertz) is { } answer ? new FixedGains(circuit, answer) : null;
    }

    public Complex AtMains(int coil) => answer.GainAt(coil, 0);

    /// <summary>The size of a coil's gain at the frequency where strength is judged.</summary>
    public double Strength(int coil) => Complex.Abs(answer.GainAt(coil, 1));

    /// <summary>The strings' level: root mean square over the open strings of the sum of all coils, each with its sign; in dB.</summary>
    public double LevelDecibels => Decibels.Of(RootMeanSquare(StringsRange, SumAt));

    /// <summary>As <see cref="LevelDecibels"/>, but the coils added by power, so that nothing cancels.</summary>
    public double PowerDecibels => Decibels.Of(RootMeanSquare(StringsRange, PowerAt));

    /// <summary>As <see cref="PowerDecibels"/>, in the treble.</summary>
    public double TrebleDecibels => Decibels.Of(RootMeanSquare(TrebleRange, PowerAt));

    /// <summary>The root mean square of one coil's gain over the open strings.</summary>
    public double StringsGain(int coil) => RootMeanSquare(StringsRange, f => Complex.Abs(answer.GainAt(coil, f)));

    /// <summary>The sizes of one coil's gain over the frequencies of <see cref="FixedFrequencies.Balance"/>.</summary>
    public ImmutableArray<double> BalanceGains(int coil) => Sizes(coil, BalanceRange);

    /// <summary>The gain of one coil with the sign of its string, over <see cref="FixedFrequencies.Band"/>.</summary>
    public ImmutableArray<Complex> BandGains(int coil) =>
        [.. Indices(BandRange).Select(f => stringSigns[coil] * answer.GainAt(coil, f))];

    /// <summary>How alike two coils are in phase over the open strings: 1 in phase, −1 out of phase, between them it turns.</summary>
    public double Correlation(int coil, int other)
    {
        var (sum, size, otherSize) = (0.0, 0.0, 0.0);
        foreach (var f in Indices(StringsRange))
        {
            var (a, b) = (stringSigns[coil] * answer.GainAt(coil, f), stringSigns[other] * answer.GainAt(other, f));
            sum += (a * Complex.Conjugate(b)).Real;
            size += SquareOf(a);
            otherSize += SquareOf(b);
        }

        return size > 0 && otherSize > 0 ? sum / Math.Sqrt(size * otherSize) : 0;
    }

    private ImmutableArray<double> Sizes(int coil, Range range) =>
        [.. Indices(range).Select(f => Complex.Abs(answer.GainAt(coil, f)))];

    private double SumAt(int frequency)
    {
        var sum = Complex.Zero;
        for (var coil = 0; coil < Coils.Length; coil++)
        {
            sum += stringSigns[coil] * answer.GainAt(coil, frequency);
        }

        return Complex.Abs(sum);
    }

    private double PowerAt(int frequency)
    {
        var sum = 0.0;
        for (var coil = 0; coil < Coils.Length; coil++)
        {
            sum += stringSigns[coil] == 0 ? 0 : SquareOf(answer.GainAt(coil, frequency));
        }

        return Math.Sqrt(sum);
    }

    private static double RootMeanSquare(Range range, Func<int, double> sizeAt)
    {
        var squares = Indices(range).Select(f => sizeAt(f) * sizeAt(f)).ToList();
        return Math.Sqrt(squares.Sum() / squares.Count);
    }

    private static IEnumerable<int> Indices(Range range) =>
        Enumerable.Range(range.Start.Value, range.End.Value - range.Start.Value);

    private static double SquareOf(Complex value) => (value.Real * value.Real) + (value.Imaginary * value.Imaginary);
}
