using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Checks.Slips;

/// <summary>Common slips of the trade: what is said of each without any claim, and what comes of doing what is said.</summary>
public class SlipTests
{
    private const string Page = "docs/slips.md";

    /// <summary>So many that the shares on the page mean something.</summary>
    private const int Fewest = 60;

    private static readonly Lazy<IReadOnlyList<SlipOutcome>> Outcomes = new(() =>
        [.. SlipList.All.AsParallel().AsOrdered().Select(SlipOutcome.Of)]
    );

    [Fact]
    public void Slips_OfTheList_AreSixtyAndHaveNamesOfTheirOwn()
    {
        Assert.True(SlipList.All.Count >= Fewest);
        Assert.Equal(SlipList.All.Count, SlipList.All.Select(slip => (slip.Circuit, slip.Name)).Distinct().Count());
    }

    /// <summary>The circuits that the slips are made in are right: nothing is found of them.</summary>
    [Fact]
    public void RightCircuits_BehindTheSlips_HaveNoFinding() =>
        Every.Item(
            Repository.FilesIn("docs/slips", "*.wiring"),
            path =>
                Assert.Empty(
                    Compilation
                        .Of(new SourceText(path, File.ReadAllText(path)), NoSources.Instance)
                        .Findings.Where(finding => finding.Severity > Severity.Right)
                )
        );

    /// <summary>What was written by hand of a slip, that it harms or does not, is what the tests' own solver says.</summary>
    [Fact]
    public void Slips_ThatHarm_AreThoseThatTheJudgeTellsFromTheRightCircuit() =>
        Assert.Empty(
            Outcomes
                .Value.Where(one => one.IsDifferent != one.Slip.IsHarmful)
                .Select(one => $"{one.Slip.Circuit}: {one.Slip.Name}")
        );

    [Fact]
    public void SlipPage_IsWhatTheProgramSays()
    {
        var page = File.ReadAllText(Repository.PathOf(Page));
        page = Between(page, "figures", SlipPage.Figures(Outcomes.Value));
        AcceptedFile.Check(Page, Between(page, "slips", SlipPage.Table(Outcomes.Value)));
    }

    private static string Between(string page, string what, string text)
    {
        var (start, end) = ($"<!-- {what}: written by SlipTests -->\n", $"<!-- end of {what} -->\n");
        return $"{page.Split(start)[0]}{start}{text}\n{end}{page.Split(end)[1]}";
    }
}
