using System.Collections.Immutable;
using System.Globalization;
using BenchmarkDotNet.Attributes;
using WireText.Checks;
using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Electrical.Studies;
using WireText.Measuring;
using WireText.Output;
using WireText.Syntax;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Benchmarks;

/// <summary>Each stage alone, on what the stage before it made of an example, or of a grown circuit of so many wires.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class StageBenchmarks
{
    private SourceText source = new("", "");
    private WiringTree tree = null!;
    private Circuit circuit = null!;
    private LayoutProblem problem = null!;
    private LayoutResult layout = null!;
    private string svg = "";

    /// <summary>The examples, and the sizes by which growth is measured.</summary>
    public static IEnumerable<string> Inputs =>
        Repository
            .Examples.Select(path => Path.GetFileNameWithoutExtension(path))
            .Concat(["10", "20", "40", "100", "200", "400", "1000"]);

    [ParamsSource(nameof(Inputs))]
    public string Input { get; set; } = "";

    [GlobalSetup]
    public void RunAllStages()
    {
        source = new SourceText($"{Input}.wiring", TextOf(Input));
        tree = WiringParser.Parse(source);
        circuit = Binder.Bind(tree, NoSources.Instance).Circuit!;
        problem = FaceBuilder.BuildProblem(circuit);
        layout = LayoutEngine.Lay(problem, LayoutEffort.Quick);
        svg = Write();
    }

    private static string TextOf(string input) =>
        int.TryParse(input, CultureInfo.InvariantCulture, out var wires)
            ? GrownWiring.Of(wires)
            : File.ReadAllText(Repository.PathOf("examples", $"{input}.wiring"));

    [Benchmark]
    public WiringTree Parse() => WiringParser.Parse(source);

    [Benchmark]
    public string Format() => Formatter.Format(tree);

    [Benchmark]
    public Circuit? Bind() => Binder.Bind(tree, NoSources.Instance).Circuit;

    [Benchmark]
    public ImmutableArray<Finding> Check() => Checker.Examine(circuit, Study.Of(circuit), CheckRequest.Usual).Findings;

    [Benchmark]
    public LayoutResult LayOutQuickly() => LayoutEngine.Lay(problem, LayoutEffort.Quick);

    [Benchmark]
    public LayoutResult LayOutFully() => LayoutEngine.Lay(problem, LayoutEffort.Full);

    [Benchmark]
    public string PaintAndWrite() => Write();

    /// <summary>All of it, as after each change in an editor.</summary>
    [Benchmark]
    public string? EditToSvg() =>
        Compilation.Of(source, NoSources.Instance).Draw(new DrawOptions(LayoutEffort.Quick, Theme.Light, null));

    [Benchmark]
    public PictureMeasure Measure() => PictureMeasurer.Measure(svg, source: null);

    private string Write() =>
        SvgWriter.Write(PictureBuilder.Build(circuit, layout, new PictureOptions { FileName = source.Path }));
}
