using System.Numerics;
using WireText.Circuits;
using WireText.Electrical;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Electrical;
using Xunit.Abstractions;

namespace WireText.Tests.Output;

/// <summary>ngspice as referee: every gain of every coil, from the netlist that we write.</summary>
public class SpiceWriterTests(ITestOutputHelper output)
{
    private const double DecibelTolerance = 0.01;
    private const double LowestLevel = -80;

    public static TheoryData<string> ExampleNames => [.. Repository.Examples.Select(path => Path.GetFileName(path)!)];

    [SkippableTheory]
    [MemberData(nameof(ExampleNames))]
    public void Gains_OfEachExampleInEachSituation_AreThoseOfNgspice(string name)
    {
        Ngspice.SkipWhereAbsent();

        Compare(name, new Bench(Bench.CompileText(File.ReadAllText(Repository.PathOf("examples", name)))));
    }

    [SkippableFact]
    public void Gains_OfTheThirtyFiveCircuits_AreThoseOfNgspice()
    {
        Ngspice.SkipWhereAbsent();

        for (var number = 1; number <= RightVerdicts.Count; number++)
        {
            Compare($"circuit {number}", RightVerdicts.Of(number));
        }
    }

    [SkippableTheory]
    [MemberData(nameof(ExampleNames))]
    public void Deck_OfEachExample_RunsAsItIs(string name)
    {
        Ngspice.SkipWhereAbsent();
        var bench = new Bench(Bench.CompileText(File.ReadAllText(Repository.PathOf("examples", name))));

        var table = Ngspice.RunAsItIs(SpiceWriter.Write(bench.Network, bench.State, bench.Dials), "response.txt");

        // ac dec 133 20 20000 gives 400 points.
        Assert.Equal(400, table.Count);
        double[] levels = bench.Decibels([.. table.Select(row => row[0])]);
        for (var i = 0; i < table.Count; i++)
        {
            if (table[i][1] > LowestLevel)
            {
                Assert.Equal(table[i][1], levels[i], DecibelTolerance);
            }
        }
    }

    /// <summary>All situations at the dial settings that matter: rest, all at 5, each at 0.</summary>
    private void Compare(string name, Bench bench)
    {
        var network = bench.Network;
        var states = SituationTree
            .Of(network)
            .Situations.SelectMany(situation => DialSettings(network).Select(dials => (situation, dials)))
            .Where(state => !LiveNetwork.Of(network, state.situation.Positions.AsSpan(), state.dials).IsShort)
            .ToList();
        var coils = network.Circuit.Elements.OfType<Coil>().ToList();
        var decks = states.ConvertAll(state => DeckOf(network, state.situation, state.dials));

        var referee = Ngspice.Run(decks);

        var (worst, gains) = (0.0, 0);
        for (var i = 0; i < states.Count; i++)
        {
            var live = LiveNetwork.Of(network, states[i].situation.Positions.AsSpan(), states[i].dials);
            for (var source = 0; source < decks[i].Sources.Count; source++)
            {
                var coil = coils.Single(coil => SourceOf(coil) == decks[i].Sources[source]);
                worst = Math.Max(worst, WorstError(live, coil, referee[i][source]));
                gains += referee[i][source].Length;
            }
        }

        output.WriteLine($"{name}: {decks.Count} decks, {gains} gains, worst {worst:E1} relative");
        Assert.NotEqual(0, gains);
    }

    private static double WorstError(LiveNetwork live, Coil coil, (double Hertz, Complex Volts)[] referee)
    {
        var sign = CoilSigns.Strings(coil) < 0 ? -1 : 1;
        var answer = AcSolver.Prepare(live, Surroundings.Usual)?.Solve([.. referee.Select(point => point.Hertz)]);
        var place = answer?.Coils.IndexOf(coil.Index) ?? -1;
        var worst = 0.0;
        for (var f = 0; f < referee.Length; f++)
        {
            var ours = place < 0 ? Complex.Zero : sign * answer!.GainAt(place, f);
            var theirs = referee[f].Volts;
            if (Decibels.Of(theirs.Magnitude) <= LowestLevel && Decibels.Of(ours.Magnitude) <= LowestLevel)
            {
                continue;
            }

            var error = (ours - theirs).Magnitude / theirs.Magnitude;
            Assert.True(
                error <= Decibels.ToRatio(DecibelTolerance) - 1,
                $"{coil.Name} at {referee[f].Hertz} Hz: {ours}, ngspice {theirs}"
            );
            worst = Math.Max(worst, error);
        }

        return worst;
    }

    private static Ngspice.Deck DeckOf(Network network, Situation situation, DialSetting dials)
    {
        var circuit = SpiceWriter.WriteCircuit(network, situation.Positions.AsSpan(), dials);
        var sources = network
            .Circuit.Elements.OfType<Coil>()
            .Select(SourceOf)
            .Where(source => circuit.Contains($"\n{source} ", StringComparison.Ordinal));
        return new Ngspice.Deck(circuit, "out_tip", [.. sources]);
    }

    private static string SourceOf(Coil coil) =>
        "v_" + coil.Name.Replace('.', '_').Replace('-', '_').ToLowerInvariant();

    private static IEnumerable<DialSetting> DialSettings(Network network)
    {
        yield return DialSetting.Rest(network);
        yield return DialSetting.AllAt(network, 5);
        foreach (var dial in network.Circuit.Dials)
        {
            yield return DialSetting.At(
                network,
                [.. network.Circuit.Dials.Select(other => other == dial ? 0 : other.Rest)]
            );
        }
    }
}
