using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Measuring;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Measuring;

/// <summary>What layout promises of every drawing, found again in the finished drawings of all examples.</summary>
public class ExampleDrawingTests
{
    public static TheoryData<string> Examples => [.. Repository.Examples.Select(path => Path.GetFileName(path))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Draw_Example_ShowsEveryWireOnItsLugsAndInItsOwnLane(string name)
    {
        var source = new SourceText(name, File.ReadAllText(Repository.PathOf("examples", name)));
        var drawn = WiringCompiler.Draw(
            source,
            NoSources.Instance,
            new DrawOptions(LayoutEffort.Quick, Theme.Light, name)
        );
        var circuit = drawn.Compiled.Circuit!;
        var wires = circuit.Wires.Select(wire => new ExpectedWire(wire.Id, Lug(wire.From), Lug(wire.To))).ToList();

        var measure = PictureMeasurer.Measure(drawn.Svg!, wires);

        Assert.Null(measure.Error);
        Assert.Equal(circuit.Wires.Length, measure.WiresInPicture);
        Assert.Empty(measure.MissingWires);
        Assert.Empty(measure.ExtraWires);
        Assert.Empty(measure.WrongEnds);
        Assert.Empty(measure.Overlaps);
        Assert.Empty(measure.Crowding);
        Assert.Empty(measure.FalseJoints);
        Assert.Empty(measure.CrampedHops);
        Assert.Empty(measure.StrayTags);
        Assert.Empty(measure.OutsidePage);

        string? Lug(int index) => index < 0 ? null : circuit.NameOf(index);
    }
}
