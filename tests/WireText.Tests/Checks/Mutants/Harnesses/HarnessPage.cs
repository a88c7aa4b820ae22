using System.Globalization;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>The tables of the circuits that nobody tuned on.</summary>
internal static class HarnessPage
{
    public static string Figures(IReadOnlyList<HarnessSuite> suites) =>
        Lines(
            "| harness | slips | tried | equal | alarms on equal | different | killed without claims | with a bench's claims | with claims from `positions --expect` | silent everywhere | of these passed as right |",
            "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |",
            [
                .. suites.Select(suite => Row($"{suite.Harness.Number}: {suite.Harness.Name}", [suite])),
                Row("all", suites),
            ]
        );

    /// <summary>What no check finds without claims, by kinds of slip, the most frequent first.</summary>
    public static string Survivors(IReadOnlyList<HarnessSuite> suites) =>
        Lines(
            "| slip | found by nothing | of these with a bench's claims | with claims from `positions --expect` | one of them |",
            "| --- | --- | --- | --- | --- |",
            from suite in suites
            from mutant in suite.Different
            group (suite, mutant) by mutant.Slip into slips
            let left = slips.Where(slip => slip.mutant.Bare.Count == 0).ToList()
            where left.Count > 0
            orderby left.Count descending, slips.Key
            let first = left[0]
            select Invariant(
                $"| {slips.Key} | {left.Count} of {slips.Count()} | {left.Count(slip => !slip.mutant.IsClaimed)} | {left.Count(slip => !slip.mutant.IsPinned)} | {first.suite.Harness.Number}: {first.mutant.Name} |"
            )
        );

    /// <summary>Those that are silent in every position, and that no error tells of.</summary>
    public static string Silent(IReadOnlyList<HarnessSuite> suites) =>
        Lines(
            "| harness | slip | found |",
            "| --- | --- | --- |",
            (
                from suite in suites
                from mutant in suite.Different
                where mutant.IsSilent && mutant.PassesAsRight
                select $"| {suite.Harness.Number} | {mutant.Name} | {Found(mutant)} |"
            ).DefaultIfEmpty("| none | | |")
        );

    /// <summary>What not even all claims of the program find.</summary>
    public static string Unseen(IReadOnlyList<HarnessSuite> suites) =>
        Lines(
            "| harness | slip | found without claims |",
            "| --- | --- | --- |",
            (
                from suite in suites
                from mutant in suite.Different
                where !mutant.IsPinned
                select $"| {suite.Harness.Number} | {mutant.Name} | {Found(mutant)} |"
            ).DefaultIfEmpty("| none | | |")
        );

    private static string Found(HarnessMutant mutant) =>
        string.Join(", ", mutant.Bare.Select(finding => finding.Id).Distinct().DefaultIfEmpty("nothing"));

    private static string Row(string name, IReadOnlyList<HarnessSuite> suites)
    {
        var tried = suites.Sum(suite => suite.Mutants.Length);
        var different = suites.SelectMany(suite => suite.Different).ToList();
        var alarmed = suites.Sum(suite => suite.FalseAlarms.Select(alarm => alarm.Mutant).Distinct().Count());
        return Invariant(
            $"| {name} | {suites.Sum(suite => suite.Slips)} | {tried} | {tried - different.Count} | {alarmed} | {different.Count} | {Share(different, mutant => mutant.Bare.Count > 0)} | {Share(different, mutant => mutant.IsClaimed)} | {Share(different, mutant => mutant.IsPinned)} | {different.Count(mutant => mutant.IsSilent)} | {different.Count(mutant => mutant.IsSilent && mutant.PassesAsRight)} |"
        );
    }

    private static string Share(List<HarnessMutant> different, Func<HarnessMutant, bool> isKilled)
    {
        var killed = different.Count(isKilled);
        return Invariant($"{killed} ({100.0 * killed / different.Count:0.0} %)");
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Lines(string head, string rule, IEnumerable<string> rows) =>
        string.Join('\n', new[] { head, rule }.Concat(rows));
}
