using System.Numerics;
using WireText.Circuits;

namespace WireText.Tests.Judging;

/// <summary>What lies between the nodes of a circuit at a setting, with the cable and the amplifier's input on the jack.</summary>
internal sealed class BenchNetwork
{
    private readonly Circuit circuit;
    private readonly MetalPieces nodes;

    /// <summary>The nodes that elements join, each island with one node that is held at 0 V: the sleeve on its own.</summary>
    private readonly int[] islands;

    private readonly HashSet<int> powered;

    public BenchNetwork(Circuit circuit, BenchSetting setting)
    {
        (this.circuit, Setting) = (circuit, setting);
        nodes = MetalPieces.AtTheDials(circuit, setting);
        powered = SupplyBench.PoweredAmplifiers(circuit, setting);
        islands = IslandsOf(Joined());
    }

    public BenchSetting Setting { get; }

    public IEnumerable<Coil> Coils => circuit.Elements.OfType<Coil>();

    private int Tip => nodes[circuit.Outputs[0].Tip];

    private int Sleeve => nodes[circuit.Outputs[0].Sleeve];

    /// <summary>True when elements lead from the coil to the sleeve.</summary>
    public bool IsHeld(Coil coil) => islands[nodes[coil.Start]] == islands[Sleeve];

    public bool IsShorted(Coil coil) => nodes.AreOne(coil.Start, coil.Finish);

    /// <summary>What the jack gives at a frequency above 0.</summary>
    public JackReading Read(double hertz)
    {
        var (equations, coils) = (Equations(hertz), Coils.ToList());
        List<(int OutOf, int Into, Complex Amperes)> feeds =
        [
            .. coils.Select(coil => (nodes[coil.Start], nodes[coil.Finish], WindingOf(coil, hertz))),
            .. coils.Select(coil => (Sleeve, nodes[coil.Start], Complex.One)),
            (Sleeve, Tip, Complex.One),
        ];
        var atTheJack = equations.Solve(feeds).ConvertAll(volts => volts[Tip] - volts[Sleeve]);
        return new JackReading(
            [.. atTheJack.Take(coils.Count)],
            [.. coils.Select((coil, i) => IsHeld(coil) ? atTheJack[coils.Count + i] : Complex.Zero)],
            atTheJack[^1]
        );
    }

    private NodalEquations Equations(double hertz)
    {
        var equations = new NodalEquations(Rows());
        var omega = new Complex(0, 2 * Math.PI * hertz);
        foreach (var (from, to, siemens) in Admittances(omega))
        {
            equations.Join(nodes[from], nodes[to], siemens);
        }

        foreach (var amplifier in Working())
        {
            // A source of gain times the input, behind the output resistance: as a current beside that resistance.
            var (output, common, siemens) = (nodes[amplifier.Out], nodes[amplifier.Common], 1 / amplifier.OutputOhms);
            equations.Join(output, common, siemens);
            equations.Steer(output, nodes[amplifier.In], common, -amplifier.Gain * siemens);
            equations.Steer(common, nodes[amplifier.In], common, amplifier.Gain * siemens);
        }

        return equations;
    }

    private IEnumerable<(int From, int To, Complex Siemens)> Admittances(Complex omega)
    {
        var (jack, around) = (circuit.Outputs[0], circuit.Surroundings);
        return circuit
            .Elements.SelectMany(element => Admittances(element, omega))
            .Append((jack.Tip, jack.Sleeve, (1 / around.InputOhms) + (omega * around.CableFarads)));
    }

    private IEnumerable<(int From, int To, Complex Siemens)> Admittances(Element element, Complex omega) =>
        element switch
        {
            Coil coil =>
            [
                (coil.Start, coil.Finish, WindingOf(coil, omega)),
                (coil.Start, coil.Finish, (omega * coil.Farads) + AcrossOf(coil)),
            ],
            Track track => MetalPieces
                .Sections(track, Setting)
                .Select(section => (section.From, section.To, (Complex)(1 / section.Ohms))),
            Resistor resistor => [(resistor.A, resistor.B, 1 / resistor.Ohms)],
            Capacitor capacitor => [(capacitor.A, capacitor.B, omega * capacitor.Farads)],
            Inductor choke => [(choke.A, choke.B, 1 / (choke.Ohms + (omega * choke.Henries)))],
            Battery battery => [(battery.Plus, battery.Minus, 1 / battery.Ohms)],
            Amplifier amplifier => [(amplifier.In, amplifier.Common, 1 / amplifier.InputOhms)],
            _ => throw new ArgumentOutOfRangeException(nameof(element), element, "it is not known on the bench"),
        };

    private static double AcrossOf(Coil coil) => coil is { EddyOhms: { } ohms, IsEddyInside: false } ? 1 / ohms : 0;

    private static Complex WindingOf(Coil coil, double hertz) => WindingOf(coil, new Complex(0, 2 * Math.PI * hertz));

    /// <summary>Its resistance and inductance in series, in siemens.</summary>
    private static Complex WindingOf(Coil coil, Complex omega)
    {
        var inductive = omega * coil.Henries;
        return coil is { EddyOhms: { } ohms, IsEddyInside: true }
            ? 1 / (coil.Ohms + (inductive * ohms / (inductive + ohms)))
            : 1 / (coil.Ohms + inductive);
    }

    private IEnumerable<Amplifier> Working() =>
        circuit.Elements.OfType<Amplifier>().Where(amplifier => powered.Contains(amplifier.Index));

    /// <summary>The pairs of nodes that something lies between at any frequency above 0.</summary>
    private IEnumerable<(int From, int To)> Joined() =>
        Admittances(new Complex(0, 1))
            .Select(between => (nodes[between.From], nodes[between.To]))
            .Concat(Working().Select(amplifier => (nodes[amplifier.Out], nodes[amplifier.Common])));

    /// <summary>For each lug that stands for a node, the first lug that stands for a node of its island.</summary>
    private int[] IslandsOf(IEnumerable<(int From, int To)> joined)
    {
        var found = Enumerable.Range(0, circuit.Lugs.Length).ToArray();
        var pairs = joined.ToList();
        for (var isChanged = true; isChanged; )
        {
            isChanged = false;
            foreach (var (from, to) in pairs)
            {
                var first = Math.Min(found[from], found[to]);
                isChanged |= found[from] != found[to];
                (found[from], found[to]) = (first, first);
            }
        }

        return found;
    }

    /// <summary>A row for each node but the one that its island is measured against.</summary>
    private int[] Rows()
    {
        var rows = new int[circuit.Lugs.Length];
        var next = 0;
        for (var lug = 0; lug < rows.Length; lug++)
        {
            var isNode = nodes[lug] == lug;
            var isReference = islands[lug] == islands[Sleeve] ? lug == Sleeve : lug == islands[lug];
            rows[lug] = isNode && !isReference ? next++ : -1;
        }

        return rows;
    }
}
