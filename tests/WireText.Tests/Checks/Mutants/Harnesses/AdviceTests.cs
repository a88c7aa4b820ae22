using System.Collections.Immutable;
using System.Globalization;
using WireText.Testing;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>What is printed to be soldered is soldered, on copies of all mutants of the harnesses that nobody tuned on, and of the examples.</summary>
public class AdviceTests
{
    private const string Page = "docs/mutants.md";

    private static readonly Lazy<IReadOnlyList<AdviceOutcome>> Outcomes = new(() =>
        [
            .. UsualHarnesses
                .All.AsParallel()
                .AsOrdered()
                .SelectMany(harness => AdviceOutcome.Of(harness, IsWhole ? HarnessSuite.MostMutants : MostOfEach)),
        ]
    );

    private static IReadOnlyList<AdviceOutcome> OfExamples => [.. ByExample.Value.SelectMany(one => one.Outcomes)];

    /// <summary>Whether every mutant of the examples, and every one of the harnesses that is tried at all, is judged: the better part of an hour.</summary>
    private static bool IsWhole => Environment.GetEnvironmentVariable("WIRETEXT_ADVICE") is not null;

    /// <summary>As many mutants of an example, and of a harness, are tried otherwise. Bounds the time.</summary>
    private const int MostOfEach = 10;

    private static readonly Lazy<IReadOnlyList<(string Example, ImmutableArray<AdviceOutcome> Outcomes)>> ByExample =
        new(() => [.. Repository.Examples.Select(path => (Path.GetFileName(path), OfExample(path)))]);

    [Fact]
    public void Advice_OfAnyMutant_HarmsNothing() => HarmsNothing(Outcomes.Value);

    [Fact]
    public void Advice_OfMutantsOfTheExamples_HarmsNothing() => HarmsNothing(OfExamples);

    [Fact]
    public void Fix_OfMutantsOfTheExamples_LeavesNoneWrong() => LeavesNoneWrong(OfExamples);

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

    /// <summary>Of a sample it is held that each finding has its row, in which no less was judged.</summary>
    [Fact]
    public void AdvicePage_IsWhatCameOfIt() =>
        Hold(
            "advice",
            "| finding | times | mends | leaves it wrong | in words | harms |",
            Outcomes
                .Value.GroupBy(one => one.Check)
                .OrderBy(check => check.Key)
                .Select(check => $"| {check.Key} | {Came(check)} |")
        );

    /// <summary>Of a sample it is held that each example has its row, in which no less was judged.</summary>
    [Fact]
    public void RowsOfExamples_AreWhatCameOfAllTheirMutants()
    {
        IReadOnlyList<string> rows =
        [
            .. ByExample.Value.Select(one => ExampleRow($"`{one.Example}`", one.Outcomes)),
            ExampleRow("all", OfExamples),
        ];
        Assert.Equal(RowsWritten("examples").Keys, rows.Select(row => Cells(row)[0]));
        Hold(
            "examples",
            "| example | advice | mends | leaves it wrong | in words | harms | `--fix` mends | leaves it wrong |",
            rows
        );
    }

    private static string ExampleRow(string name, IReadOnlyList<AdviceOutcome> outcomes)
    {
        var (printed, written) = (
            outcomes.Where(one => one.Check != "--fix"),
            outcomes.Where(one => one.Check == "--fix")
        );
        return $"| {name} | {Came(printed)} | {Count(written, Advised.Mends)} | {Count(written, Advised.LeavesWrong)} |";
    }

    private static string Came(IEnumerable<AdviceOutcome> all) =>
        $"{all.Count()} | {Count(all, Advised.Mends)} | {Count(all, Advised.LeavesWrong)} | {Count(all, Advised.InWords)} | {Count(all, Advised.Harms)}";

    private static string[] Cells(string row) => row.Trim('|', ' ').Split(" | ");

    private static int Number(string cell) => int.Parse(cell, CultureInfo.InvariantCulture);

    private static (string Start, string End) MarksOf(string table) =>
        ($"<!-- {table}: written by AdviceTests -->\n", $"<!-- end of {table} -->\n");

    private static void Hold(string name, string heading, IEnumerable<string> rows)
    {
        if (IsWhole)
        {
            HoldTable(name, heading, rows);
            return;
        }

        var written = RowsWritten(name);
        Every.Item(
            rows.Select(Cells),
            sampled =>
                Every.Item(
                    sampled[1..].Zip(written[sampled[0]][1..], (some, all) => (Some: some, All: all)),
                    cell => Assert.InRange(Number(cell.Some), 0, Number(cell.All))
                )
        );
    }

    /// <summary>The cells of each row of a table, by the first, in order.</summary>
    private static OrderedDictionary<string, string[]> RowsWritten(string name)
    {
        var (start, end) = MarksOf(name);
        var rows = File.ReadAllText(Repository.PathOf(Page)).Split(start)[1].Split(end)[0].Split('\n')[2..^1];
        return new(rows.Select(Cells).Select(cells => KeyValuePair.Create(cells[0], cells)));
    }

    private static void HoldTable(string name, string heading, IEnumerable<string> rows)
    {
        var page = File.ReadAllText(Repository.PathOf(Page));
        var (start, end) = MarksOf(name);
        var line = string.Concat(Enumerable.Repeat("| --- ", Cells(heading).Length));
        AcceptedFile.Check(
            Page,
            $"{page.Split(start)[0]}{start}{heading}\n{line}|\n{string.Join('\n', rows)}\n{end}{page.Split(end)[1]}"
        );
    }

    /// <summary>With the claims of the example and without them, since other advice is printed then; without its places, which no advice speaks of.</summary>
    private static ImmutableArray<AdviceOutcome> OfExample(string path)
    {
        var (name, all) = (Path.GetFileName(path), File.ReadAllLines(path));
        var most = IsWhole ? int.MaxValue : MostOfEach;
        var wired = all.Where(line => !line.StartsWith(' ') && !line.StartsWith("arrange", StringComparison.Ordinal));
        var bare = wired.Where(line => !line.StartsWith("expect ", StringComparison.Ordinal));
        return
        [
            .. AdviceOutcome.Of(name, string.Join('\n', wired), most),
            .. AdviceOutcome.Of($"{name} without claims", string.Join('\n', bare), most),
        ];
    }

    private static int Count(IEnumerable<AdviceOutcome> all, Advised came) => all.Count(one => one.Came == came);
}
