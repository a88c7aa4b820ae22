using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Electrical.Faults;
using WireText.Parts;
using WireText.Tests.Output;

namespace WireText.Tests.Diagnosing;

/// <summary>
/// A deck for ngspice with many meters at work at once, each on an instrument of its own: every lug and every run is a node, every
/// joint, spring and closed contact a small resistance. Faults are made in the deck, from their edits, and not by the program.
/// </summary>
internal sealed class FaultDeck(Instrument instrument)
{
    private const double JointOhms = 1e-3;

    private readonly StringBuilder lines = new("meters\n.options rshunt=1e12\n");
    private readonly List<string> probes = [];
    private int meters;
    private int count;

    public void Add(FaultSize fault, State state)
    {
        var right = instrument.Right;
        var joins = right.Joins.Select(join => (join.From, join.To, IsLeftOut: false)).ToArray();
        var shut = new HashSet<(int, int)>();
        foreach (var (control, position) in state.Stated)
        {
            shut.UnionWith(right.Controls[control].Positions[position].Closed.Select(pair => (pair[0], pair[1])));
        }

        var (factors, lifted, tapers) = (
            new Dictionary<int, double>(),
            new HashSet<(int, int)>(),
            new Dictionary<int, Taper>()
        );
        foreach (var edit in fault.Edits)
        {
            switch (edit)
            {
                case FaultEdit.LeaveOut leave:
                    joins[leave.Join].IsLeftOut = true;
                    break;
                case FaultEdit.MoveTo move:
                    joins[move.Join].To = move.Lug;
                    break;
                case FaultEdit.ExchangeNodes exchange:
                    Exchange(joins, exchange.One, exchange.Other, ofRuns: true);
                    break;
                case FaultEdit.ExchangeLugs exchange:
                    Exchange(joins, exchange.One, exchange.Other, ofRuns: false);
                    break;
                case FaultEdit.Bridge bridge:
                    Resistance(bridge.One, bridge.Other, bridge.Ohms ?? JointOhms);
                    break;
                case FaultEdit.Scale scale:
                    factors[scale.Element] = scale.Factor;
                    break;
                case FaultEdit.Law law:
                    tapers[law.Element] = law.Taper;
                    break;
                case FaultEdit.LiftEnd lift:
                    lifted.Add((lift.Element, lift.End));
                    break;
                case FaultEdit.NeverCloses never:
                    shut.Remove(PairOf(never.Leaf));
                    break;
                case FaultEdit.NeverOpens stuck:
                    shut.Add(PairOf(stuck.Leaf));
                    break;
                case FaultEdit.Resists dirty:
                    if (shut.Remove(PairOf(dirty.Leaf)))
                    {
                        Resistance(PairOf(dirty.Leaf).Common, PairOf(dirty.Leaf).Throw, dirty.Ohms);
                    }

                    break;
            }
        }

        foreach (var join in joins.Where(join => !join.IsLeftOut && join.From != join.To))
        {
            Resistance(join.From, join.To, JointOhms);
        }

        foreach (var (one, other) in shut)
        {
            Resistance(one, other, JointOhms);
        }

        foreach (var element in right.Elements)
        {
            Write(
                element,
                state,
                factors.GetValueOrDefault(element.Index, 1),
                lifted,
                tapers.GetValueOrDefault(element.Index)
            );
        }

        var jack = instrument.Jacks[0];
        Resistance(jack.Tip, jack.Sleeve, 1e12);
        Line($"i{count++} 0 {Node(jack.Tip)} dc 1");
        probes.Add(Node(jack.Tip));
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

    private (int Common, int Throw) PairOf(int leaf) => (instrument.Leaves[leaf].Common, instrument.Leaves[leaf].Throw);

    private void Exchange((int From, int To, bool IsLeftOut)[] joins, int one, int other, bool ofRuns)
    {
        foreach (var joint in instrument.Joints)
        {
            var (from, to, isLeftOut) = joins[joint.Join];
            joins[joint.Join] = ofRuns
                ? (
                    from == one ? other
                    : from == other ? one
                    : from,
                    to,
                    isLeftOut
                )
                : (
                    from,
                    to == one ? other
                    : to == other ? one
                    : to,
                    isLeftOut
                );
        }
    }

    private void Write(Element element, State state, double factor, HashSet<(int, int)> lifted, Taper? law)
    {
        var isLifted = lifted.Contains((element.Index, 0)) || lifted.Contains((element.Index, 1));
        switch (element)
        {
            case Coil coil when !isLifted:
                Resistance(coil.Start, coil.Finish, factor * coil.Ohms);
                break;
            case Resistor resistor when !isLifted:
                Resistance(resistor.A, resistor.B, factor * resistor.Ohms);
                break;
            case Track track:
                var share = (law ?? track.Taper).FractionAt(state.Travels[track.Dial]);
                var (low, high) = (factor * share * track.Ohms, factor * (1 - share) * track.Ohms);
                var inside = string.Create(CultureInfo.InvariantCulture, $"m{meters}t{track.Index}");
                Line($"r{count++} {End(track, 0, track.Low, lifted)} {inside} {Math.Max(JointOhms, low):R}");
                Line($"r{count++} {inside} {End(track, 2, track.High, lifted)} {Math.Max(JointOhms, high):R}");
                Line($"r{count++} {inside} {End(track, 1, track.Wiper, lifted)} {JointOhms:R}");
                break;
        }
    }

    /// <summary>The lug of an end, or a loose end of its own.</summary>
    private string End(Track track, int end, int lug, HashSet<(int, int)> lifted) =>
        lifted.Contains((track.Index, end))
            ? string.Create(CultureInfo.InvariantCulture, $"m{meters}t{track.Index}e{end}")
            : Node(lug);

    private void Resistance(int from, int to, double ohms) => Line($"r{count++} {Node(from)} {Node(to)} {ohms:R}");

    private void Line(FormattableString text) => lines.Append(text.ToString(CultureInfo.InvariantCulture)).Append('\n');

    private string Node(int lug) =>
        lug == instrument.Jacks[0].Sleeve ? "0" : string.Create(CultureInfo.InvariantCulture, $"m{meters}l{lug}");
}
