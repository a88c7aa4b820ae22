using BenchmarkDotNet.Running;
using WireText.Benchmarks;

BenchmarkSwitcher
    .FromTypes([
        typeof(StageBenchmarks),
        typeof(LayoutBenchmarks),
        typeof(ResponseBenchmarks),
        typeof(SolverBenchmarks),
    ])
    .Run(args);
