using BenchmarkDotNet.Attributes;
using WireText.Drawing.Layout;
using WireText.Tests.Drawing.Layout;

namespace WireText.Benchmarks;

/// <summary>The whole layout of each layout case, in process: places given, so that other programs can be given the same.</summary>
[ShortRunJob]
public class LayoutBenchmarks
{
    private LayoutProblem problem = null!;

    public static IEnumerable<string> Cases => LayoutCase.Names;

    [ParamsSource(nameof(Cases))]
    public string Case { get; set; } = "";

    [Params(true, false)]
    public bool HasPlaces { get; set; }

    [GlobalSetup]
    public void Read() => problem = LayoutCase.Read(Case, HasPlaces);

    [Benchmark]
    public LayoutResult Quick() => LayoutEngine.Lay(problem, LayoutEffort.Quick);

    [Benchmark]
    public LayoutResult Full() => LayoutEngine.Lay(problem, LayoutEffort.Full);
}
