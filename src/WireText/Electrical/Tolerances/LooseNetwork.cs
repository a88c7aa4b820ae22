using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Tolerances;

/// <summary>One state of a circuit whose values are off: what is joined is worked out once, and an instrument only moves numbers.</summary>
/// <remarks>
/// Solder, contacts and a track section below <see cref="DialSetting.JoinOhms"/> join what they join with every value as
/// written. Safe to ask from several threads.
/// </remarks>
internal sealed class LooseNetwork
{
    private readonly Circuit circuit;
    private readonly RunFactors factors;
    private readonly LiveNetwork direct;
    private readonly LiveNetwork signals;
    private readonly ImmutableArray<Loose> directLoose;
    private readonly ImmutableArray<Loose> signalsLoose;
    private readonly Elimination? plan;
    private readonly AcSolver? solver;

    /// <param name="state">A control at any stays open.</param>
    public LooseNetwork(Network network, State state, RunFactors factors)
    {
        circuit = network.Circuit;
        this.factors = factors;
        direct = LiveNetwork.ForDirectCurrent(network, state);
        signals = LiveNetwork.Of(network, state);
        directLoose = [.. direct.Branches.Select(LooseOf)];
        signalsLoose = [.. signals.Branches.Select(LooseOf)];
        plan =
            direct.IsShort || direct.IsOpen
                ? null
                : DcSolver.Plan(direct.NodeCount, direct.Branches.Select(branch => (branch.From, branch.To)));
        solver = AcSolver.Prepare(signals, circuit.Surroundings);
    }

    /// <summary>The factors that something here follows, in order: no other moves a figure.</summary>
    public IEnumerable<int> Followed => FollowedByMeter.Concat(FollowedBySignals).Distinct().Order();

    /// <summary>The factors that a reading may depend on.</summary>
    public IEnumerable<int> FollowedByMeter => directLoose.SelectMany(loose => loose.All).Distinct().Order();

    /// <summary>The factors that what is heard may depend on.</summary>
    public IEnumerable<int> FollowedBySignals => signalsLoose.SelectMany(loose => loose.All).Distinct().Order();

    /// <summary>What an ohmmeter on the plug reads, in ohms; NaN where it reads nothing, or 0.</summary>
    /// <param name="deviations">One for each factor, −1 to 1.</param>
    public double OhmsAt(ReadOnlySpan<double> deviations)
    {
        if (plan is null)
        {
            return double.NaN;
        }

        var edges = new (int, int, double)[direct.Branches.Length];
        for (var i = 0; i < edges.Length; i++)
        {
            var inside = Moved(direct.Branches[i].Inside, directLoose[i], deviations);
            edges[i] = (inside.From, inside.To, inside.Ohms);
        }

        return DcSolver.Solve(plan, edges)[LiveNetwork.Tip];
    }

    /// <summary>What strings sound like over frequency; null where nothing is computed.</summary>
    /// <inheritdoc cref="OhmsAt"/>
    public StringResponse? ResponseAt(ReadOnlySpan<double> deviations) =>
        SolverAt(deviations) is { } moved ? StringResponse.Of(circuit, moved) : null;

    /// <summary>The strings' level in dB over the EMF of one coil, see <see cref="FixedGains.LevelDecibels"/>; NaN where it is not computed.</summary>
    /// <inheritdoc cref="OhmsAt"/>
    public double LevelAt(ReadOnlySpan<double> deviations) =>
        SolverAt(deviations) is { } moved && FixedGains.Of(circuit, moved) is { } gains
            ? gains.LevelDecibels
            : double.NaN;

    private AcSolver? SolverAt(ReadOnlySpan<double> deviations)
    {
        if (solver is null)
        {
            return null;
        }

        var poles = ImmutableArray.CreateBuilder<TwoPole>(signals.Branches.Length);
        for (var i = 0; i < signals.Branches.Length; i++)
        {
            poles.Add(Moved(signals.Branches[i].Inside, signalsLoose[i], deviations));
        }

        return solver.With(poles.MoveToImmutable(), circuit.Surroundings);
    }

    private TwoPole Moved(TwoPole inside, Loose loose, ReadOnlySpan<double> deviations) =>
        inside with
        {
            Ohms =
                inside.Ohms * loose.Copper * Multiplier(loose.Ohms, deviations) * Multiplier(loose.Celsius, deviations),
            Henries = inside.Henries * Multiplier(loose.Henries, deviations),
            Farads = inside.Farads * Multiplier(loose.Farads, deviations),
        };

    private double Multiplier(int? factor, ReadOnlySpan<double> deviations) =>
        factor is { } place ? factors.All[place].MultiplierAt(deviations[place]) : 1;

    private Loose LooseOf(LiveBranch branch)
    {
        var element = circuit.Elements[branch.Source.Element];
        var isCopper = element is Coil or Inductor;
        var day = circuit.Surroundings;
        return new Loose(
            factors.PlaceOf(element, RunQuantity.Ohms),
            factors.PlaceOf(element, RunQuantity.Henries),
            factors.PlaceOf(element, RunQuantity.Farads),
            isCopper ? factors.Copper : null,
            isCopper && factors.Copper is null
                ? Ohmmeter.CopperFactor((day.CoolestCelsius + day.WarmestCelsius) / 2)
                : 1
        );
    }

    /// <summary>Which factors a branch follows, and what its copper does where the temperature is one.</summary>
    private readonly record struct Loose(int? Ohms, int? Henries, int? Farads, int? Celsius, double Copper)
    {
        public IEnumerable<int> All => new[] { Ohms, Henries, Farads, Celsius }.OfType<int>();
    }
}
