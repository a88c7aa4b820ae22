using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;

namespace WireText.Listening;

/// <summary>What a circuit makes of each coil's voltage in one state: the way from what a string induces to the jack, load and all.</summary>
public sealed class CircuitEar
{
    private readonly Circuit circuit;
    private readonly AcSolver solver;

    private CircuitEar(Circuit circuit, AcSolver solver) => (this.circuit, this.solver) = (circuit, solver);

    /// <summary>Null where nothing sounds: see <see cref="Outcome"/>.</summary>
    public static CircuitEar? Of(Study study, State state) =>
        study.Analyse(state).Outcome == Outcome.Sound
        && AcSolver.Prepare(LiveNetwork.Of(study.Network, state), study.Circuit.Surroundings) is { } solver
            ? new CircuitEar(study.Circuit, solver)
            : null;

    /// <summary>For each frequency the volts at the jack for 1 V in every coil with a magnet, each with its sign; null when they cannot be computed.</summary>
    public ImmutableArray<Complex>? TogetherAt(ReadOnlySpan<double> hertz) =>
        StringResponse.Of(circuit, solver).At(hertz);

    /// <summary>The same coil by coil, in the order of <see cref="CoilAnswer.Coil"/>s of the circuit; null when it cannot be computed.</summary>
    public ImmutableArray<CoilAnswer>? CoilsAt(ReadOnlySpan<double> hertz)
    {
        if (solver.Solve(hertz) is not { } answer)
        {
            return null;
        }

        var coils = ImmutableArray.CreateBuilder<CoilAnswer>();
        for (var place = 0; place < answer.Coils.Length; place++)
        {
            var coil = (Coil)circuit.Elements[answer.Coils[place]];
            if (CoilSigns.Strings(coil) is not (not 0 and var sign))
            {
                continue;
            }

            var gains = ImmutableArray.CreateBuilder<Complex>(hertz.Length);
            for (var f = 0; f < hertz.Length; f++)
            {
                gains.Add(sign * answer.GainAt(place, f));
            }

            coils.Add(new CoilAnswer(coil, gains.MoveToImmutable()));
        }

        return coils.ToImmutable();
    }
}

/// <param name="Gains">For each frequency that was asked for, the volts at the jack for 1 V in this coil.</param>
public sealed record CoilAnswer(Coil Coil, ImmutableArray<Complex> Gains);
