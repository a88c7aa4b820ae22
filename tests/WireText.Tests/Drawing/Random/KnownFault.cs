using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Measuring;

namespace WireText.Tests.Drawing.Random;

/// <summary>A fault that drawings still have: what it is, why, and a small circuit that shows it.</summary>
/// <param name="Holds">Whether a fault is of this sort, and no worse.</param>
internal sealed record KnownFault(string Name, string Why, string Circuit, Func<PictureFault, Circuit, bool> Holds)
{
    public static ImmutableArray<KnownFault> All { get; } =
    [
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
            wire  out.tip  to out.sleeve  green
            wire  out.tip  to out.sleeve  brown
            wire  out.tip  to out.sleeve  orange
            wire  out.tip  to out.sleeve  yellow
            wire  out.tip  to out.sleeve  violet
            wire  out.tip  to out.sleeve  grey
            """,
            (fault, _) => fault.Kind == FaultKind.LabelOverlap && IsFinding(fault)
        )
        {
            IsOfFindings = true,
        },
    ];

    /// <summary>True when it is one of the marks of findings, which the 500 drawings leave out.</summary>
    public bool IsOfFindings { get; private init; }

    /// <summary>The known fault that this one is, or null.</summary>
    public static KnownFault? Of(PictureFault fault, Circuit circuit) =>
        All.FirstOrDefault(known => known.Holds(fault, circuit));

    private static bool IsFinding(PictureFault fault) =>
        fault.First.Kind == ThingKind.Finding || fault.Second?.Kind == ThingKind.Finding;
}
