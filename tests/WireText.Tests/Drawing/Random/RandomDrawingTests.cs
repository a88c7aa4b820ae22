using System.Globalization;
using System.Text;
using WireText.Circuits.Binding;
using WireText.Drawing.Layout;
using WireText.Measuring;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing.Random;

/// <summary>What 500 random circuits look like when drawn, read from the finished SVG alone; writes docs/random-circuits.md.</summary>
public class RandomDrawingTests
{
    public static TheoryData<int, int> AllBatches =>
        Rows.Of(
            RandomDrawings.Groups.SelectMany(
                (about, group) => Enumerable.Range(0, about.Batches).Select(batch => (group, batch))
            )
        );

    public static TheoryData<int> KnownFaults => Rows.Of(Enumerable.Range(0, KnownFault.All.Length));

    [Fact]
    public void RandomCircuits_Are500() => Assert.Equal(500, RandomDrawings.Groups.Sum(group => group.Circuits));

    [Theory, MemberData(nameof(AllBatches))]
    public void Drawing_OfARandomCircuit_HasOnlyKnownFaults(int group, int batch)
    {
        foreach (
            var random in Samples.Replayed is { } seed
                ? [RandomDrawings.Of(group, seed)]
                : RandomDrawings.Batch(group, batch)
        )
        {
            if (NewFault(random) is { } fault)
            {
                var small = Shrink(random, fault.Kind);
                Assert.Fail(
                    $"# {NewFault(small)}\n# drawn at {small.Effort} effort\n{small.Text}"
                        + Samples.HowToReplay(
                            random.Seed,
                            nameof(RandomDrawingTests),
                            nameof(Drawing_OfARandomCircuit_HasOnlyKnownFaults),
                            $"group: {group}, batch: {batch}"
                        )
                );
            }
        }
    }

    [Theory, MemberData(nameof(AllBatches))]
    public void Drawing_OfARandomCircuit_NamesEveryWiredLug_AndNoneBehindAWire(int group, int batch) =>
        Every.Item(
            RandomDrawings.Batch(group, batch),
            drawing =>
                Assert.DoesNotContain(
                    drawing.Doubts,
                    doubt => doubt.Kind is DoubtKind.UnnamedLug or DoubtKind.NameBehindAWire or DoubtKind.CutText
                )
        );

    /// <summary>When one is mended, it leaves the list.</summary>
    [Theory, MemberData(nameof(KnownFaults))]
    public void KnownFault_InItsSmallCircuit_IsStillThere(int number)
    {
        var known = KnownFault.All[number];

        var random = RandomDrawing.Of(known.Circuit, LayoutEffort.Quick, known.IsOfFindings);

        Assert.True(
            random.Faults.Any(fault => known.Holds(fault, random.Circuit)),
            $"'{known.Name}' no longer shows: if no drawing has it, take it out of KnownFault.All"
        );
    }

    [Fact]
    public void RandomCircuitsPage_IsWhatIsMeasured() => AcceptedFile.Check("docs/random-circuits.md", Page());

    private static PictureFault? NewFault(RandomDrawing random) =>
        random
            .Faults.Where(fault => KnownFault.Of(fault, random.Circuit) is null)
            .Select(fault => (PictureFault?)fault)
            .FirstOrDefault();

    /// <summary>Takes out line after line for as long as a new fault of that kind stays.</summary>
    private static RandomDrawing Shrink(RandomDrawing random, FaultKind kind)
    {
        var lines = random.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries).ToList();
        for (var i = lines.Count - 1; i >= 0; i = Math.Min(i - 1, lines.Count - 1))
        {
            List<string> fewer = [.. lines[..i], .. lines[(i + 1)..]];
            var text = string.Join('\n', fewer) + "\n";
            if (
                IsAllRead(text)
                && RandomDrawing.Of(text, random.Effort) is var smaller
                && NewFault(smaller)?.Kind == kind
            )
            {
                (lines, random) = (fewer, smaller);
                i = lines.Count;
            }
        }

        return random;
    }

    /// <summary>A wire whose part was taken out is gone too, and would hide which lines matter.</summary>
    private static bool IsAllRead(string text)
    {
        var source = new SourceText("random.wiring", text);
        return Binder.Bind(WiringParser.Parse(source), NoSources.Instance) is { Circuit: not null, Findings: [] };
    }

    private static void AddDoubts(StringBuilder page)
    {
        page.Append(
            """

            ## What can be read wrongly

            Nothing is wrong there, yet an eye may err: each of these is counted over all circuits of a row.

            """
        );
        var kinds = Enum.GetValues<DoubtKind>();
        page.Append("| circuits | ").AppendJoin(" | ", kinds.Select(DoubtWords.Of)).Append(" |\n| --- |");
        page.Insert(page.Length, " --- |", kinds.Length).Append('\n');
        for (var group = 0; group < RandomDrawings.Groups.Length; group++)
        {
            var doubts = RandomDrawings.Of(group).SelectMany(drawing => drawing.Doubts).ToLookup(doubt => doubt.Kind);
            page.Append(CultureInfo.InvariantCulture, $"| {RandomDrawings.Groups[group].Name} | ")
                .AppendJoin(" | ", kinds.Select(kind => doubts[kind].Count()))
                .Append(" |\n");
        }
    }

    private static string Page()
    {
        var page = new StringBuilder(
            """
            # 500 random circuits, drawn and measured

            Written by `RandomDrawingTests`, the same circuits in every run: parts of most models, their leads soldered once, wires and
            cables between any lugs, a third of them with places. Each is drawn, without marks at its mistakes, and read back from the
            finished SVG by `PictureMeasurer`, which knows nothing of how it was made. Every wire is drawn from its lug to its lug, or a row under
            the drawing says that it found no way; none lies on another, crowds one, passes a foreign lug, goes through a part (a wire between two lugs of one part lies on that part), or over a
            label of one; nothing is off the page. Where that fails, the test prints the circuit, shrunk, as a wiring file.

            | circuits | how many | parts, at most | effort | wires | not drawn, and listed | without any fault |
            | --- | --- | --- | --- | --- | --- | --- |

            """
        );
        for (var group = 0; group < RandomDrawings.Groups.Length; group++)
        {
            var about = RandomDrawings.Groups[group];
            var all = RandomDrawings.Of(group).ToList();
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {about.Name} | {all.Count} | {about.MostParts} | {about.Effort.ToString().ToLowerInvariant()} | {all.Sum(d => d.Circuit.Wires.Length)} | {all.Sum(d => d.Drawn.Layout!.Unrouted.Length)} | {all.Count(d => d.Faults.Count == 0)} |\n"
            );
        }

        AddDoubts(page);
        page.Append(
            "\n## Known faults\n\nNo other showed in these circuits. Each stands here with a small circuit that shows it.\n"
        );
        var everything = Enumerable.Range(0, RandomDrawings.Groups.Length).SelectMany(RandomDrawings.Of).ToList();
        foreach (var known in KnownFault.All)
        {
            var counts = everything.ConvertAll(d => d.Faults.Count(fault => KnownFault.Of(fault, d.Circuit) == known));
            var count = known.IsOfFindings
                ? "Marks are left out of the drawings above."
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"{counts.Sum()} times, in {counts.Count(n => n > 0)} of the {counts.Count} circuits."
                );
            page.Append($"\n### {known.Name}\n\n{count}\n\n{known.Why}\n\n```wiring\n{known.Circuit}\n```\n");
        }

        return page.ToString();
    }
}
