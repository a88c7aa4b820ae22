using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks.Values;

/// <summary>A pole of a switch that chooses between capacitors: most of its throws lead to capacitors and to nothing else.</summary>
/// <param name="Common">The lug that each position joins with a throw of its own.</param>
/// <param name="Throws">In the order of the positions.</param>
internal sealed record CapacitorRow(Control Control, int Common, ImmutableArray<CapacitorRow.Throw> Throws)
{
    /// <summary>Fewer capacitors are no row.</summary>
    private const int Least = 2;

    /// <summary>Every capacitor that hangs on a throw, in the order of the throws.</summary>
    public IEnumerable<Hanging> Capacitors =>
        Throws.SelectMany(one => one.Capacitors, (one, capacitor) => new Hanging(one, capacitor));

    public static IEnumerable<CapacitorRow> Of(Circuit circuit) =>
        from control in circuit.Controls
        where !control.IsPlug
        from row in Poles(circuit, control)
        where row.Capacitors.Count() >= Least && row.Throws.Count(one => one.Capacitors.Length > 0) >= Least
        select row;

    /// <summary>Poles whose throws each belong to one position.</summary>
    private static IEnumerable<CapacitorRow> Poles(Circuit circuit, Control control)
    {
        var pairs = control
            .Positions.SelectMany(position => position.Closed)
            .Where(group => group.Length == 2)
            .ToList();
        var times = pairs.SelectMany(pair => pair).CountBy(lug => lug).ToDictionary();
        return from pair in pairs
            let common = times[pair[0]] > 1 ? pair[0] : pair[1]
            let other = common == pair[0] ? pair[1] : pair[0]
            where times[common] > 1 && times[other] == 1
            group other by common into pole
            select new CapacitorRow(
                control,
                pole.Key,
                [.. pole.Select(lug => new Throw(lug, CapacitorsOn(circuit, lug)))]
            );
    }

    /// <summary>None where something else is on the throw too: then it chooses between other things.</summary>
    private static ImmutableArray<Capacitor> CapacitorsOn(Circuit circuit, int lug)
    {
        var net = circuit.Nets.OneNet[lug];
        var elements = circuit
            .Elements.Where(element => element.Ends.Any(end => circuit.Nets.OneNet[end] == net))
            .ToList();
        return elements.TrueForAll(element => element is Capacitor)
            ?
            [
                .. elements
                    .OfType<Capacitor>()
                    .Where(capacitor => circuit.Nets.OneNet[capacitor.A] != circuit.Nets.OneNet[capacitor.B]),
            ]
            : [];
    }

    /// <param name="Capacitors">None where the throw leads to something else, or to nothing.</param>
    public readonly record struct Throw(int Lug, ImmutableArray<Capacitor> Capacitors);

    /// <summary>A capacitor on a throw.</summary>
    public readonly record struct Hanging(Throw On, Capacitor Capacitor)
    {
        /// <summary>Its lead that is not on the throw.</summary>
        public int FarLead(Circuit circuit) => circuit.Nets.SameNet(Capacitor.A, On.Lug) ? Capacitor.B : Capacitor.A;
    }
}
