using System.Runtime.CompilerServices;
using BenchmarkDotNet.Attributes;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Measuring;
using WireText.Output;
using WireText.Syntax;
using WireText.Text;

namespace WireText.Benchmarks;

/// <summary>Each stage alone, on what the stage before it made of an example.</summary>
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

    /// <summary>The smallest example, a common one, and the largest.</summary>
    [Params("1-one-pickup", "2-two-pickups-mute", "9-four-pole-lever")]
    public string Example { get; set; } = "";

    [GlobalSetup]
    public void RunAllStages()
    {
        var file = Path.Combine(ExamplesFolder(), $"{Example}.wiring");
        source = new SourceText($"{Example}.wiring", File.ReadAllText(file));
        tree = Parser.Parse(source);
        circuit = WiringCompiler.Check(source, NoSources.Instance).Circuit!;
        problem = FaceBuilder.BuildProblem(circuit);
        layout = LayoutEngine.Lay(problem, LayoutEffort.Quick);
        svg = Write();
    }

    [Benchmark]
    public WiringTree Parse() => Parser.Parse(source);

    [Benchmark]
    public string Format() => Formatter.Format(tree);

    [Benchmark]
    public CompileResult ParseBindAndCheck() => WiringCompiler.Check(source, NoSources.Instance);

    [Benchmark]
    public LayoutResult LayOutQuickly() => LayoutEngine.Lay(problem, LayoutEffort.Quick);

    [Benchmark]
    public LayoutResult LayOutFully() => LayoutEngine.Lay(problem, LayoutEffort.Full);

    [Benchmark]
    public string PaintAndWrite() => Write();

    [Benchmark]
    public PictureMeasure Measure() => PictureMeasurer.Measure(svg, source: null);

    private string Write() =>
        SvgWriter.Write(PictureBuilder.Build(circuit, layout, new PictureOptions { FileName = source.Path }));

    private static string ExamplesFolder([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "examples"));
}
