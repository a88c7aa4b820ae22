using WireText.Electrical.Faults;

namespace WireText.Diagnosing;

/// <summary>What each fault of an instrument would show, with every value as stated.</summary>
public sealed class Forecast
{
    private readonly Instrument instrument;
    private readonly Nuisances nuisances;
    private readonly Meter meter;
    private readonly Odds odds;
    private readonly Suspect right;

    private Forecast(Instrument instrument)
    {
        this.instrument = instrument;
        nuisances = new Nuisances(instrument.Right);
        meter = new Meter(instrument, nuisances);
        odds = new Odds(instrument, meter, new Ear(instrument));
        right = new Suspect(instrument, nuisances, 1, []);
    }

    public static Forecast Of(Instrument instrument) => new(instrument);

    /// <summary>What a right instrument shows, as a <c>found</c> line has it.</summary>
    public string Right(Measurement measurement) => Words(right, measurement);

    /// <summary>What it shows with a fault.</summary>
    public string With(Fault fault, FaultSize size, Measurement measurement) =>
        Words(Suspected(fault, size), measurement);

    /// <summary>The measurements of some that show a fault at all: to three figures, by the word, by the ear.</summary>
    public IEnumerable<Measurement> Showing(Fault fault, FaultSize size, IEnumerable<Measurement> measurements)
    {
        var suspect = Suspected(fault, size);
        return measurements.Where(one =>
            !Outlook.Of(suspect, one, meter, odds).IsLike(Outlook.Of(right, one, meter, odds))
        );
    }

    private Suspect Suspected(Fault fault, FaultSize size) => new(instrument, nuisances, 1, [(fault, size)]);

    private string Words(Suspect suspect, Measurement measurement) =>
        OutcomeWords.Of(instrument.Circuit, Outlook.Of(suspect, measurement, meter, odds), measurement.Place);
}
