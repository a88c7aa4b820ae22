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
        Assert.Empty(measure.MissingWires);
        Assert.Empty(measure.WrongEnds);
        Assert.Empty(measure.Overlaps);
        Assert.DoesNotContain(measure.ThroughBodies, pair => !IsOwn(pair));
        Assert.Empty(measure.FalseJoints);
        Assert.Empty(measure.OutsidePage);

        // Opened on all sides, a part lets a wire of its own lugs run along its rim; no other wire may.
        bool IsOwn(OffendingPair pair) =>
            pair.First["wire:".Length..]
                .Split("--")
                .Any(end => end.StartsWith(pair.Second["part:".Length..] + ".", StringComparison.Ordinal));
    }
}
