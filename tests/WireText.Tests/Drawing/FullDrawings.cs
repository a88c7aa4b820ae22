using System.Collections.Concurrent;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Measuring;
using WireText.Testing;
using WireText.Tests.Drawing.Layout;
using WireText.Text;

namespace WireText.Tests.Drawing;

/// <summary>The examples and the layout cases at full effort, each worked out once for all the tests that look at it.</summary>
internal static class FullDrawings
{
    private static readonly ConcurrentDictionary<string, Lazy<Drawn>> Examples = new(StringComparer.Ordinal);

    private static readonly ConcurrentDictionary<(string Name, bool IsGiven), Lazy<LayoutMeasure>> Cases = new();

    /// <param name="name">The file name of an example.</param>
    public static Drawn Of(string name) => Examples.GetOrAdd(name, n => new Lazy<Drawn>(() => Draw(n))).Value;

    /// <summary>The finished SVG of an example, measured against the wires of its circuit.</summary>
    public static PictureMeasure MeasureOf(string name) => Drawings.MeasureOf(Of(name));

    public static LayoutMeasure OfCase(string name, bool isGiven) =>
        Cases
            .GetOrAdd(
                (name, isGiven),
                key => new Lazy<LayoutMeasure>(() =>
                    new LayoutMeasure(LayoutEngine.Lay(LayoutCase.Read(key.Name, key.IsGiven), LayoutEffort.Full))
                )
            )
            .Value;

    private static Drawn Draw(string name) =>
        Drawn.Of(
            new SourceText(name, File.ReadAllText(Repository.PathOf("examples", name))),
            new DrawOptions(LayoutEffort.Full, Theme.Light, name)
        );
}
