using WireText.Output;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Text;

/// <summary>A file in which nothing is right is told by so many findings, and by one that says there are more.</summary>
public class FindingLimitTests
{
    private const long GiB = 1L << 30;

    /// <summary>A line that has no lugs cannot be read.</summary>
    private const string Bad = "wire\n";

    [Fact]
    public void Findings_AsManyAsAreKept_AreAllTold()
    {
        var found = Check(FindingLimit.MostKept);

        Assert.Equal(FindingLimit.MostKept, found.Count);
        Every.Item(found, one => Assert.Equal("expected", one.Id));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(1000)]
    public void Findings_MoreThanAreKept_EndInOneThatSaysSo(int more)
    {
        var found = Check(FindingLimit.MostKept + more);

        Assert.Equal(FindingLimit.MostKept + 1, found.Count);
        Assert.Equal("too-many-findings", found[^1].Id);
        Assert.Equal(FindingLimit.MostKept + 1, found[^1].Location.Position.Line);
        Assert.Single(found, one => one.Id == "too-many-findings");
    }

    /// <summary>Half of the lines fail as they are read, half as their wires are made.</summary>
    [Fact]
    public void Findings_TooManyOfTwoStages_AreToldInTheOrderOfTheText()
    {
        var pairs = (FindingLimit.MostKept / 2) + 1;
        var text = string.Concat(Enumerable.Range(0, pairs).Select(i => $"{Bad}wire none{i}.a to none{i}.b white\n"));

        var found = Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance).Findings;

        Assert.Equal(FindingLimit.MostKept + 1, found.Length);
        Assert.Equal("too-many-findings", found[^1].Id);
        var lines = found.Select(one => one.Location.Position.Line).ToList();
        Assert.Equal(lines.Order(), lines);
        Assert.Equal(["expected", "unknown-part"], found.SkipLast(1).Select(one => one.Id).Distinct().Order());
    }

    /// <summary>Every line of the longest file is bad, and it is told as JSON.</summary>
    [Fact]
    public void Json_OfTheMostBadLines_TakesLessThanAGibibyte()
    {
        var text = string.Concat(Enumerable.Repeat(Bad, WiringParser.MaxLines - 1));
        var compiled = Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance);
        Assert.Equal(FindingLimit.MostKept + 1, compiled.Tree.Findings.Length);
        var before = GC.GetAllocatedBytesForCurrentThread();

        var json = FindingJson.Write([new CheckedFile("a.wiring", compiled.Findings)]);

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, json.Length, GiB);
        Assert.Contains("too-many-findings", json, StringComparison.Ordinal);
    }

    private static IReadOnlyList<Finding> Check(int lines) =>
        Compilation
            .Of(new SourceText("a.wiring", string.Concat(Enumerable.Repeat(Bad, lines))), NoSources.Instance)
            .Findings;
}
