using WireText.Drawing.Layout;

namespace WireText.Tests.Drawing.Layout;

/// <summary>What holds of the layout of any problem, however its parts were put.</summary>
internal static class LegalLayout
{
    /// <remarks>Parts that the author put on top of each other may hold lugs and labels that nothing can keep apart.</remarks>
    private static readonly LayoutFaultKind[] Never =
    [
        LayoutFaultKind.Overlap,
        LayoutFaultKind.WrongEnd,
        LayoutFaultKind.ThroughBody,
        LayoutFaultKind.Slanted,
    ];

    public static void Check(LayoutProblem problem, LayoutResult result)
    {
        Assert.Equal(problem.Parts.Length, result.Parts.Length);
        Assert.Equal(problem.Wires.Length, result.Wires.Length + result.Unrouted.Length);
        Assert.DoesNotContain(
            new LayoutMeasure(result, LayoutMeasure.CrowdedPartsSlant).Faults,
            fault => Never.Contains(fault.Kind)
        );
    }
}
