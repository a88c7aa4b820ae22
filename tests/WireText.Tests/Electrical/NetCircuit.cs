using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Parts;
using WireText.Text;

namespace WireText.Tests.Electrical;

/// <summary>A circuit made from nets alone, for tests of the network: net 0 is the tip, net 1 the sleeve.</summary>
/// <remarks>Each net has two lugs, so that every contact between two nets leads somewhere.</remarks>
internal sealed class NetCircuit(int netCount)
{
    public const int Tip = 0;
    public const int Sleeve = 1;

    private static readonly SourceLocation Nowhere = new(new SourceText("nets", ""), new TextSpan(0, 0));

    private static readonly PartDefinition Definition = new(
        "nets",
        "nets",
        null,
        null,
        [],
        [],
        [],
        [],
        [],
        SwitchOver.BreakBeforeMake,
        false,
        null,
        Nowhere
    );

    private readonly List<Element> elements = [];
    private readonly List<Control> controls = [];
    private readonly List<Dial> dials = [];

    public NetCircuit Coil(int start, int finish, MagnetPole magnet = MagnetPole.North) =>
        Add(i => new Coil(i, 0, $"coil{i}", Lug(start), Lug(finish), 6000, 2.2, 1e-10, null, null, magnet));

    public NetCircuit Resistor(int a, int b) => Add(i => new Resistor(i, 0, $"r{i}", Lug(a), Lug(b), 1000));

    public NetCircuit Capacitor(int a, int b) => Add(i => new Capacitor(i, 0, $"c{i}", Lug(a), Lug(b), 22e-9));

    public NetCircuit Inductor(int a, int b) => Add(i => new Inductor(i, 0, $"l{i}", Lug(a), Lug(b), 1.5, 1));

    public NetCircuit Amplifier(int input, int output, int common) =>
        Add(i => new Amplifier(i, 0, $"amp{i}", Lug(input), Lug(output), Lug(common), 1, 1e6, 470, null, 0.5, 0));

    public NetCircuit Pot(int low, int wiper, int high, double? freeAt = null)
    {
        dials.Add(new Dial(dials.Count, $"pot{dials.Count}", 0, 10));
        return Add(i => new Track(
            i,
            0,
            $"pot{i}",
            Lug(low),
            Lug(wiper),
            Lug(high),
            dials.Count - 1,
            250e3,
            Taper.Linear,
            freeAt
        ));
    }

    /// <summary>A control with the groups of nets that each position joins.</summary>
    public NetCircuit Switch(params int[][][] positions)
    {
        var closed = positions.Select(
            (groups, i) => new Position($"{i + 1}", [.. groups.Select(group => group.Select(Lug).ToImmutableArray())])
        );
        controls.Add(
            new Control(controls.Count, $"s{controls.Count}", 0, [.. closed], 0, SwitchOver.BreakBeforeMake, false)
        );
        return this;
    }

    public Network ToNetwork() => Network.Of(ToCircuit())!;

    public Circuit ToCircuit()
    {
        var lugs = Enumerable
            .Range(0, 2 * netCount)
            .Select(i => new Lug(i, 0, $"x.{i}", new Terminal($"{i}", TerminalKind.Lug, null, false, false)));
        ImmutableArray<int> netOf = [.. Enumerable.Range(0, 2 * netCount).Select(i => i / 2)];
        return new Circuit
        {
            Parts = [new Part(0, "x", Definition, [], [], [], [], null, null, [], null, null, Nowhere)],
            Lugs = [.. lugs],
            Elements = [.. elements],
            Controls = [.. controls],
            Dials = [.. dials],
            Outputs = [new OutputJack(0, Lug(Tip), Lug(Sleeve), null)],
            Nets = new NetMap(
                netOf,
                netOf,
                [.. Enumerable.Range(0, netCount).Select(net => ImmutableArray.Create(2 * net, (2 * net) + 1))]
            ),
        };
    }

    /// <summary>What a failing property prints.</summary>
    public override string ToString() =>
        string.Join(
            "; ",
            [
                .. elements.Select(element => $"{element.GetType().Name} {string.Join(' ', Nets(element.Ends))}"),
                .. controls.Select(control =>
                    "Switch "
                    + string.Join(
                        " | ",
                        control.Positions.Select(p =>
                            string.Join(", ", p.Closed.Select(g => string.Join('+', Nets(g))))
                        )
                    )
                ),
            ]
        );

    private static IEnumerable<int> Nets(IEnumerable<int> lugs) => lugs.Select(lug => lug / 2);

    private static int Lug(int net) => 2 * net;

    private NetCircuit Add(Func<int, Element> make)
    {
        elements.Add(make(elements.Count));
        return this;
    }
}
