using System.Collections.Immutable;
using WireText.Building;
using WireText.Circuits;
using WireText.Drawing.Layout;

namespace WireText.Sheets;

/// <summary>A wire of the wire list: a run with all of its stretches.</summary>
/// <param name="Number">From 1, in the order of the file.</param>
/// <param name="Lugs">Those that it passes, from its first end to its last; null where a braid is cut back.</param>
/// <param name="IsOwnLead">True for a lead that its part came with: it is cut to fit and not from the roll.</param>
/// <param name="StatedMillimetres">As the file says, or null.</param>
/// <param name="CutMillimetres">See <see cref="CutLength"/>; null where it has to be measured.</param>
/// <param name="Joints">The numbers of its joints.</param>
public sealed record WireRow(
    int Number,
    ImmutableArray<string?> Lugs,
    WireKind Kind,
    string Colour,
    double? Gauge,
    bool IsOwnLead,
    double? StatedMillimetres,
    double? CutMillimetres,
    bool IsSleeved,
    ImmutableArray<int> Joints
)
{
    /// <summary>The wire list of a circuit. The leads of parts that hang by their own are not on it: nobody cuts them from a roll.</summary>
    /// <param name="layout">Null where the circuit is not drawn.</param>
    public static ImmutableArray<WireRow> ListOf(Circuit circuit, WorkOrder order, LayoutResult? layout)
    {
        var lengths = new CutLength(circuit, layout);
        ImmutableArray<ImmutableArray<Wire>> runs =
        [
            .. circuit
                .Wires.Where(wire => wire.Kind != WireKind.PartLead)
                .GroupBy(wire => (wire.Run, wire.Kind))
                .Select(run => run.ToImmutableArray()),
        ];
        return
        [
            .. runs.Select(
                (run, i) =>
                    Of(circuit, order, lengths, run, i + 1) with
                    {
                        TwistedWith = TwistedWithin(circuit, runs, i),
                    }
            ),
        ];
    }

    /// <summary>The numbers of the wires with which it is twisted.</summary>
    public ImmutableArray<int> TwistedWith { get; private init; } = [];

    private static ImmutableArray<int> TwistedWithin(
        Circuit circuit,
        ImmutableArray<ImmutableArray<Wire>> runs,
        int own
    )
    {
        var cores = circuit
            .Cables.Where(cable => cable.IsTwisted && runs[own].Any(wire => cable.Cores.Contains(wire.Index)))
            .SelectMany(cable => cable.Cores)
            .ToHashSet();
        return
        [
            .. Enumerable
                .Range(0, runs.Length)
                .Where(run => run != own && runs[run].Any(wire => cores.Contains(wire.Index)))
                .Select(run => run + 1),
        ];
    }

    /// <summary>True for a wire that the work lays; of a mod the others lie there already.</summary>
    public bool IsLaid { get; private init; }

    /// <summary>What is known of its length, in millimetres: as stated, else computed; null for neither.</summary>
    public double? Millimetres => StatedMillimetres ?? CutMillimetres;

    private static WireRow Of(Circuit circuit, WorkOrder order, CutLength lengths, ImmutableArray<Wire> run, int number)
    {
        const double MillimetresPerMetre = 1000;
        var isOwnLead = run.Any(wire => IsLead(circuit, wire.From) || IsLead(circuit, wire.To));
        return new WireRow(
            number,
            [Name(circuit, run[0].From), .. run.Select(wire => Name(circuit, wire.To))],
            run[0].Kind,
            run[0].Kind == WireKind.Braid ? "" : run[0].Colour?.Name ?? "",
            run[0].Gauge,
            isOwnLead,
            run[0].LengthMetres * MillimetresPerMetre,
            isOwnLead || run[0].Kind != WireKind.Wire ? null : lengths.Of(run),
            run.Any(wire => wire.IsSleeved),
            [.. JointsAlong(order, run)]
        )
        {
            IsLaid = order
                .Steps.OfType<WorkStep.Lay>()
                .Any(step => step.Wires.Any(index => run.Any(wire => wire.Index == index))),
        };
    }

    /// <summary>The numbers of its joints, in the order in which it passes them.</summary>
    private static IEnumerable<int> JointsAlong(WorkOrder order, ImmutableArray<Wire> run) =>
        run.Select(wire => wire.To)
            .Prepend(run[0].From)
            .SelectMany(lug =>
                order.Joints.Where(joint =>
                    joint.Lug == lug && run.Any(wire => wire.Touches(lug) && joint.Wires.Contains(wire.Index))
                )
            )
            .Select(joint => joint.Number)
            .Distinct();

    private static bool IsLead(Circuit circuit, int lug) => lug >= 0 && circuit.Lugs[lug].IsLead;

    private static string? Name(Circuit circuit, int lug) => lug < 0 ? null : circuit.NameOf(lug);
}
