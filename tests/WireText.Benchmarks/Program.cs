using BenchmarkDotNet.Running;
using WireText.Benchmarks;

BenchmarkSwitcher
    .FromTypes([
        typeof(StageBenchmarks),
        typeof(EditBenchmarks),
        typeof(LayoutBenchmarks),
        typeof(ResponseBenchmarks),
        typeof(SolverBenchmarks),
    ])
    .Run(args);
