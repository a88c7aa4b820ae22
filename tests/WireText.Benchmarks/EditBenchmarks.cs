using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Testing;
using WireText.Text;

namespace WireText.Benchmarks;

/// <summary>
/// What one edit costs in an editor that has the findings and the picture of the text before it: a grown circuit of 40 wires.
/// </summary>
/// <remarks>
/// The text before is compiled anew for each measurement, outside of it: measured again from the same one, an edit would find
/// solved what it was the first to ask. Read the median.
/// </remarks>
[SimpleJob(RunStrategy.Monitoring, warmupCount: 20, iterationCount: 100, invocationCount: 1)]
[MedianColumn]
public class EditBenchmarks
{
    private const int Wires = 40;

    /// <summary>Edits before the first that is measured: an editor's process has seen as many, and its code is compiled.</summary>
    private const int EditsBefore = 200;

    private static readonly DrawOptions Quick = new(LayoutEffort.Quick, Theme.Light, null);
    private static readonly string Text = GrownWiring.Of(Wires);

    private Compilation before = null!;
    private SourceText after = null!;

    /// <summary>What is edited.</summary>
    [Params("nothing before", "comment", "colour", "wire moved")]
    public string Edit { get; set; } = "";

    [GlobalSetup]
    public void EditForAWhile()
    {
        for (var edit = 0; edit < EditsBefore; edit++)
        {
            CompileWhatWasThere();
            _ = Check();
            _ = Draw();
        }
    }

    [IterationSetup]
    public void CompileWhatWasThere()
    {
        after = Source(Edited());
        before = Compilation.Of(Source(Edit == "nothing before" ? "" : Text), NoSources.Instance);
        _ = before.Findings;
        _ = before.Draw(Quick);
    }

    [Benchmark]
    public ImmutableArray<Finding> Check() => before.With(after).Findings;

    [Benchmark]
    public string? Draw() => before.With(after).Draw(Quick);

    private string Edited() =>
        Edit switch
        {
            "nothing before" => Text,
            "comment" => Text + "# a comment\n",
            "colour" => With("wire vol1.2 to s1.h violet"),
            _ => With("wire vol1.2 to s1.c blue"),
        };

    private static string With(string line) => Text.Replace("wire vol1.2 to s1.h blue", line, StringComparison.Ordinal);

    private static SourceText Source(string text) => new("grown.wiring", text);
}
