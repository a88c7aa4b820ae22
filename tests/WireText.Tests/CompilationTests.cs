using System.Collections.Immutable;
using System.Text.RegularExpressions;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

/// <summary>An edited text must say what it says alone, whatever was taken over from the text before.</summary>
public class CompilationTests
{
    private static readonly long MostSurroundings = Bounds
        .All.Single(bound => bound.Counted.Contains("lug names", StringComparison.Ordinal))
        .Most;

    private static readonly DrawOptions Quick = new(LayoutEffort.Quick, Theme.Light, null);

    public static TheoryData<string> Files =>
        [
            .. Repository
                .Examples.Concat(Repository.Mistakes)
                .Select(path => Path.GetRelativePath(Repository.Root, path)),
        ];

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory]
    [MemberData(nameof(Files))]
    public void With_EachKindOfEdit_SaysWhatTheTextAloneSays(string file)
    {
        var text = File.ReadAllText(Repository.PathOf(file));
        var before = Compile(text);
        _ = before.Findings;

        foreach (var edited in Edits(text))
        {
            var warm = before.With(new SourceText("a.wiring", edited));
            var alone = Compile(edited);

            Assert.Equal(Said(alone), Said(warm));
            Assert.Equal(alone.Study?.Positions.Rows.Length, warm.Study?.Positions.Rows.Length);
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void With_EachKindOfEdit_IsDrawnAsTheTextAlone(string example)
    {
        var text = Example(example);
        var drawn = Compile(text);
        _ = drawn.Draw(Quick);

        foreach (var edited in Every.Of(Edits(text)))
        {
            drawn = drawn.With(new SourceText("a.wiring", edited));

            Assert.Equal(Compile(edited).Draw(Quick), drawn.Draw(Quick));
        }
    }

    /// <summary>Reaches the bound on the surroundings that are kept of a part: each of the colours leaves other room for names.</summary>
    [Fact]
    public void With_MoreEditsThanSurroundingsAreKept_IsDrawnAsTheTextAlone()
    {
        var text = Example("2-two-pickups-mute.wiring");
        var drawn = Compile(text);
        _ = drawn.Draw(Quick);
        string[] colours = ["red", "violet", "yellow/green", "pink", "orange/blue", "turquoise", "white/red"];
        Assert.True(colours.Length > MostSurroundings);

        foreach (var colour in Every.Of([.. colours, "black", colours[0]]))
        {
            var edited = text.Replace("white", colour, StringComparison.Ordinal);
            drawn = drawn.With(new SourceText("a.wiring", edited));

            Assert.Equal(Compile(edited).Draw(Quick), drawn.Draw(Quick));
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void With_AColourChanged_KeepsEveryPathAndSetsTheTagsAnew(string example)
    {
        var text = Example(example);
        var before = Compile(text).PlanFor(LayoutEffort.Quick)!.Layout;
        var compiled = Compile(text);
        _ = compiled.PlanFor(LayoutEffort.Quick);

        var edited = Regex.Replace(text, " red(?=[ \\n])", " white", RegexOptions.ExplicitCapture);
        var after = compiled.With(new SourceText("a.wiring", edited)).PlanFor(LayoutEffort.Quick)!.Layout;

        Assert.NotEqual(text, edited);
        Assert.Equal(
            before.Parts.Select(part => (part.At, part.Turn)),
            after.Parts.Select(part => (part.At, part.Turn))
        );
        Every.Item(
            before.Wires.Zip(after.Wires),
            pair => Assert.Equal(pair.First.Points.AsEnumerable(), pair.Second.Points.AsEnumerable())
        );
        Assert.Contains(
            before.Wires.Zip(after.Wires),
            pair => pair.First.Wire.Tag?.Width < pair.Second.Wire.Tag?.Width
        );
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void With_ACommentChanged_ReadsNothing(string file)
    {
        var text = File.ReadAllText(Repository.PathOf(file));
        var before = Compile(text);
        var mayReachIntoComments = before.Findings.Any(finding => !finding.Edits.IsEmpty);
        var picture = before.PictureFor(Quick);

        var after = before.With(new SourceText("a.wiring", text.TrimEnd('\n') + " # seen\n# and more\n\n"));
        var again = after.With(new SourceText("a.wiring", text));

        Assert.Equal(mayReachIntoComments || picture is null, !ReferenceEquals(picture, again.PictureFor(Quick)));
        Assert.Equal(Said(before), Said(again));
    }

    [Fact]
    public void With_ACommentChangedWhereAnIncludedFileChanged_SaysWhatIsThereNow()
    {
        var sources = new Shelf { Text = "# nothing yet" };
        const string Text = "include \"shelf.wiring\"\n";
        var before = Compilation.Of(new SourceText("a.wiring", Text), sources);
        _ = before.Findings;
        sources.Text = "pot vol 250k";
        var edited = new SourceText("a.wiring", Text + "# seen\n");

        Assert.Equal(Said(Compilation.Of(edited, sources)), Said(before.With(edited)));
        Assert.NotEqual(Said(before), Said(before.With(edited)));
    }

    [Fact]
    public void With_ACommentAndThenAColourChanged_SharesTheStudy()
    {
        var text = Example("2-two-pickups-mute.wiring");
        var before = Compile(text);
        _ = before.Findings;
        var study = before.Study!;

        var commented = before.With(new SourceText("a.wiring", text + "# seen"));
        _ = commented.Findings;
        var after = commented.With(new SourceText("a.wiring", text.Replace("white", "grey", StringComparison.Ordinal)));

        Assert.Same(study.Network, after.Study!.Network);
    }

    [Fact]
    public void With_AColourChanged_SharesTheStudy()
    {
        var text = Example("2-two-pickups-mute.wiring");
        var before = Compile(text);
        var study = before.Study!;

        var after = before.With(new SourceText("a.wiring", text.Replace("white", "grey", StringComparison.Ordinal)));

        Assert.Same(study.Network, after.Study!.Network);
    }

    [Fact]
    public void With_AnotherValue_SharesNothingThatWasSolved()
    {
        var text = Example("2-two-pickups-mute.wiring");
        var before = Compile(text);
        var study = before.Study!;

        var after = before.With(new SourceText("a.wiring", text.Replace("250k", "500k", StringComparison.Ordinal)));

        Assert.NotEqual(
            study.Positions.Rows[^1].Analysis.Sound.LevelDecibels,
            after.Study!.Positions.Rows[^1].Analysis.Sound.LevelDecibels
        );
    }

    [Fact]
    public void Findings_WhoseWorkWasCancelled_AreThereForTheNextToAsk()
    {
        var compiled = Compile(Example("8-twin-coil-cut.wiring"));
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();

        Assert.Throws<OperationCanceledException>(() => compiled.Until(cancelled.Token).Findings);

        Assert.Equal(Said(Compile(Example("8-twin-coil-cut.wiring"))), Said(compiled));
    }

    [Fact]
    public void Compilation_AskedByManyAtOnce_SaysOneThing()
    {
        var compiled = Compile(Example("9-four-pole-lever.wiring"));
        var answers = new string[8];

        Parallel.For(0, answers.Length, i => answers[i] = Said(compiled) + compiled.Draw(Quick));

        Assert.Single(answers.Distinct());
    }

    private static Compilation Compile(string text) =>
        Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance);

    private static string Example(string name) => File.ReadAllText(Repository.PathOf("examples", name));

    /// <summary>A remark before all, a remark behind a line, another colour, a line taken out, two lines exchanged.</summary>
    private static IEnumerable<string> Edits(string text)
    {
        yield return "# written later\n\n" + text;
        yield return text.Replace("\n", "  # seen\n", StringComparison.Ordinal);
        yield return text.Replace(" black", " grey", StringComparison.Ordinal);

        var lines = text.Split('\n').ToImmutableArray();
        var wires = lines.Where(line => line.StartsWith("wire", StringComparison.Ordinal)).ToImmutableArray();
        if (wires.Length >= 2)
        {
            yield return string.Join('\n', lines.Remove(wires[0]));
            yield return string.Join('\n', lines.Remove(wires[^1]).Insert(lines.IndexOf(wires[0]), wires[^1]));
        }
    }

    /// <summary>Every finding with its places, its words and its edits.</summary>
    private static string Said(Compilation compiled) =>
        string.Join(
            '\n',
            compiled.Findings.Select(finding =>
                $"{finding.Id} {finding.Severity} {finding.Location.Span} {finding.Message}\n  {finding.Help}\n  "
                + string.Join(", ", finding.Related.Select(related => $"{related}"))
                + string.Join(", ", finding.Edits.Select(edit => $"{edit}"))
            )
        );

    /// <summary>A folder with one file, whose text may change.</summary>
    private sealed class Shelf : ISourceProvider
    {
        public string Text { get; set; } = "";

        public SourceLoad Load(string path, SourceText from) => SourceLoad.Found(new SourceText(path, Text));
    }
}
