using System.Globalization;
using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Measuring;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

/// <summary>The drawings that are committed beside the examples.</summary>
public class ExampleDrawingTests
{
    public static TheoryData<string> Examples => [.. Repository.Examples.Select(path => Path.GetFileName(path)!)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Drawing_OfEachExample_IsFresh(string name) =>
        AcceptedFile.Check($"examples/{Path.ChangeExtension(name, ".svg")}", Draw(name, LayoutEffort.Full).Svg!);

    /// <summary>Read by the measuring tool from the finished picture alone.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Drawing_OfEachExample_HasEveryWireAndNoFault(string name)
    {
        var drawn = Draw(name, LayoutEffort.Full);
        var circuit = drawn.Compiled.Circuit!;

        var measure = PictureMeasurer.Measure(
            drawn.Svg!,
            [.. circuit.Wires.Select(w => new ExpectedWire(w.Id, NameOf(w.From), NameOf(w.To)))]
        );

        Assert.Equal(circuit.Wires.Length, measure.WiresInPicture);
        Assert.Empty(measure.MissingWires);
        Assert.Empty(measure.WrongEnds);
        Assert.Empty(measure.Overlaps);
        Assert.Empty(measure.FalseJoints);
        Assert.Empty(measure.OutsidePage);
        Assert.Empty(measure.ThroughBodies);
        Assert.Empty(measure.LabelOverlaps);

        string? NameOf(int lug) => lug < 0 ? null : circuit.NameOf(lug);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Drawing_UnderAnotherCulture_HasTheSameBytes(string name)
    {
#pragma warning disable RS0030 // The culture is what this test is about.
        var here = Draw(name, LayoutEffort.Quick).Svg;
        var before = CultureInfo.CurrentCulture;
        try
        {
            // A decimal comma, another minus sign.
            var other = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            other.NumberFormat.NumberDecimalSeparator = ",";
            other.NumberFormat.NegativeSign = "−";
            CultureInfo.CurrentCulture = other;

            Assert.Equal(here, Draw(name, LayoutEffort.Quick).Svg);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
#pragma warning restore RS0030
    }

    [Fact]
    public void Drawing_OfEveryMistake_IsMarkedNotRefused()
    {
        foreach (var path in Directory.EnumerateFiles(Repository.PathOf("examples", "mistakes"), "*.wiring"))
        {
            var drawn = WiringCompiler.Draw(
                new SourceText(Path.GetFileName(path), File.ReadAllText(path)),
                NoSources.Instance,
                new DrawOptions(LayoutEffort.Quick, Theme.Light, null)
            );

            Assert.Contains("class=\"finding", drawn.Svg!, StringComparison.Ordinal);
        }
    }

    private static DrawResult Draw(string name, LayoutEffort effort) =>
        WiringCompiler.Draw(
            new SourceText(name, File.ReadAllText(Repository.PathOf("examples", name))),
            NoSources.Instance,
            new DrawOptions(effort, Theme.Light, name)
        );
}
