using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Sound;

/// <summary>What strings sound like over frequency: all string coils driven with 1 V, each with its sign, faint ones too.</summary>
public sealed class StringResponse
{
    private readonly Circuit circuit;
    private readonly AcSolver solver;

    private StringResponse(Circuit circuit, AcSolver solver) => (this.circuit, this.solver) = (circuit, solver);

    /// <summary>The response of a live network into its load; null when nothing can be computed.</summary>
    public static StringResponse? Of(Circuit circuit, LiveNetwork live) =>
        AcSolver.Prepare(live, circuit.Surroundings) is { } solver ? new StringResponse(circuit, solver) : null;

    /// <summary>With a solver that was prepared with the load.</summary>
    public static StringResponse Of(Circuit circuit, AcSolver solver) => new(circuit, solver);

    /// <summary>The voltage at the tip for 1 V in every string coil, at each frequency; null when it cannot be computed.</summary>
    public ImmutableArray<Complex>? At(params ReadOnlySpan<double> hertz)
    {
        if (solver.Solve(hertz) is not { } answer)
        {
            return null;
        }

        var sums = new Complex[hertz.Length];
        for (var coil = 0; coil < answer.Coils.Length; coil++)
        {
            var sign = CoilSigns.Strings((Coil)circuit.Elements[answer.Coils[coil]]);
            for (var f = 0; f < sums.Length; f++)
            {
                sums[f] += sign * answer.GainAt(coil, f);
            }
        }

        return [.. sums];
    }

    /// <summary>The levels in dB over the EMF of one coil, at least <see cref="Decibels.Floor"/>.</summary>
    public ImmutableArray<double>? DecibelsAt(params ReadOnlySpan<double> hertz) =>
        At(hertz) is { } sums ? [.. sums.Select(sum => Decibels.Of(Complex.Abs(sum)))] : null;
}
