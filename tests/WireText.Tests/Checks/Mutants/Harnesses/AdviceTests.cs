using WireText.Testing;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>What is printed to be soldered is soldered, on copies of all mutants of the harnesses that nobody tuned on, and of the examples.</summary>
public class AdviceTests
{
    private const string Page = "docs/mutants.md";

    private static readonly Lazy<IReadOnlyList<AdviceOutcome>> Outcomes = new(() =>
        [.. UsualHarnesses.All.AsParallel().AsOrdered().SelectMany(harness => AdviceOutcome.Of(harness))]
    );

    /// <summary>Set to anything, every mutant of the examples is judged and not some of each: many minutes of work.</summary>
    private const string WholeVariable = "WIRETEXT_ADVICE";

    /// <summary>As many mutants of an example are tried otherwise. Bounds the time.</summary>
    private const int MostOfAnExample = 10;

    private static readonly Lazy<IReadOnlyList<AdviceOutcome>> OfExamples = new(() =>
        [.. Repository.Examples.SelectMany(OfExample)]
    );

    [Fact]
    public void Advice_OfAnyMutant_HarmsNothing() => HarmsNothing(Outcomes.Value);

    [Fact]
    public void Advice_OfMutantsOfTheExamples_HarmsNothing() => HarmsNothing(OfExamples.Value);

    [Fact]
    public void Fix_OfMutantsOfTheExamples_LeavesNoneWrong() => LeavesNoneWrong(OfExamples.Value);

    private static void HarmsNothing(IReadOnlyList<AdviceOutcome> outcomes) =>
        Every.Item(
            outcomes.Where(one => one.Check != "--fix" && one.Came != Advised.InWords),
            one => Assert.True(one.Came != Advised.Harms, $"{one.Harness}: {one.Check}: {one.Help}")
        );

    [Fact]
    public void Fix_OfAnyMutant_LeavesNoneWrong() => LeavesNoneWrong(Outcomes.Value);

    private static void LeavesNoneWrong(IReadOnlyList<AdviceOutcome> outcomes) =>
        Every.Item(
            outcomes.Where(one => one.Check == "--fix"),
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

    /// <summary>With the claims of the example and without them, since other advice is printed then; without its places, which no advice speaks of.</summary>
    private static IEnumerable<AdviceOutcome> OfExample(string path)
    {
        var (name, all) = (Path.GetFileName(path), File.ReadAllLines(path));
        var most = Environment.GetEnvironmentVariable(WholeVariable) is null ? MostOfAnExample : int.MaxValue;
        var wired = all.Where(line => !line.StartsWith(' ') && !line.StartsWith("arrange", StringComparison.Ordinal));
        var bare = wired.Where(line => !line.StartsWith("expect ", StringComparison.Ordinal));
        return
        [
            .. AdviceOutcome.Of(name, string.Join('\n', wired), most),
            .. AdviceOutcome.Of($"{name} without claims", string.Join('\n', bare), most),
        ];
    }

    private static int Count(IEnumerable<Advised> all, Advised one) => all.Count(other => other == one);
}
