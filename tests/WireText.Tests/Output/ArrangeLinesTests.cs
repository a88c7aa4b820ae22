using WireText.Drawing.Layout;
using WireText.Output;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Output;

/// <summary>A drawing whose places are written down and read again is the same drawing.</summary>
public class ArrangeLinesTests
{
    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Places_OfAnExampleWithoutAny_WrittenAndReadAgain_GiveTheSameLayout(string example)
    {
        var bare = WithoutPlaces(File.ReadAllText(Repository.PathOf("examples", example)));
        var searched = Lay(bare);

        var written = ArrangeLines.Insert(WiringParser.Parse(Text(bare)), ArrangeLines.Write(searched));
        var again = Lay(written);

        Assert.StartsWith("arrange\n", ArrangeLines.Write(searched), StringComparison.Ordinal);
        Assert.Empty(WiringParser.Parse(Text(written)).Findings);
        Assert.Equal(PosesOf(searched), PosesOf(again));
        Assert.Equal(PathsOf(searched), PathsOf(again));
        Assert.Empty(ArrangeLines.Write(again));
    }

    [Fact]
    public void Places_WhereTheAuthorPlacedAPart_AreLinesForTheOthers()
    {
        var wiring = WithoutPlaces(File.ReadAllText(Repository.PathOf("examples", "5-bass-two-volumes.wiring")));
        var searched = Lay(wiring + "place neck at 40,12.5\n");

        var lines = ArrangeLines.Write(searched);
        var again = Lay(wiring + "place neck at 40,12.5\n" + lines);

        Assert.DoesNotContain("arrange", lines, StringComparison.Ordinal);
        Assert.DoesNotContain("place   neck", lines, StringComparison.Ordinal);
        Assert.Equal(PosesOf(searched), PosesOf(again));
        Assert.Equal(PathsOf(searched), PathsOf(again));
    }

    [Fact]
    public void Lines_OfOver24Parts_LeadToTheSamePlaces()
    {
        var wiring = GrownWiring.Of(200);
        var searched = Lay(wiring);

        var again = Lay(ArrangeLines.Insert(WiringParser.Parse(Text(wiring)), ArrangeLines.Write(searched)));

        Assert.True(searched.Parts.Length > 24);
        Assert.Equal(PosesOf(searched), PosesOf(again));
    }

    [Theory]
    [InlineData("jack out mono # the end\nnote \"x\"\n", "jack out mono # the end\n\nA\n\nnote \"x\"\n")]
    [InlineData("jack out mono\n\nnote \"x\"\n", "jack out mono\n\nA\n\nnote \"x\"\n")]
    [InlineData("jack out mono\r\nnote \"x\"\r\n", "jack out mono\r\n\r\nA\r\n\r\nnote \"x\"\r\n")]
    [InlineData("jack out mono", "jack out mono\n\nA\n")]
    [InlineData("", "\nA\n")]
    public void Insert_PutsTheLinesBehindTheLastPart_AndLeavesTheRest(string before, string after) =>
        Assert.Equal(after, ArrangeLines.Insert(WiringParser.Parse(Text(before)), "A\n"));

    private static LayoutResult Lay(string wiring) =>
        Compilation.Of(Text(wiring), NoSources.Instance).PlanFor(LayoutEffort.Quick)!.Layout;

    private static SourceText Text(string wiring) => new("a.wiring", wiring);

    private static IEnumerable<string> PosesOf(LayoutResult laid) =>
        laid.Parts.Select(part => $"{part.Part.Id} {part.At} {part.Turn} {part.Label}");

    private static IEnumerable<string> PathsOf(LayoutResult laid) =>
        laid.Wires.Select(wire => $"{wire.Wire.Id} {string.Join(' ', wire.Points)}");

    /// <summary>The text without its <c>arrange</c> block and <c>place</c> lines.</summary>
    private static string WithoutPlaces(string wiring)
    {
        var tree = WiringParser.Parse(Text(wiring));
        var kept = wiring;
        foreach (
            var statement in tree.Statements.Where(statement => statement is ArrangeSyntax or PlaceSyntax).Reverse()
        )
        {
            var end = statement is ArrangeSyntax arrange ? arrange.Rows[^1].Span.End : statement.Span.End;
            kept = kept.Remove(statement.Span.Start, end - statement.Span.Start);
        }

        return kept;
    }
}
