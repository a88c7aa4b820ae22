using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Electrical;
using Xunit.Abstractions;

namespace WireText.Tests.Output;

/// <summary>ngspice as referee: every gain of every coil, and the response, from the netlist that we write.</summary>
public class SpiceWriterTests(ITestOutputHelper output)
{
    /// <summary>
    /// How many states are compared: situations times dial settings (rest, all at 5, each dial at 0), less those in which a
    /// volume at 0 joins tip and sleeve. A smaller number would mean that something is no longer looked at.
    /// </summary>
    public static TheoryData<string, int> DecksOfExamples =>
        new()
        {
            { "1-one-pickup.wiring", 1 * (3 - 1) },
            { "2-two-pickups-mute.wiring", 3 * (4 - 1) },
            { "3-early-blend.wiring", 3 * (4 - 1) },
            { "4-three-pickups-5way.wiring", 5 * (5 - 1) },
            { "5-bass-two-volumes.wiring", 1 * 5 },
            { "6-series-phase.wiring", 4 * (4 - 1) },
            { "7-active-buffer.wiring", 1 * (4 - 1) },
            // On one pickup the other's pull does nothing: 2 + 4 + 2 situations.
            { "8-twin-coil-cut.wiring", 8 * 6 },
            { "9-four-pole-lever.wiring", 5 * (4 - 1) },
        };

    /// <summary>As they were when they were first compared.</summary>
    private const int DecksOfTheThirtyFive = 117;

    public static TheoryData<string> ExampleNames => Rows.Of(Repository.ExampleNames);

    /// <summary>A wrong stamp, on our side alone.</summary>
    public static TheoryData<string> WrongStamps =>
        [
            "capacitor +1 %",
            "capacitor negative",
            "coil capacitance +1 %",
            "inductance +1 %",
            "winding resistance +1 %",
            "coil reversed",
            "track +1 %",
            "track upside down",
            "cable -1 %",
        ];

    [SkippableTheory]
    [MemberData(nameof(DecksOfExamples))]
    public void Gains_OfEachExampleInEachSituation_AreThoseOfNgspice(string name, int decks)
    {
        Ngspice.SkipWhereAbsent();

        Assert.Equal(decks, Compare(name, [BenchOf(name)]));
    }

    [Fact]
    public void Decks_OfEachExample_AreCounted() => Assert.Equal(Names(ExampleNames), Names(DecksOfExamples));

    private static IEnumerable<string> Names(TheoryData rows) => rows.Select(row => (string)row[0]);

    [SkippableFact]
    public void Gains_OfTheThirtyFiveCircuits_AreThoseOfNgspice()
    {
        Ngspice.SkipWhereAbsent();

        var circuits = Enumerable.Range(1, RightVerdicts.Count).Select(RightVerdicts.Of).ToList();

        Assert.Equal(35, circuits.Count);
        Assert.Equal(DecksOfTheThirtyFive, Compare("the thirty-five circuits", circuits));
    }

    /// <summary>The comparison itself is on trial: it must see each of these.</summary>
    [SkippableTheory]
    [MemberData(nameof(WrongStamps))]
    public void Gains_OfACircuitWithAWrongStamp_AreNotThoseOfNgspice(string wrong)
    {
        Ngspice.SkipWhereAbsent();
        var right = BenchOf("2-two-pickups-mute.wiring").Network;
        var states = SpiceComparison.StatesOf(right);
        var decks = states.ConvertAll(state => SpiceComparison.DeckOf(right, state));
        var referee = Ngspice.Run(decks);

        Assert.True(Worst(right).Worst <= SpiceComparison.Tolerance);
        var seen = Worst(Network.Of(Spoil(right.Circuit, wrong))!);

        output.WriteLine($"{wrong}: {seen.Worst:P2} off, {seen.Where}");
        Assert.True(seen.Worst > SpiceComparison.Tolerance, $"{wrong} is not seen");

        SpiceComparison.Result Worst(Network ours) =>
            states
                .Select((state, i) => SpiceComparison.Compare(ours, state, decks[i], referee[i]))
                .Aggregate((all, one) => all.With(one));
    }

    [SkippableTheory]
    [MemberData(nameof(ExampleNames))]
    public void Deck_OfEachExample_RunsAsItIs(string name)
    {
        Ngspice.SkipWhereAbsent();
        var bench = BenchOf(name);

        var table = Ngspice.RunAsItIs(SpiceWriter.Write(Study.Of(bench.Network), bench.State), "response.txt");

        // ac dec 133 20 20000 gives 400 points.
        Assert.Equal(400, table.Count);
        double[] levels = bench.Decibels([.. table.Select(row => row[0])]);
        for (var i = 0; i < table.Count; i++)
        {
            if (table[i][1] > SpiceComparison.LowestLevel)
            {
                Assert.Equal(table[i][1], levels[i], 0.01);
            }
        }
    }

    /// <summary>Compares all states of some circuits, in one run of ngspice; the number of decks that were run.</summary>
    private int Compare(string name, IReadOnlyList<Bench> circuits)
    {
        var states = circuits
            .SelectMany(bench => SpiceComparison.StatesOf(bench.Network).Select(state => (bench.Network, State: state)))
            .ToList();
        var decks = states.ConvertAll(state => SpiceComparison.DeckOf(state.Network, state.State));

        var referee = Ngspice.Run(decks);

        var all = new SpiceComparison.Result(0, "", 0);
        for (var i = 0; i < states.Count; i++)
        {
            all = all.With(SpiceComparison.Compare(states[i].Network, states[i].State, decks[i], referee[i]));
        }

        output.WriteLine($"{name}: {decks.Count} decks, {all.Gains} values, worst {all.Worst:E1} relative");
        Assert.True(all.Worst <= SpiceComparison.Tolerance, all.Where);
        Assert.NotEqual(0, all.Gains);
        return decks.Count;
    }

    private static Circuit Spoil(Circuit circuit, string wrong) =>
        circuit with
        {
            Elements = [.. circuit.Elements.Select(element => Spoil(element, wrong))],
            Surroundings =
                wrong == "cable -1 %"
                    ? circuit.Surroundings with
                    {
                        CableFarads = circuit.Surroundings.CableFarads * 0.99,
                    }
                    : circuit.Surroundings,
        };

    private static Element Spoil(Element element, string wrong) =>
        (element, wrong) switch
        {
            (Capacitor part, "capacitor +1 %") => part with { Farads = part.Farads * 1.01 },
            (Capacitor part, "capacitor negative") => part with { Farads = -part.Farads },
            (Coil coil, "coil capacitance +1 %") => coil with { Farads = coil.Farads * 1.01 },
            (Coil coil, "inductance +1 %") => coil with { Henries = coil.Henries * 1.01 },
            (Coil coil, "winding resistance +1 %") => coil with { Ohms = coil.Ohms * 1.01 },
            (Coil coil, "coil reversed") => coil with { Start = coil.Finish, Finish = coil.Start },
            (Track track, "track +1 %") => track with { Ohms = track.Ohms * 1.01 },
            (Track track, "track upside down") => track with { Low = track.High, High = track.Low },
            _ => element,
        };

    private static Bench BenchOf(string name) =>
        new(Bench.CompileText(File.ReadAllText(Repository.PathOf("examples", name))));
}
