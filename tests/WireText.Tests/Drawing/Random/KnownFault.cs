using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Tests.Drawing.Random;

/// <summary>A fault that drawings still have: what it is, why, and a small circuit that shows it.</summary>
/// <param name="Holds">Whether a fault is of this sort, and no worse.</param>
internal sealed record KnownFault(string Name, string Why, string Circuit, Func<DrawingFault, Circuit, bool> Holds)
{
    public static ImmutableArray<KnownFault> All { get; } =
    [
        new(
            "A wire enters its own part twice",
            """
            Layout promises that a wire crosses no body but those it ends on. Where the lugs of a part lie inside its outline, or a part
            was opened on all sides because a wire found no way, a wire that ends there may cut a corner of that outline. No wire goes
            through a part on which it does not end.
            """,
            """
            jack   out   stereo
            metal  plate
            wire   plate       to out.tip              black
            wire   out.sleeve  to out.tip to out.ring  red
            wire   out.ring    to out.tip              yellow
            wire   out.ring    to out.tip              white
            """,
            (fault, circuit) =>
                fault.Kind == DrawingFaults.ThroughBody && EndsOn(fault.First, PartOf(fault.Second), circuit)
        ),
        new(
            "Two texts of one part touch",
            """
            The labels of leads and lugs reach into the part's own face; on a narrow one, or turned on its side, there is no room for them
            beside the name or beside each other. Texts of two parts never touch.
            """,
            """
            pickup  neck-pickup  single-coil-cover
            place   neck-pickup  turned 90
            """,
            (fault, _) =>
                fault.Kind == DrawingFaults.LabelOverlap
                && IsText(fault.First)
                && IsText(fault.Second)
                && PartOf(fault.First) == PartOf(fault.Second)
        ),
        new(
            "The number of a finding lies on something",
            """
            Numbers of findings are set last, beside the place that they mark. Where many marks meet on one lug the last ones have no free
            place left. The finding itself stands in words under the drawing.
            """,
            """
            jack  out  mono
            wire  out.tip  to out.sleeve  red
            wire  out.tip  to out.sleeve  black
            wire  out.tip  to out.sleeve  blue
            wire  out.tip  to out.sleeve  white
            """,
            (fault, _) => fault.Kind == DrawingFaults.LabelOverlap && IsFinding(fault)
        )
        {
            IsOfFindings = true,
        },
    ];

    /// <summary>True when it is one of the marks of findings, which the 500 drawings leave out.</summary>
    public bool IsOfFindings { get; private init; }

    /// <summary>The known fault that this one is, or null.</summary>
    public static KnownFault? Of(DrawingFault fault, Circuit circuit) =>
        All.FirstOrDefault(known => known.Holds(fault, circuit));

    private static bool IsFinding(DrawingFault fault) =>
        fault.First.StartsWith("finding:", StringComparison.Ordinal)
        || fault.Second.StartsWith("finding:", StringComparison.Ordinal);

    private static bool IsOverlap(DrawingFault fault, string first, string second) =>
        fault.Kind == DrawingFaults.LabelOverlap
        && fault.First.StartsWith(first, StringComparison.Ordinal)
        && fault.Second.StartsWith(second, StringComparison.Ordinal);

    private static bool IsText(string name) => name.Split(':')[0] is "label" or "name" or "value";

    /// <summary><c>label:sel.A1</c> and <c>part:sel</c> are of <c>sel</c>.</summary>
    private static string PartOf(string name) => name.Split(':')[1].Split('.')[0];

    private static bool EndsOn(string name, string part, Circuit circuit)
    {
        var wire = circuit.Wires.Single(wire => $"wire:{wire.Id}" == name);
        return new[] { wire.From, wire.To }.Any(lug => lug >= 0 && circuit.Parts[circuit.Lugs[lug].Part].Name == part);
    }
}
