using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Testing;
using WireText.Text;

namespace WireText.Benchmarks;

/// <summary>
/// What one edit costs in an editor that has the findings and the picture of the text before it: a circuit of 40 stretches of
/// wire, the example with a four-pole lever with a mute and more metal to ground.
/// </summary>
/// <remarks>
/// The text before is compiled anew for each measurement, outside of it: measured again from the same one, an edit would find
/// solved what it was the first to ask. Read the median.
/// </remarks>
[SimpleJob(RunStrategy.Monitoring, warmupCount: 20, iterationCount: 100, invocationCount: 1)]
[MedianColumn]
public class EditBenchmarks
{
    /// <summary>Edits before the first that is measured: an editor's process has seen as many, and its code is compiled.</summary>
    private const int EditsBefore = 200;

    private static readonly DrawOptions Quick = new(LayoutEffort.Quick, Theme.Light, null);

    private static readonly string Text =
        File.ReadAllText(Repository.PathOf("examples", "9-four-pole-lever.wiring"))
        + """
            switch mute spdt
            wire mute.A0 to out.tip violet
            wire mute.A1 to out.sleeve black
            metal plate
            metal foil
            metal cover-n
            metal cover-b
            wire plate to foil to vol.case black
            wire cover-n to vol.case black
            wire cover-b to vol.case black

            """;

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

    /// <summary>The same with every part held in its place.</summary>
    [Benchmark]
    public string? DrawHeld() => before.WithPlacesHeld(after).Draw(Quick);

    private string Edited() =>
        Edit switch
        {
            "nothing before" => Text,
            "comment" => Text + "# a comment\n",
            "colour" => Text.Replace(
                "to out.tip                     white",
                "to out.tip brown",
                StringComparison.Ordinal
            ),
            _ => Text.Replace("vol.3            to tone.1", "vol.3            to tone.3", StringComparison.Ordinal),
        };

    private static SourceText Source(string text) => new("grown.wiring", text);
}
