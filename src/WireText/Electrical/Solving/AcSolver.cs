using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.Intrinsics;
using WireText.Circuits;

namespace WireText.Electrical.Solving;

/// <summary>Solves a live network at many frequencies. Prepared once; each solve moves numbers only.</summary>
/// <remarks>
/// Modified nodal analysis (Ho, Ruehli and Brennan 1975). One solve of the adjoint network (Director and Rohrer 1969), 1 A
/// into the tip, gives the impedance and the gain of every coil: g = y·(v_a − v_b). An amplifier adds one substitution with
/// the same factors: its output in the adjoint network drives its input.
/// </remarks>
public sealed class AcSolver
{
    /// <summary>The relative residual that a solution may leave. Chosen; unpivoted solves leave 1e-16.</summary>
    private const double MaxResidual = 1e-10;

    /// <summary>How many frequencies are solved side by side.</summary>
    private static readonly int Lanes = Vector256<double>.Count;

    private readonly LiveNetwork network;
    private readonly ImmutableArray<TwoPole> poles;
    private readonly ImmutableArray<int> coils;
    private readonly Elimination plan;
    private readonly StampPlaces[] stamps;

    private AcSolver(LiveNetwork network, ImmutableArray<TwoPole> poles, Elimination plan)
    {
        this.network = network;
        this.poles = poles;
        this.plan = plan;
        coils = [.. network.Coils.Select(coil => network.Branches[coil].Source.Element)];
        stamps = [.. poles.Select(pole => StampPlaces.Of(plan, pole))];
    }

    /// <summary>A solver for a network, or null when it has none: tip and sleeve joined, nothing between them, feedback, too large.</summary>
    /// <param name="load">What hangs on the jack; null for the source alone.</param>
    public static AcSolver? Prepare(LiveNetwork network, Surroundings? load)
    {
        if (network.IsShort || network.IsOpen || network.HasFeedback)
        {
            return null;
        }

        var all = WithLoad([.. network.Branches.Select(branch => branch.Inside)], load);
        return Elimination.Plan(network.NodeCount, [.. all.Select(pole => (pole.From, pole.To))]) is { } made
            ? new AcSolver(network, all, made)
            : null;
    }

    /// <summary>The solver of the same network with other values in its branches; nothing is planned anew.</summary>
    /// <param name="branches">One for each of <see cref="LiveNetwork.Branches"/>, between the same nodes.</param>
    internal AcSolver With(ImmutableArray<TwoPole> branches, Surroundings? load) =>
        new(network, WithLoad(branches, load), plan);

    private static ImmutableArray<TwoPole> WithLoad(ImmutableArray<TwoPole> branches, Surroundings? load)
    {
        if (load is null)
        {
            return branches;
        }

        var input = TwoPole.Resistance(LiveNetwork.Sleeve, LiveNetwork.Tip, load.InputOhms);
        return branches.Add(input with { Farads = load.CableFarads });
    }

    /// <summary>The answer at each frequency; null when a solution cannot be trusted.</summary>
    /// <param name="hertz">Above 0, in any order.</param>
    public AcAnswer? Solve(params ReadOnlySpan<double> hertz)
    {
        var impedances = new Complex[hertz.Length];
        var gains = new Complex[coils.Length][];
        for (var coil = 0; coil < gains.Length; coil++)
        {
            gains[coil] = new Complex[hertz.Length];
        }

        var batch = new AcBatch(plan, poles, stamps, network);
        Span<double> lanes = stackalloc double[Lanes];
        for (var start = 0; start < hertz.Length; start += Lanes)
        {
            var count = Math.Min(Lanes, hertz.Length - start);
            for (var lane = 0; lane < Lanes; lane++)
            {
                lanes[lane] = hertz[start + Math.Min(lane, count - 1)];
            }

            batch.Solve(Vector256.Create((ReadOnlySpan<double>)lanes) * (2 * Math.PI));
            for (var lane = 0; lane < count; lane++)
            {
                if (!(batch.Residual(lane) <= MaxResidual) && !batch.SolveWithPivots(lane, MaxResidual))
                {
                    return null;
                }

                impedances[start + lane] = batch.Voltage(LiveNetwork.Tip, lane);
                for (var coil = 0; coil < gains.Length; coil++)
                {
                    gains[coil][start + lane] = batch.Gain(network.Coils[coil], lane);
                }
            }
        }

        return new AcAnswer([.. hertz], coils, impedances, gains);
    }

    /// <summary>The entries that a two-pole adds to; -1 for the sleeve's.</summary>
    internal readonly record struct StampPlaces(int From, int To, int Between)
    {
        public static StampPlaces Of(Elimination plan, TwoPole pole) =>
            new(
                plan.PlaceOf(pole.From),
                plan.PlaceOf(pole.To),
                pole.From == LiveNetwork.Sleeve || pole.To == LiveNetwork.Sleeve ? -1 : plan.EntryOf(pole.From, pole.To)
            );
    }
}
