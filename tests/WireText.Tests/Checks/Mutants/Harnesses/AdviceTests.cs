using WireText.Testing;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>What is printed to be soldered is soldered, on copies of all mutants of the harnesses that nobody tuned on.</summary>
public class AdviceTests
{
    private const string Page = "docs/mutants.md";

    private static readonly Lazy<IReadOnlyList<AdviceOutcome>> Outcomes = new(() =>
        [.. UsualHarnesses.All.AsParallel().AsOrdered().SelectMany(harness => AdviceOutcome.Of(harness))]
    );

    [Fact]
    public void Advice_OfAnyMutant_HarmsNothing() =>
        Every.Item(
            Outcomes.Value.Where(one => one.Check != "--fix" && one.Came != Advised.InWords),
            one => Assert.True(one.Came != Advised.Harms, $"{one.Harness}: {one.Check}: {one.Help}")
        );

    [Fact]
    public void Fix_OfAnyMutant_LeavesNoneWrong() =>
        Every.Item(
            Outcomes.Value.Where(one => one.Check == "--fix"),
            one => Assert.True(one.Came == Advised.Mends, one.Harness)
        );

    [Fact]
    public void AdvicePage_IsWhatCameOfIt()
    {
        var page = File.ReadAllText(Repository.PathOf(Page));
        var (start, end) = ("<!-- advice: written by AdviceTests -->\n", "<!-- end of advice -->\n");
        var rows =
            from one in Outcomes.Value
            group one.Came by one.Check into check
            orderby check.Key
            select $"| {check.Key} | {check.Count()} | {Count(check, Advised.Mends)} | {Count(check, Advised.LeavesWrong)} | {Count(check, Advised.InWords)} | {Count(check, Advised.Harms)} |";
        AcceptedFile.Check(
            Page,
            $"{page.Split(start)[0]}{start}| finding | times | mends | leaves it wrong | in words | harms |\n| --- | --- | --- | --- | --- | --- |\n{string.Join('\n', rows)}\n{end}{page.Split(end)[1]}"
        );
    }

    private static int Count(IEnumerable<Advised> all, Advised one) => all.Count(other => other == one);
}
