using WireText.Circuits;
using WireText.Diagnosing;
using WireText.Quantities;
using WireText.Testing;
using WireText.Tests.Output;

namespace WireText.Tests.Diagnosing;

/// <summary>ngspice as referee of what faults show: ten in each of two examples, every position and every dial at 0 and at 5.</summary>
public class FaultSpiceTests
{
    private const int FaultsTried = 10;

    [SkippableTheory]
    [InlineData("2-two-pickups-mute.wiring")]
    [InlineData("6-series-phase.wiring")]
    public void TenFaults_ShowAtThePlugWhatNgspiceShows(string example)
    {
        Ngspice.SkipWhereAbsent();

        var path = Repository.Examples.Single(one => one.EndsWith(example, StringComparison.Ordinal));
        var one = new DiagnosisCase(example, File.ReadAllText(path));
        var forecast = Forecast.Of(one.Instrument);
        var kinds = one.Faults.Where(fault => !fault.IsInLead).GroupBy(fault => fault.Kind).ToList();
        var tried = Enumerable
            .Range(0, FaultsTried)
            .Select(at => kinds[at * kinds.Count / FaultsTried])
            .Select(same => same.ElementAt(same.Count() / 2))
            .ToList();
        var states = MeasurementList
            .Positions(one.Circuit)
            .SelectMany(state =>
                one.Circuit.Dials.SelectMany(dial => new[] { state.At(dial, 0), state.At(dial, 5) }).Prepend(state)
            )
            .ToList();
        var deck = new FaultDeck(one.Instrument);
        foreach (var fault in tried)
        {
            foreach (var state in states)
            {
                deck.Add(one.SizeOf(fault), state);
            }
        }

        var shown = deck.Read().Chunk(states.Count).ToList();
        var jack = one.Circuit.Outputs[0].Part;
        for (var at = 0; at < tried.Count; at++)
        {
            for (var i = 0; i < states.Count; i++)
            {
                var foretold = forecast.With(
                    tried[at],
                    one.SizeOf(tried[at]),
                    new Measurement(new FoundAtPlug(jack, states[i], null), IsByEar: false)
                );
                AssertSame(tried[at].Words, FoundLines.Reading(shown[at][i], figures: 5), foretold);
            }
        }
    }

    /// <summary>What is foretold has three figures.</summary>
    private static void AssertSame(string fault, string shown, string foretold)
    {
        if (shown is "0" or "open" || foretold is "0" or "open")
        {
            Assert.Equal($"{fault}: {shown}", $"{fault}: {foretold}");
            return;
        }

        var (ohms, about) = (OhmsOf(shown), OhmsOf(foretold));
        Assert.True(Math.Abs(ohms - about) <= 0.006 * ohms, $"{fault}: {shown}, foretold {foretold}");
    }

    private static double OhmsOf(string text) => ValueReader.Read(text, ValueUse.MeterReading).Value!.Value;
}
