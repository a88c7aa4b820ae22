using System.Globalization;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Building;

/// <summary>Finds wires whose stated length does not reach from end to end.</summary>
public sealed class WireTooShort : ICheck
{
    private const double MillimetresPerMetre = 1000;

    public CheckDescription Description { get; } =
        new(
            Id: "wire-too-short",
            Title: "a wire is shorter than its way",
            Severity: Severity.Warning,
            Group: FindingGroup.Building,
            Why: """
            Where the places of both parts and the length of the wire are given, the wire must at least reach straight from
            lug to lug. It needs more than that in fact: room to strip both ends, and a bend to serve the joint once more.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            place  vol at 0,0
            place  out at 80,20
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   [|vol.2 to out.tip|] white length=60mm
            wire   vol.case to out.sleeve black length=100mm
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            place  vol at 0,0
            place  out at 80,20
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white length=100mm
            wire   vol.case to out.sleeve black length=100mm
            """,
            Mend: "Cut a longer wire, or mend the length or the place that is given."
        );

    public IEnumerable<Finding> Find(CheckContext context) =>
        from run in context
            .Circuit.Wires.Where(wire => wire is { LengthMetres: not null, From: >= 0, To: >= 0 })
            .GroupBy(wire => wire.Run)
        let length = run.First().LengthMetres!.Value * MillimetresPerMetre
        let way = run.Sum(wire => WayOf(context.Circuit, wire))
        where length < way
        select Report(context, [.. run], length, way);

    /// <summary>Straight from end to end, in millimetres; 0 where a place is not given.</summary>
    private static double WayOf(Circuit circuit, Wire wire) =>
        (LugSpot.Of(circuit, wire.From), LugSpot.Of(circuit, wire.To)) is ({ } from, { } to)
            ? LugSpot.Distance(from, to)
            : 0;

    private Finding Report(CheckContext context, List<Wire> run, double length, double way)
    {
        var (first, last) = (run[0], run[^1]);
        return Description.At(
            first.DeclaredAt.To(last.DeclaredAt),
            string.Create(
                CultureInfo.InvariantCulture,
                $"the wire is {length:0.#} mm long; its lugs are {way:0.#} mm apart"
            ),
            string.Create(CultureInfo.InvariantCulture, $"cut it longer than {Math.Ceiling(way):0} mm"),
            [.. run.SelectMany(wire => new[] { wire.From, wire.To }).Distinct().Select(context.Subject)]
        );
    }
}
