using WireText.Circuits;
using WireText.Electrical.Faults;
using WireText.Parts;

namespace WireText.Diagnosing;

/// <summary>A reading before it is taken, under one explanation.</summary>
/// <param name="Ohms">With every nuisance at 0.</param>
/// <param name="Slopes">How it depends on the nuisances; empty where it is no value.</param>
internal readonly record struct Foretold(ShownKind Kind, double Ohms, double[] Slopes);

/// <summary>What an ohmmeter shows of an instrument with a fault in it.</summary>
internal sealed class Meter(Instrument instrument, Nuisances nuisances)
{
    /// <summary>The stops of a dial that is turned from end to end, ends with them.</summary>
    private const int Stops = 9;

    private readonly Dictionary<int, double[]> travels = [];

    /// <summary>Networks that were made: a circuit in a state.</summary>
    public int Networks { get; private set; }

    /// <summary>What is read at a place; null where no meter stands there.</summary>
    public Foretold? Foretell(Suspect suspect, FoundPlace place) =>
        place switch
        {
            FoundAtPlug { Turning: { } dial } plug => Turned(suspect, plug, dial),
            FoundAtPlug plug => At(suspect, JackOf(plug).Tip, JackOf(plug).Sleeve, plug.State, turned: null),
            FoundAtMetal metal => At(suspect, instrument.Jacks[0].Sleeve, metal.Metal, metal.State, turned: null),
            FoundBetween between => At(suspect, between.From, between.To, between.State, turned: null),
            FoundAtJoint joint => At(suspect, joint.Lug, OtherSideOf(joint), Middle, turned: null),
            FoundAlone alone when instrument.Right.Elements[alone.Element] is not Capacitor => Alone(
                suspect,
                alone.Element
            ),
            _ => null,
        };

    /// <summary>The jack that a plug is in, as an index into the jacks.</summary>
    public int IndexOf(FoundAtPlug plug)
    {
        for (var jack = 0; jack < instrument.Jacks.Length; jack++)
        {
            if (instrument.Jacks[jack].Jack.Part == plug.Jack)
            {
                return jack;
            }
        }

        return 0;
    }

    /// <summary>Everything at rest, dials at 5: the instrument when it is opened.</summary>
    public State Middle => State.Rest(instrument.Right).AtAll(5);

    private PluggedJack JackOf(FoundAtPlug plug) => instrument.Jacks[IndexOf(plug)];

    private int OtherSideOf(FoundAtJoint joint) =>
        instrument.JointAt(joint.Lug, joint.Wire) is { } found ? instrument.Runs[found.Run].Node : joint.Lug;

    private Foretold At(Suspect suspect, int lug, int other, State state, int? turned)
    {
        var field = suspect.FieldAt(state, out var isNew);
        Networks += isNew ? 1 : 0;
        var shown = field.Between(lug, other);
        return shown.Kind switch
        {
            ShownKind.Value when shown.Ohms > BenchOdds.OpenOhms => new Foretold(
                ShownKind.Open,
                double.PositiveInfinity,
                []
            ),
            ShownKind.Value => new Foretold(
                shown.Kind,
                shown.Ohms,
                nuisances.SlopesOf(field, lug, other, shown.Ohms, suspect.Size, state, turned)
            ),
            _ => new Foretold(shown.Kind, shown.Ohms, []),
        };
    }

    /// <summary>The highest of the stops, and the top of the parabola through the best three.</summary>
    private Foretold Turned(Suspect suspect, FoundAtPlug plug, int dial)
    {
        var jack = JackOf(plug);
        var stops = TravelsOf(dial);
        var read = new Foretold[stops.Length];
        var best = -1;
        for (var stop = 0; stop < stops.Length; stop++)
        {
            var state = plug.State.At(instrument.Right.Dials[dial], stops[stop]);
            read[stop] = At(suspect, jack.Tip, jack.Sleeve, state, dial);
            if (read[stop].Kind == ShownKind.Open)
            {
                return read[stop];
            }

            if (read[stop].Kind == ShownKind.Value && (best < 0 || read[stop].Ohms > read[best].Ohms))
            {
                best = stop;
            }
        }

        if (best < 0)
        {
            return read[0];
        }

        var (before, here, after) = (
            best > 0 ? read[best - 1].Ohms : read[best].Ohms,
            read[best].Ohms,
            best < stops.Length - 1 ? read[best + 1].Ohms : read[best].Ohms
        );
        var bend = before - (2 * here) + after;
        var top =
            best == 0 || best == stops.Length - 1 || bend >= 0
                ? here
                : here - ((after - before) * (after - before) / (8 * bend));
        return read[best] with { Ohms = top };
    }

    /// <summary>Travels at which the dial's first track is divided in equal steps.</summary>
    private double[] TravelsOf(int dial)
    {
        if (!travels.TryGetValue(dial, out var stops))
        {
            var track = instrument.Right.Elements.OfType<Track>().FirstOrDefault(one => one.Dial == dial);
            stops = new double[Stops];
            for (var stop = 0; stop < Stops; stop++)
            {
                stops[stop] = TravelAt(track?.Taper ?? Taper.Linear, (double)stop / (Stops - 1));
            }

            travels.Add(dial, stops);
        }

        return stops;
    }

    private static double TravelAt(Taper taper, double share)
    {
        if (share is 0 or 1)
        {
            return share * Dial.FullyUp;
        }

        var (low, high) = (0.0, Dial.FullyUp);
        for (var step = 0; step < 40; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = taper.FractionAt(middle) < share ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private Foretold Alone(Suspect suspect, int index)
    {
        var element = suspect.Circuit.Elements[index];
        var ohms = element switch
        {
            Coil coil => coil.Ohms,
            Track track => track.Ohms,
            Resistor resistor => resistor.Ohms,
            Inductor inductor => inductor.Ohms,
            _ => double.PositiveInfinity,
        };
        var own = suspect.Faults.Where(one => one.Fault.Element == index).ToList();
        return own.Exists(one => one.Fault.Kind is FaultKind.CoilOpen or FaultKind.ResistorOpen or FaultKind.TrackOpen)
            || double.IsInfinity(ohms)
                ? new Foretold(ShownKind.Open, double.PositiveInfinity, [])
            : own.Exists(one => one.Fault.Kind is FaultKind.CoilShorted or FaultKind.ResistorShorted)
                ? new Foretold(ShownKind.Joined, 0, [])
            : new Foretold(ShownKind.Value, ohms, nuisances.SlopesOf(element, ohms, suspect.Size));
    }
}
