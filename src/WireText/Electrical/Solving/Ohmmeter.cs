using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Electrical.Solving;

/// <summary>A meter on the plug, cable bare, batteries out.</summary>
public static class Ohmmeter
{
    /// <summary>How far a coil's or a choke's resistance may be off when nothing is said (common practice).</summary>
    public const double CoilTolerance = 0.05;

    /// <summary>How far a pot may be off when nothing is said: ±20 % is usual for panel pots (common practice).</summary>
    public const double PotTolerance = 0.20;

    /// <summary>How far a resistor may be off when nothing is said: the ±5 % of the E24 series, IEC 60063.</summary>
    public const double ResistorTolerance = 0.05;

    private const double ReferenceCelsius = 20;

    /// <summary>The reading of a state; null when the network is too large to solve.</summary>
    /// <param name="state">A control at any stays open.</param>
    public static Reading? Read(Network network, State state)
    {
        var reading = ReadOnce(network, state);
        if (
            reading is not { Kind: ReadingKind.Value } known
            || TurnedUnknown(network, state) is not { Count: > 0 } tracks
        )
        {
            return reading;
        }

        // The reading neither rises nor falls all along a track: each taper that has a name is tried on all of them.
        foreach (var taper in Taper.Named)
        {
            var circuit = network.Circuit;
            var elements = tracks.Aggregate(
                circuit.Elements,
                (all, track) => all.SetItem(track.Index, track with { Taper = taper })
            );
            if (Network.Of(circuit with { Elements = elements }) is { } other && ReadOnce(other, state) is { } tried)
            {
                known = known with
                {
                    Least = Math.Min(known.Least, tried.Least),
                    Most = Math.Max(known.Most, tried.Most),
                    IsInDoubt = true,
                };
            }
        }

        return known;
    }

    /// <summary>The live tracks of unknown taper whose dials stand between their ends.</summary>
    private static List<Track> TurnedUnknown(Network network, State state) =>
        network.Circuit.Elements.Any(element => element is Track { IsTaperUnknown: true })
            ?
            [
                .. LiveNetwork
                    .ForDirectCurrent(network, state)
                    .Branches.Select(branch => network.Circuit.Elements[branch.Source.Element])
                    .OfType<Track>()
                    .Where(track => track.IsTaperUnknown && state.Travels[track.Dial] is > 0 and < Dial.FullyUp)
                    .Distinct(),
            ]
            : [];

    private static Reading? ReadOnce(Network network, State state)
    {
        var live = LiveNetwork.ForDirectCurrent(network, state);
        if (live.IsShort)
        {
            return Reading.Joined;
        }

        if (live.IsOpen)
        {
            return Reading.None;
        }

        var day = network.Circuit.Surroundings;
        var middle = (day.CoolestCelsius + day.WarmestCelsius) / 2;
        var nominal = Solve(network.Circuit, live, middle, 0);
        var least = Solve(network.Circuit, live, day.CoolestCelsius, -1);
        var most = Solve(network.Circuit, live, day.WarmestCelsius, +1);
        return nominal is { } ohms && least is { } low && most is { } high
            ? new Reading(ReadingKind.Value, ohms, low, high)
            {
                IsInDoubt = live.Branches.Any(branch =>
                    network.Circuit.Elements[branch.Source.Element].Doubt is not null
                ),
            }
            : null;
    }

    /// <summary>What copper reads at a temperature, as a multiple of its resistance at 20 °C.</summary>
    public static double CopperFactor(double celsius) =>
        1 + (CopperWire.TemperatureCoefficient * (celsius - ReferenceCelsius));

    private static double? Solve(Circuit circuit, LiveNetwork live, double celsius, int side)
    {
        var edges = live
            .Branches.Select(branch =>
                (
                    branch.From,
                    branch.To,
                    branch.Inside.Ohms * Factor(circuit.Elements[branch.Source.Element], celsius, side)
                )
            )
            .ToList();
        return DcSolver.Solve(live.NodeCount, edges)?[LiveNetwork.Tip];
    }

    private static double OhmsOf(Element element) =>
        element switch
        {
            Track track => track.Ohms,
            Resistor resistor => resistor.Ohms,
            _ => throw new ArgumentException("it has no resistance of its own", nameof(element)),
        };

    private static double Factor(Element element, double celsius, int side)
    {
        var copper = element is Coil or Inductor ? CopperFactor(celsius) : 1;
        return copper
            * (
                side != 0 && element is Track or Resistor && element.Doubt is { } doubt
                    ? (side < 0 ? doubt.Least : doubt.Most) / OhmsOf(element)
                    : 1 + (side * ValueTolerance.OfOhms(element))
            );
    }
}
