using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Electrical.BenchPlans;
using WireText.Tests.Output;

namespace WireText.Tests.Electrical.BenchPlans;

/// <summary>
/// A deck for ngspice with many meters at work at once, each on an instrument of its own: every lug is a node, every joint and
/// closed contact a small resistance, and 1 A flows from probe to probe. Faults are made in the deck, not by the program.
/// </summary>
internal sealed class MeterDeck
{
    /// <summary>A joint, a contact, a wiper at the end of its track.</summary>
    private const double JointOhms = 1e-3;

    private readonly StringBuilder lines = new("meters\n.options rshunt=1e12\n");
    private readonly List<string> probes = [];
    private int meters;
    private int count;

    /// <summary>Adds a meter on an instrument.</summary>
    /// <param name="fault">Null for a right one.</param>
    /// <param name="side">Values at the low end of their tolerance for −1, as stated for 0, at the high end for 1.</param>
    public void Add(Circuit circuit, BenchReading reading, Fault? fault, int side)
    {
        foreach (var (from, to) in JointsOf(circuit, reading.State, fault))
        {
            Resistance(from, to, JointOhms, reading);
        }

        foreach (var element in circuit.Elements)
        {
            if (fault is ElementOpen open && open.Element == element.Index)
            {
                continue;
            }

            var factor = fault is TrackHalved halved && halved.Element == element.Index ? 0.5 : 1;
            Write(element, reading, factor * (1 + (side * (element.Tolerance ?? Usual(element)))));
        }

        // A lug that nothing touches is no node of ngspice's.
        Resistance(reading.Points.Probe, reading.Points.Reference, 1e12, reading);
        Line($"i{count++} 0 {Node(reading.Points.Probe, reading)} dc 1");
        probes.Add(Node(reading.Points.Probe, reading));
        meters++;
    }

    /// <summary>What each meter shows, in ohms, in the order in which they were added.</summary>
    public double[] Read()
    {
        var script = new StringBuilder(lines.ToString()).Append(".control\nset numdgt=9\nop\n");
        foreach (var probe in probes)
        {
            script.Append(CultureInfo.InvariantCulture, $"print v({probe})\n");
        }

        var shown = Ngspice
            .OutputOf(script.Append("quit\n.endc\n.end\n").ToString())
            .Split('\n')
            .Where(line => line.StartsWith("v(", StringComparison.Ordinal) && line.Contains('='))
            .Select(line => double.Parse(line.Split('=')[1], CultureInfo.InvariantCulture))
            .ToArray();
        Assert.Equal(meters, shown.Length);
        return shown;
    }

    private static double Usual(Element element) =>
        element switch
        {
            Track => 0.20,
            Coil or Inductor or Resistor => 0.05,
            _ => 0,
        };

    private static IEnumerable<(int From, int To)> JointsOf(Circuit circuit, State state, Fault? fault)
    {
        var soldered = circuit
            .Joins.Where(join => fault is not WireLeftOut left || join.Wire != left.Wire)
            .Select(join =>
                fault is WireOnNeighbour on && join.Wire == on.End.Wire
                    ? on.End.IsFrom
                        ? (on.Lug, join.To)
                        : (join.From, on.Lug)
                    : (join.From, join.To)
            );
        var closed =
            from control in circuit.Controls
            from lugs in control.Positions[state[control.Index]!.Value].Closed
            from pair in lugs.Zip(lugs.Skip(1))
            select pair;
        var shorted = fault is ElementShorted across
            ? circuit.Elements[across.Element].Ends.Zip(circuit.Elements[across.Element].Ends.Skip(1))
            : [];
        return [.. soldered, .. closed, .. shorted];
    }

    private void Write(Element element, BenchReading reading, double factor)
    {
        switch (element)
        {
            case Coil coil:
                Resistance(coil.Start, coil.Finish, factor * coil.Ohms, reading);
                break;
            case Resistor resistor:
                Resistance(resistor.A, resistor.B, factor * resistor.Ohms, reading);
                break;
            case Track track:
                var share = track.Taper.FractionAt(reading.State.Travels[track.Dial]);
                Resistance(track.Low, track.Wiper, Math.Max(JointOhms, factor * share * track.Ohms), reading);
                Resistance(track.Wiper, track.High, Math.Max(JointOhms, factor * (1 - share) * track.Ohms), reading);
                break;
            case Capacitor:
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(element), element, "no meter's deck has such a part");
        }
    }

    private void Resistance(int from, int to, double ohms, BenchReading reading) =>
        Line($"r{count++} {Node(from, reading)} {Node(to, reading)} {ohms:R}");

    private void Line(FormattableString text) => lines.Append(text.ToString(CultureInfo.InvariantCulture)).Append('\n');

    private string Node(int lug, BenchReading reading) =>
        lug == reading.Points.Reference ? "0" : string.Create(CultureInfo.InvariantCulture, $"m{meters}l{lug}");
}
