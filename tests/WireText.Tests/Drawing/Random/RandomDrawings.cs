using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Measuring;
using WireText.Output;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing.Random;

/// <summary>Circuits of one size, all from one seed.</summary>
internal sealed record RandomGroup(
    string Name,
    string Seed,
    int Batches,
    int MostParts,
    int MostRuns,
    LayoutEffort Effort
)
{
    /// <summary>So many at a time, so that no test takes long.</summary>
    public const int BatchSize = 20;

    public int Circuits => Batches * BatchSize;

    /// <summary>The texts of circuits of this size that follow from a seed.</summary>
    public IEnumerable<Sample<string>> Take(string seed, int count) =>
        Samples.Take(RandomWirings.Text(MostParts, MostRuns), seed, count);
}

/// <summary>A random circuit, drawn.</summary>
/// <param name="Seed">What it is made from again; empty for one that was not random.</param>
internal sealed record RandomDrawing(
    string Seed,
    string Text,
    LayoutEffort Effort,
    Drawn Drawn,
    IReadOnlyList<PictureFault> Faults,
    ImmutableArray<PictureDoubt> Doubts
)
{
    public Circuit Circuit => Drawn.Compiled.Circuit!;

    /// <param name="hasFindings">Whether the mistakes in the circuit are marked. Without them a drawing stays as it is when a check is added.</param>
    public static RandomDrawing Of(string text, LayoutEffort effort, bool hasFindings = false, string seed = "")
    {
        var compiled = Compilation.Of(new SourceText("random.wiring", text), NoSources.Instance);
        var plan = compiled.PlanFor(effort)!;
        var options = new DrawOptions(effort, Theme.Light, null);
        var picture = plan.Paint(compiled.Circuit!, hasFindings ? compiled.Findings : [], options);
        var drawn = new Drawn(compiled, plan.Layout, SvgWriter.Write(picture));
        var measure = Drawings.MeasureOf(drawn);
        return new RandomDrawing(seed, text, effort, drawn, DrawingFaults.Of(drawn, measure), measure.Doubts);
    }
}

/// <summary>500 random circuits, each drawn once for all the tests that look at them.</summary>
internal static class RandomDrawings
{
    public static ImmutableArray<RandomGroup> Groups { get; } =
    [
        new("small", "0000KSTAtOJ4", Batches: 15, MostParts: 5, MostRuns: 8, LayoutEffort.Quick),
        new("middling", "0001KSTAtOJ7", Batches: 7, MostParts: 7, MostRuns: 12, LayoutEffort.Quick),
        new("crowded", "0002KSTAtOJ9", Batches: 2, MostParts: 9, MostRuns: 18, LayoutEffort.Quick),
        new("small, full effort", "0003KSTAtOJ2", Batches: 1, MostParts: 5, MostRuns: 8, LayoutEffort.Full),
    ];

    private static readonly ImmutableArray<ImmutableArray<Lazy<ImmutableArray<RandomDrawing>>>> Batches =
    [
        .. Groups.Select(group =>
            group
                .Take(group.Seed, group.Circuits)
                .Chunk(RandomGroup.BatchSize)
                .Select(batch => new Lazy<ImmutableArray<RandomDrawing>>(() =>
                    [.. batch.Select(sample => Draw(group, sample))]
                ))
                .ToImmutableArray()
        ),
    ];

    public static ImmutableArray<RandomDrawing> Batch(int group, int batch) => Batches[group][batch].Value;

    public static IEnumerable<RandomDrawing> Of(int group) => Batches[group].SelectMany(batch => batch.Value);

    /// <summary>The one circuit of a group that a seed makes.</summary>
    public static RandomDrawing Of(int group, string seed) =>
        Draw(Groups[group], Groups[group].Take(seed, count: 1).Single());

    private static RandomDrawing Draw(RandomGroup group, Sample<string> sample) =>
        RandomDrawing.Of(sample.Value, group.Effort, seed: sample.Seed);
}
