using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Measuring;
using WireText.Testing;
using WireText.Tests.Drawing;
using WireText.Text;

namespace WireText.Tests;

/// <summary>Drawings far larger than any harness, measured from the finished picture alone.</summary>
public class GrownDrawingTests
{
    [Theory]
    [InlineData(40)]
    [InlineData(100)]
    [InlineData(200)]
    [InlineData(400)]
    [InlineData(1000)]
    public void Drawing_OfAGrownCircuit_HasEveryWireAndNoFault(int wires)
    {
        var drawn = Drawn.Of(
            new SourceText("grown.wiring", GrownWiring.Of(wires)),
            new DrawOptions(LayoutEffort.Quick, Theme.Light, null)
        );
        var circuit = drawn.Compiled.Circuit!;

        var measure = Drawings.MeasureOf(drawn);

        Assert.InRange(circuit.Wires.Length, wires, wires + 100);
        Assert.Equal(circuit.Wires.Length, measure.WiresInPicture);
        FaultKind[] judged =
        [
            FaultKind.MissingWire,
            FaultKind.WrongEnd,
            FaultKind.Overlap,
            FaultKind.ThroughBody,
            FaultKind.FalseJoint,
            FaultKind.OutsidePage,
        ];
        Assert.DoesNotContain(measure.Faults, fault => judged.Contains(fault.Kind) && !IsOwn(fault));

        // Opened on all sides, a part lets a wire of its own lugs run along its rim; no other wire may.
        static bool IsOwn(PictureFault fault) =>
            fault is { Kind: FaultKind.ThroughBody, Second: { } part }
            && fault.First.Id.Split("--").Any(end => end.StartsWith(part.Id + ".", StringComparison.Ordinal));
    }
}
