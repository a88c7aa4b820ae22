using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Output;

namespace WireText.Tests.Output;

/// <summary>Our gains beside those that ngspice computes from the netlist that we write.</summary>
internal static class SpiceComparison
{
    /// <summary>The most that a gain may differ, as a fraction of it: 0.01 dB, and no more in phase.</summary>
    public static readonly double Tolerance = Decibels.ToRatio(0.01) - 1;

    /// <summary>Lower levels are not looked at, in dB: −80.</summary>
    public const double LowestLevel = -80;

    /// <summary>How far the worst gain is off, as a fraction of it, and how many gains there were.</summary>
    public readonly record struct Result(double Worst, string Where, int Gains)
    {
        public Result With(Result other) =>
            new(Math.Max(Worst, other.Worst), other.Worst > Worst ? other.Where : Where, Gains + other.Gains);
    }

    /// <summary>All situations at the dial settings that matter: rest, all at 5, each at 0; but where tip and sleeve are joined.</summary>
    public static List<State> StatesOf(Network network) =>
        [
            .. SituationTree
                .Of(network)
                .Situations.SelectMany(situation => DialSettings(network.Circuit).Select(situation.State.At))
                .Where(state => !LiveNetwork.Of(network, state).IsShort),
        ];

    public static Ngspice.Deck DeckOf(Network network, State state)
    {
        var circuit = SpiceWriter.WriteCircuit(Study.Of(network), state);
        var sources = network
            .Circuit.Elements.OfType<Coil>()
            .Select(SourceOf)
            .Where(source => circuit.Contains($"\n{source} ", StringComparison.Ordinal));
        return new Ngspice.Deck(circuit, "out_tip", [.. sources]);
    }

    /// <summary>Every gain of every coil, and their sum with its signs: the response.</summary>
    /// <param name="ours">The network that we solve.</param>
    /// <param name="referee">For each source of the deck, what ngspice gave.</param>
    public static Result Compare(
        Network ours,
        State state,
        Ngspice.Deck deck,
        IReadOnlyList<(double Hertz, Complex Volts)[]> referee
    )
    {
        var live = LiveNetwork.Of(ours, state);
        var coils = ours.Circuit.Elements.OfType<Coil>().ToList();
        var result = new Result(0, "", 0);
        for (var source = 0; source < deck.Sources.Count; source++)
        {
            var coil = coils.Single(coil => SourceOf(coil) == deck.Sources[source]);
            var hertz = referee[source].Select(point => point.Hertz).ToArray();
            var gains = GainsOf(ours, live, coil, hertz);
            result = result.With(Compare(coil.Name, gains, referee[source]));
        }

        return deck.Sources.Count == 0 ? result : result.With(CompareResponse(ours, live, coils, deck, referee));
    }

    private static Result CompareResponse(
        Network ours,
        LiveNetwork live,
        List<Coil> coils,
        Ngspice.Deck deck,
        IReadOnlyList<(double Hertz, Complex Volts)[]> referee
    )
    {
        var hertz = referee[0].Select(point => point.Hertz).ToArray();
        var levels =
            StringResponse.Of(ours.Circuit, live)?.At(hertz)?.ToArray() ?? [.. hertz.Select(_ => Complex.Zero)];
        var sums = hertz.Select((at, f) => (at, Sum(f))).ToArray();
        return Compare("response", levels, sums);

        // The deck turns a reversed coil's drive by 180° itself, and gives a coil without a magnet none.
        Complex Sum(int f)
        {
            var sum = Complex.Zero;
            for (var source = 0; source < deck.Sources.Count; source++)
            {
                var coil = coils.Single(coil => SourceOf(coil) == deck.Sources[source]);
                sum += coil.HearsStrings ? referee[source][f].Volts : Complex.Zero;
            }

            return sum;
        }
    }

    private static Complex[] GainsOf(Network network, LiveNetwork live, Coil coil, double[] hertz)
    {
        var sign = CoilSigns.Strings(coil) < 0 ? -1 : 1;
        var answer = AcSolver.Prepare(live, network.Circuit.Surroundings)?.Solve(hertz);
        var place = answer?.Coils.IndexOf(coil.Index) ?? -1;
        return [.. hertz.Select((_, f) => place < 0 ? Complex.Zero : sign * answer!.GainAt(place, f))];
    }

    private static Result Compare(string name, Complex[] ours, (double Hertz, Complex Volts)[] theirs)
    {
        var (worst, where) = (0.0, "");
        for (var f = 0; f < ours.Length; f++)
        {
            var (hertz, volts) = theirs[f];
            if (Decibels.Of(volts.Magnitude) <= LowestLevel && Decibels.Of(ours[f].Magnitude) <= LowestLevel)
            {
                continue;
            }

            var error = (ours[f] - volts).Magnitude / volts.Magnitude;
            if (!(error <= worst))
            {
                (worst, where) = (error, $"{name} at {hertz} Hz: {ours[f]}, ngspice {volts}");
            }
        }

        return new Result(worst, where, ours.Length);
    }

    private static string SourceOf(Coil coil) =>
        "v_" + coil.Name.Replace('.', '_').Replace('-', '_').ToLowerInvariant();

    private static IEnumerable<ImmutableArray<double>> DialSettings(Circuit circuit)
    {
        var rest = State.Rest(circuit);
        yield return rest.Travels;
        yield return rest.AtAll(5).Travels;
        foreach (var dial in circuit.Dials)
        {
            yield return rest.At(dial, 0).Travels;
        }
    }
}
