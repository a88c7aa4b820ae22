using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;

namespace WireText.Output;

/// <summary>Writes a state of a circuit as a netlist that ngspice runs as it is.</summary>
/// <remarks>
/// What solder, closed contacts and zero track sections join is one node, so there are no tiny resistances. Everything that
/// hangs on the sleeve somehow is in, also what the jack does not hear; only what floats is left out. A node is named by the
/// first of its lugs, <c>vol_3</c>, so that any joint can be probed.
/// </remarks>
public static class SpiceWriter
{
    /// <summary>Less than this is rounding: a coil drives 1 V, and double precision keeps 16 digits.</summary>
    private const double LeastVolts = 1e-12;

    private const string Sweep = "dec 133 20 20000";

    /// <summary>
    /// The whole deck: the circuit, an AC sweep with every string coil driven, and the level at the tip as a table in
    /// <c>response.txt</c>. Where tip and sleeve are joined there is nothing to sweep, and where nothing
    /// arrives there is no level: the deck says so.
    /// </summary>
    /// <param name="state">A control at any stays open.</param>
    public static string Write(Study study, State state)
    {
        var network = study.Network;
        var names = new SpiceNames(network, state);
        var deck = new StringBuilder();
        deck.Append(WriteCircuit(study, state));
        deck.Append(".control\n");
        if (names.IsShort)
        {
            deck.Append(
                "echo tip and sleeve are joined in this state: there is no level to sweep\nquit\n.endc\n.end\n"
            );
            return deck.ToString();
        }

        deck.Append("set numdgt=15\n");
        deck.Append("set wr_singlescale\n");
        deck.Append(CultureInfo.InvariantCulture, $"ac {Sweep}\n");
        if (study.Analyse(state).Outcome is Outcome.Open or Outcome.Quiet or Outcome.Dead)
        {
            // At the logarithm of 0 ngspice stops, and that of its own rounding says nothing.
            deck.Append(CultureInfo.InvariantCulture, $"if vecmax(mag(v({names.Tip}))) lt {Number(LeastVolts)}\n");
            deck.Append("echo nothing arrives at the jack in this state: there is no level\nquit\nend\n");
        }

        deck.Append(CultureInfo.InvariantCulture, $"let level = db(v({names.Tip}))\n");
        deck.Append("wrdata response.txt level\n");
        deck.Append("quit\n");
        deck.Append(".endc\n");
        deck.Append(".end\n");
        return deck.ToString();
    }

    /// <summary>The circuit alone, for those who add their own analysis: title, elements and load.</summary>
    public static string WriteCircuit(Study study, State state)
    {
        var (circuit, network) = (study.Circuit, study.Network);
        var names = new SpiceNames(network, state);
        var powered = Supply.PoweredAmplifiers(network, state);
        var deck = new StringBuilder();
        deck.Append(CultureInfo.InvariantCulture, $"* {OneLine(circuit.Title ?? "circuit")}\n");
        if (circuit.JackToName() is { } jack)
        {
            deck.Append(CultureInfo.InvariantCulture, $"* seen from {jack}, nothing on the other jacks\n");
        }

        var dials = network.DialsOf(state);
        WriteState(deck, circuit, state);
        names.WriteNodes(deck);
        foreach (var branch in network.Branches)
        {
            var element = circuit.Elements[branch.Element];
            var isOff = branch.Kind == BranchKind.AmplifierOutput && !powered.Contains(branch.Element);
            if (isOff || dials.StateOf(branch) != SectionState.Kept || !names.IsIn(branch))
            {
                continue;
            }

            WriteBranch(deck, element, branch, dials, names);
        }

        var load = circuit.Surroundings;
        deck.Append(CultureInfo.InvariantCulture, $"c_cable {names.Tip} 0 {Number(load.CableFarads)}\n");
        deck.Append(CultureInfo.InvariantCulture, $"r_input {names.Tip} 0 {Number(load.InputOhms)}\n");
        return deck.ToString();
    }

    private static void WriteState(StringBuilder deck, Circuit circuit, State state)
    {
        foreach (var control in circuit.Controls)
        {
            deck.Append(CultureInfo.InvariantCulture, $"* {control.Name}={StateText.PositionOf(control, state)}\n");
        }

        foreach (var element in DoubtVariants.InDoubt(circuit))
        {
            deck.Append(
                CultureInfo.InvariantCulture,
                $"* not known, and taken for what is usual: {DoubtText.Of(element)}\n"
            );
        }

        foreach (var dial in circuit.Dials)
        {
            deck.Append(CultureInfo.InvariantCulture, $"* {dial.Name}={Number(state.Travels[dial.Index])}\n");
        }
    }

    private static void WriteBranch(
        StringBuilder deck,
        Element element,
        Branch branch,
        DialSetting dials,
        SpiceNames names
    )
    {
        var (from, to) = (names.NodeOf(branch.From), names.NodeOf(branch.To));
        var name = names.ElementOf(branch);
        switch (element)
        {
            case Coil coil:
                WriteCoil(deck, coil, name, from, to);
                break;
            case Track track:
                var (low, high) = DialSetting.Sections(track, dials.Travels[track.Dial]);
                Line(deck, $"r_{name} {from} {to}", branch.Kind == BranchKind.TrackLow ? low : high);
                break;
            case Resistor resistor:
                Line(deck, $"r_{name} {from} {to}", resistor.Ohms);
                break;
            case Capacitor capacitor:
                Line(deck, $"c_{name} {from} {to}", capacitor.Farads);
                break;
            case Inductor inductor:
                Line(deck, $"r_{name} {from} {name}__l", inductor.Ohms);
                Line(deck, $"l_{name} {name}__l {to}", inductor.Henries);
                break;
            case Battery battery:
                Line(deck, $"v_{name} {from} {name}__r dc", battery.Volts);
                Line(deck, $"r_{name} {name}__r {to}", battery.Ohms);
                break;
            case Amplifier amplifier when branch.Kind == BranchKind.AmplifierInput:
                Line(deck, $"r_{name}_in {from} {to}", amplifier.InputOhms);
                break;
            case Amplifier amplifier:
                Line(deck, $"e_{name} {name}__o {to} {names.NodeOfLug(amplifier.In)} {to}", amplifier.Gain);
                Line(deck, $"r_{name}_out {name}__o {from}", amplifier.OutputOhms);
                break;
        }
    }

    private static void WriteCoil(StringBuilder deck, Coil coil, string name, string start, string finish)
    {
        var sign = CoilSigns.Strings(coil);
        var drive =
            sign == 0 ? "0"
            : sign > 0 ? "1"
            : "1 180";
        deck.Append(CultureInfo.InvariantCulture, $"v_{name} {name}__e {start} dc 0 ac {drive}\n");
        Line(deck, $"r_{name} {name}__e {name}__l", coil.Ohms);
        Line(deck, $"l_{name} {name}__l {finish}", coil.Henries);
        Line(deck, $"c_{name} {finish} {start}", coil.Farads);
        if (coil.EddyOhms is { } eddy)
        {
            Line(deck, $"r_{name}__eddy {(coil.IsEddyInside ? name + "__l" : start)} {finish}", eddy);
        }
    }

    private static void Line(StringBuilder deck, string head, double value) =>
        deck.Append(CultureInfo.InvariantCulture, $"{head} {Number(value)}\n");

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
