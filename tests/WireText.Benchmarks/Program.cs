using BenchmarkDotNet.Running;
using WireText.Benchmarks;

BenchmarkSwitcher.FromTypes([typeof(StageBenchmarks), typeof(ResponseBenchmarks), typeof(SolverBenchmarks)]).Run(args);
