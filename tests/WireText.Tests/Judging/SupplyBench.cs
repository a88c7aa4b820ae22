using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;

namespace WireText.Tests.Judging;

/// <summary>What the batteries do at a setting.</summary>
internal static class SupplyBench
{
    /// <summary>What a supply lug draws, as a resistance: its current at this many volts. Chosen: the usual block.</summary>
    private const double UsualVolts = 9;

    /// <summary>
    /// The amplifiers that work, as indices of elements: metal, contacts and batteries alone lead from the common to the
    /// supply, and it is plus. One without a supply lug always works.
    /// </summary>
    public static HashSet<int> PoweredAmplifiers(Circuit circuit, BenchSetting setting)
    {
        var pieces = new Lazy<MetalPieces>(() => MetalPieces.InContact(circuit, setting));
        return
        [
            .. circuit
                .Elements.OfType<Amplifier>()
                .Where(amplifier =>
                    amplifier.Supply is not { } supply || VoltsAt(circuit, pieces.Value, supply, amplifier.Common) > 0
                )
                .Select(amplifier => amplifier.Index),
        ];
    }

    /// <summary>The current out of each battery in amperes, nothing on the jack, amplifiers idle.</summary>
    public static ImmutableArray<double> Currents(Circuit circuit, BenchSetting setting)
    {
        var batteries = circuit.Elements.OfType<Battery>().ToList();
        if (batteries.Count == 0)
        {
            return [];
        }

        var nodes = MetalPieces.AtTheDials(circuit, setting);
        var conductors = circuit.Elements.SelectMany(element => Conductors(element, setting)).ToList();
        var equations = new NodalEquations(Rows(circuit, nodes, conductors));
        foreach (var (from, to, ohms) in conductors)
        {
            equations.Join(nodes[from], nodes[to], 1 / ohms);
        }

        var drives = batteries
            .Select(battery => (nodes[battery.Minus], nodes[battery.Plus], (Complex)(battery.Volts / battery.Ohms)))
            .ToList();
        var answers = equations.Solve(drives);
        return
        [
            .. batteries.Select(battery =>
                (battery.Volts - answers.Sum(volts => (volts[nodes[battery.Plus]] - volts[nodes[battery.Minus]]).Real))
                / battery.Ohms
            ),
        ];
    }

    private static double VoltsAt(Circuit circuit, MetalPieces pieces, int supply, int common)
    {
        var volts = new Dictionary<int, double> { [pieces[common]] = 0 };
        for (var count = 0; count < volts.Count; )
        {
            count = volts.Count;
            foreach (var battery in circuit.Elements.OfType<Battery>())
            {
                var (plus, minus) = (pieces[battery.Plus], pieces[battery.Minus]);
                if (volts.TryGetValue(minus, out var low))
                {
                    volts.TryAdd(plus, low + battery.Volts);
                }
                else if (volts.TryGetValue(plus, out var high))
                {
                    volts.Add(minus, high - battery.Volts);
                }
            }
        }

        return volts.GetValueOrDefault(pieces[supply]);
    }

    /// <summary>What takes a direct current.</summary>
    private static IEnumerable<(int From, int To, double Ohms)> Conductors(Element element, BenchSetting setting) =>
        element switch
        {
            Coil coil => [(coil.Start, coil.Finish, coil.Ohms)],
            Track track => MetalPieces.Sections(track, setting),
            Resistor resistor => [(resistor.A, resistor.B, resistor.Ohms)],
            Inductor choke => [(choke.A, choke.B, choke.Ohms)],
            Battery battery => [(battery.Plus, battery.Minus, battery.Ohms)],
            Amplifier { Supply: { } supply } amplifier =>
            [
                (amplifier.In, amplifier.Common, amplifier.InputOhms),
                (supply, amplifier.Common, UsualVolts / amplifier.DrawAmperes),
            ],
            Amplifier amplifier => [(amplifier.In, amplifier.Common, amplifier.InputOhms)],
            _ => [],
        };

    /// <summary>A row for each node that a current can reach, but one of each island.</summary>
    private static int[] Rows(Circuit circuit, MetalPieces nodes, List<(int From, int To, double Ohms)> conductors)
    {
        var beside = conductors
            .SelectMany(wire => new[] { (nodes[wire.From], nodes[wire.To]), (nodes[wire.To], nodes[wire.From]) })
            .ToLookup(pair => pair.Item1, pair => pair.Item2);
        var rows = new int[circuit.Lugs.Length];
        var (next, seen) = (0, new HashSet<int>());
        for (var lug = 0; lug < rows.Length; lug++)
        {
            rows[lug] = -1;
        }

        for (var lug = 0; lug < rows.Length; lug++)
        {
            if (nodes[lug] != lug || !seen.Add(lug))
            {
                continue;
            }

            var open = new Stack<int>(beside[lug]);
            while (open.TryPop(out var node))
            {
                if (seen.Add(node))
                {
                    rows[node] = next++;
                    foreach (var other in beside[node])
                    {
                        open.Push(other);
                    }
                }
            }
        }

        return rows;
    }
}
