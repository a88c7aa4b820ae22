using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using WireText.Electrical.Studies;
using WireText.Electrical.Tolerances;
using WireText.Matching;
using WireText.Testing;
using WireText.Text;

namespace WireText.Benchmarks;

/// <summary>A run of a thousand instruments, and a batch of ten from a bin of sixty.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class RunBenchmarks
{
    private Study study = null!;
    private ImmutableArray<BinPart> bin;

    [GlobalSetup]
    public void Bind()
    {
        var source = new SourceText("guitar", File.ReadAllText(Repository.PathOf("docs", "match", "guitar.wiring")));
        var circuit = Compilation.Of(source, NoSources.Instance).Circuit!;
        study = Study.Of(circuit)!;
        bin = BinReader.Read(circuit, File.ReadAllText(Repository.PathOf("docs", "match", "bin.csv"))).Value!.Parts;
    }

    [Benchmark]
    public int Spread() =>
        SpreadTable.Of(study.Analyst, SpreadTable.StatesOf(study.Positions), new RunOptions()).States.Length;

    [Benchmark]
    public int Match() => Matcher.Match(study, bin, 10, []).Holding;
}
