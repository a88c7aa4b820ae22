using System.Globalization;
using BenchmarkDotNet.Running;
using WireText.Benchmarks;

if (args is ["fuzz", var count, .. var first])
{
    return FuzzedRuns.Run(
        int.Parse(count, CultureInfo.InvariantCulture),
        first is [var number] ? int.Parse(number, CultureInfo.InvariantCulture) : 0
    );
}

BenchmarkSwitcher
    .FromTypes([
        typeof(StageBenchmarks),
        typeof(EditBenchmarks),
        typeof(LayoutBenchmarks),
        typeof(ResponseBenchmarks),
        typeof(RunBenchmarks),
        typeof(SolverBenchmarks),
    ])
    .Run(args);
return 0;
