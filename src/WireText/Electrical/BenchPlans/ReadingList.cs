using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Studies;

namespace WireText.Electrical.BenchPlans;

/// <summary>
/// What to measure: every position of the switches, then metal and rings to the sleeve, then the dials turned.
/// </summary>
internal sealed class ReadingList
{
    /// <summary>Readings of one plan. Chosen: more than anybody takes of one instrument.</summary>
    internal const int MostReadings = 96;

    /// <summary>Dials turned to see whether they change the reading. Chosen: five positions of eight dials are forty.</summary>
    internal const int MostTurns = 1_000;

    /// <summary>Readings that differ by less than this part of them are the same: the last digit of a meter with 2000 counts.</summary>
    private const double LeastChange = 0.0005;

    private static readonly ImmutableArray<double> Stops = [0, 5, Dial.FullyUp];

    private readonly Study study;
    private readonly CancellationToken cancellation;
    private int turns;

    private ReadingList(Study study, CancellationToken cancellation) =>
        (this.study, this.cancellation) = (study, cancellation);

    /// <summary>The readings, and whether there are no more than were taken.</summary>
    public static (ImmutableArray<BenchReading> Readings, bool IsComplete) Of(
        Study study,
        CancellationToken cancellation
    )
    {
        var list = new ReadingList(study, cancellation);
        ImmutableArray<BenchReading> found = [.. list.All().Take(MostReadings + 1)];
        return found.Length <= MostReadings ? (found, list.turns <= MostTurns) : (found[..MostReadings], false);
    }

    private IEnumerable<BenchReading> All()
    {
        var jacks = study.Jacks.Select(jack => (Jack: jack, Settings: BenchSettings.At(jack))).ToList();
        return jacks
            .SelectMany(one => one.Settings.Select(setting => AtJack(one.Jack, setting)))
            .Concat(Metal())
            .Concat(Rings())
            .Concat(jacks.SelectMany(one => Turned(one.Jack, one.Settings)));
    }

    private BenchReading AtJack(Study jack, State state) => Read(jack.Analyse(state), MeterPoints.OfJack(jack.Circuit));

    private BenchReading Between(MeterPoints points, State state) =>
        Read(study.Rewired(points.SeenIn(study.Circuit)).Analyse(state), points);

    private BenchReading Read(StateAnalysis analysis, MeterPoints points)
    {
        cancellation.ThrowIfCancellationRequested();
        return new BenchReading(points, analysis.State, analysis.Reading, AssumedValues.BearReading(analysis));
    }

    /// <summary>Bare metal, and the sleeves of further jacks, to the sleeve of the first.</summary>
    private IEnumerable<BenchReading> Metal()
    {
        var circuit = study.Circuit;
        var sleeve = circuit.Outputs[0].Sleeve;
        var rest = State.Rest(circuit);
        return circuit
            .Lugs.Where(lug => lug is { IsMetal: true, IsInner: false })
            .Select(lug => lug.Index)
            .Concat(circuit.UsedJacks().Select(jack => jack.Sleeve))
            .Where(lug => lug != sleeve)
            .Distinct()
            .Select(lug => Between(new MeterPoints(lug, sleeve), rest));
    }

    /// <summary>The ring of each jack that something is wired to, to its own sleeve, without a plug where the jack knows such a position.</summary>
    private IEnumerable<BenchReading> Rings()
    {
        var circuit = study.Circuit;
        foreach (var jack in circuit.UsedJacks())
        {
            if (jack.Ring is { } ring && circuit.Nets.Members[circuit.Nets.OneNet[ring]].Length > 1)
            {
                yield return Between(
                    new MeterPoints(ring, jack.Sleeve),
                    BareJack.WithoutPlugs(circuit, State.Rest(circuit))
                );
            }
        }
    }

    /// <summary>
    /// In each setting each dial at the stops where it does not rest, if one of them changes the reading. A dial that changes
    /// none is turned once all the same, where the signal passes it: what it keeps off the signal, such as a shorted capacitor, shows
    /// there alone.
    /// </summary>
    private IEnumerable<BenchReading> Turned(Study jack, ImmutableArray<State> settings)
    {
        var idle = jack.Circuit.Dials.ToList();
        foreach (var setting in settings)
        {
            var rest = AtJack(jack, setting);
            foreach (var dial in jack.Circuit.Dials)
            {
                if (++turns > MostTurns)
                {
                    yield break;
                }

                var turned = At(jack, setting, dial, Stops).ToList();
                if (turned.Exists(reading => Differ(rest.Expected, reading.Expected)))
                {
                    idle.Remove(dial);
                    foreach (var reading in turned)
                    {
                        yield return reading;
                    }
                }
            }
        }

        foreach (var dial in idle)
        {
            if (settings.FirstOrDefault(setting => IsLive(jack, setting, dial)) is not { } live)
            {
                continue;
            }

            foreach (var reading in At(jack, live, dial, [0, Dial.FullyUp]))
            {
                yield return reading;
            }
        }
    }

    /// <summary>True when the signal passes a track of the dial.</summary>
    private static bool IsLive(Study jack, State setting, Dial dial) =>
        LivePart
            .Of(jack.Network, setting)
            .Select(branch => jack.Circuit.Elements[jack.Network.Branches[branch].Element])
            .Any(element => element is Track track && track.Dial == dial.Index);

    private IEnumerable<BenchReading> At(Study jack, State setting, Dial dial, ImmutableArray<double> stops) =>
        stops
            .Where(stop => stop != dial.Rest)
            .Select(stop => AtJack(jack, setting.At(dial, stop)) with { Turned = dial });

    private static bool Differ(Reading? one, Reading? other) =>
        one is not { } a || other is not { } b
            ? one is null != other is null
            : a.Kind != b.Kind
                || (a.Kind == ReadingKind.Value && Math.Abs(a.Ohms - b.Ohms) > LeastChange * Math.Max(a.Ohms, b.Ohms));
}
