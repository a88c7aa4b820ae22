using BenchmarkDotNet.Running;
using WireText.Benchmarks;

BenchmarkSwitcher.FromTypes([typeof(StageBenchmarks)]).Run(args);
