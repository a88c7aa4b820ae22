using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Tests.Output;

namespace WireText.Tests.Judging;

/// <summary>
/// A deck for ngspice in which every lug is a node of its own and every joint and closed contact a small resistance: nothing
/// is joined beforehand, so it also tells whether the joining was right. Which amplifiers work is not asked of ngspice.
/// </summary>
internal sealed class LugDeck
{
    /// <summary>A joint, a contact, a wiper at the end of its track.</summary>
    private const double JointOhms = 1e-3;

    /// <summary>Gives lugs that hang a potential at direct current, which ngspice asks for.</summary>
    private const double StrayOhms = 1e12;

    private const string JackSource = "i_jack";

    private readonly Circuit circuit;
    private readonly BenchSetting setting;
    private readonly StringBuilder lines = new();
    private int count;

    private LugDeck(Circuit circuit, BenchSetting setting) => (this.circuit, this.setting) = (circuit, setting);

    /// <summary>Its sources are the coils in order of declaration, 1 V each, and then 1 A into the tip.</summary>
    public static Ngspice.Deck Of(Circuit circuit, BenchSetting setting)
    {
        var deck = new LugDeck(circuit, setting);
        deck.Write();
        var coils = circuit.Elements.OfType<Coil>().Select(coil => $"v_{coil.Index}");
        return new Ngspice.Deck(deck.lines.ToString(), deck.Node(circuit.Outputs[0].Tip), [.. coils, JackSource]);
    }

    private void Write()
    {
        Line($"every lug a node\n.options rshunt={StrayOhms:R}");
        foreach (var (from, to) in circuit.Joins.Select(join => (join.From, join.To)).Concat(Closed()))
        {
            Resistance(from, to, JointOhms);
        }

        foreach (var element in circuit.Elements)
        {
            Write(element);
        }

        var tip = Node(circuit.Outputs[0].Tip);
        Line($"r_input {tip} 0 {circuit.Surroundings.InputOhms:R}");
        Line($"c_cable {tip} 0 {circuit.Surroundings.CableFarads:R}");
        Line($"{JackSource} 0 {tip} dc 0 ac 0");
    }

    private IEnumerable<(int From, int To)> Closed() =>
        from control in circuit.Controls
        from closed in control.Positions[setting.Positions[control.Index]].Closed
        from pair in closed.Zip(closed.Skip(1))
        select pair;

    private void Write(Element element)
    {
        switch (element)
        {
            case Coil { IsEddyInside: false } coil:
                Write(coil);
                break;
            case Track track:
                Write(track);
                break;
            case Resistor resistor:
                Resistance(resistor.A, resistor.B, resistor.Ohms);
                break;
            case Capacitor capacitor:
                Capacitance(capacitor.A, capacitor.B, capacitor.Farads);
                break;
            case Battery battery:
                Resistance(battery.Plus, battery.Minus, battery.Ohms);
                break;
            case Amplifier amplifier:
                Write(amplifier);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(element), element, "no deck has such a part");
        }
    }

    private void Write(Coil coil)
    {
        var (name, start, finish) = (coil.Index, Node(coil.Start), Node(coil.Finish));
        Line($"v_{name} emf{name} {start} dc 0 ac 0");
        Line($"r_{name} emf{name} dcr{name} {coil.Ohms:R}");
        Line($"l_{name} dcr{name} {finish} {coil.Henries:R}");
        Capacitance(coil.Start, coil.Finish, coil.Farads);
        if (coil.EddyOhms is { } eddy)
        {
            Resistance(coil.Start, coil.Finish, eddy);
        }
    }

    private void Write(Track track)
    {
        var travel = setting.Travels[track.Dial];
        var share = track.Taper.FractionAt(travel);
        var isFree = track.FreeAt is { } end && Math.Abs(travel - end) < 1e-9;
        if (!isFree)
        {
            Resistance(track.Low, track.Wiper, Math.Max(JointOhms, share * track.Ohms));
        }

        Resistance(track.Wiper, track.High, isFree ? JointOhms : Math.Max(JointOhms, (1 - share) * track.Ohms));
    }

    private void Write(Amplifier amplifier)
    {
        var (name, input, common) = (amplifier.Index, Node(amplifier.In), Node(amplifier.Common));
        Resistance(amplifier.In, amplifier.Common, amplifier.InputOhms);
        if (SupplyBench.PoweredAmplifiers(circuit, setting).Contains(name))
        {
            Line($"e_{name} stage{name} {common} {input} {common} {amplifier.Gain:R}");
            Line($"r_out{name} stage{name} {Node(amplifier.Out)} {amplifier.OutputOhms:R}");
        }
    }

    private void Resistance(int from, int to, double ohms) => Line($"r{count++} {Node(from)} {Node(to)} {ohms:R}");

    private void Capacitance(int from, int to, double farads) => Line($"c{count++} {Node(from)} {Node(to)} {farads:R}");

    private void Line(FormattableString text) => lines.Append(text.ToString(CultureInfo.InvariantCulture)).Append('\n');

    private string Node(int lug) =>
        lug == circuit.Outputs[0].Sleeve ? "0" : string.Create(CultureInfo.InvariantCulture, $"lug{lug}");
}
