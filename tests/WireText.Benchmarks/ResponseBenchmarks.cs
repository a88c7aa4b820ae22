using BenchmarkDotNet.Attributes;
using WireText.Electrical.Networks;
using WireText.Electrical.Responses;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Testing;
using WireText.Text;

namespace WireText.Benchmarks;

/// <summary>Every situation of an example at 400 frequencies, dials at rest: what a whole instrument takes.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class ResponseBenchmarks
{
    private Network network = null!;
    private Situation[] situations = [];

    public static IEnumerable<string> Examples =>
        Repository.Examples.Select(path => Path.GetFileNameWithoutExtension(path));

    [ParamsSource(nameof(Examples))]
    public string Example { get; set; } = "";

    [GlobalSetup]
    public void Bind()
    {
        var source = new SourceText(Example, File.ReadAllText(Repository.PathOf("examples", $"{Example}.wiring")));
        network = Network.Of(Compilation.Of(source, NoSources.Instance).Circuit!)!;
        situations = [.. SituationTree.Of(network).Situations];
    }

    /// <summary>From the positions of the controls to levels.</summary>
    [Benchmark]
    public double AllSituations()
    {
        var sum = 0.0;
        foreach (var situation in situations)
        {
            var live = LiveNetwork.Of(network, situation.State);
            sum += StringResponse.Of(network.Circuit, live)?.DecibelsAt(ResponseStudy.Hertz.AsSpan())?[0] ?? 0;
        }

        return sum;
    }

    /// <summary>Finding out which situations there are.</summary>
    [Benchmark]
    public int SituationsAlone() => SituationTree.Of(network).Situations.Length;
}
