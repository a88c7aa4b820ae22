using System.Globalization;
using WireText.Checks.Repairs;

namespace WireText.Tests.Checks.Mutants;

/// <summary>The tables of the page.</summary>
internal static class MutantPage
{
    public static string Figures(IReadOnlyList<MutantSuite> suites) =>
        Lines(
            "| example | mutants | equal: nets | behaviour | sign | different | killed | without claims | located | without claims | findings, median (most) | without claims |",
            "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |",
            [.. suites.Select(suite => Row($"`{suite.Example}`", suite.All)), Row("all", suites.SelectMany(s => s.All))]
        );

    public static string KilledByClaims(IReadOnlyList<MutantSuite> suites) =>
        Table(suites, (suite, mutant) => suite.KilledByClaims.Contains(mutant));

    private static string Table(IReadOnlyList<MutantSuite> suites, Func<MutantSuite, Mutant, bool> isShown) =>
        Lines(
            "| example | mutant | differs first at | in |",
            "| --- | --- | --- | --- |",
            [
                .. from suite in suites
                from mutant in suite.All
                where isShown(suite, mutant)
                select $"| {suite.Example[0]} | {mutant.Name} | {suite.StateOf(mutant)} | {What(mutant)} |",
            ]
        );

    private static string What(Mutant mutant) =>
        mutant.Equality.Difference!.Kind switch
        {
            DifferenceKind.Grounding => "grounding",
            DifferenceKind.Supply => "supply",
            DifferenceKind.CoilPlace => "the coils that are live or hang",
            _ => "what the jack gives",
        };

    private static string Row(string name, IEnumerable<Mutant> mutants)
    {
        var all = mutants.ToList();
        var different = all.FindAll(mutant => !mutant.IsEqual);
        var killed = different.FindAll(mutant => !mutant.Found.IsEmpty);
        var bare = different.FindAll(mutant => !mutant.FoundBare.IsEmpty);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {all.Count} | {Count(all, EqualityRule.Nets)} | {Count(all, EqualityRule.Behaviour)} | {Count(all, EqualityRule.Sign)} | {different.Count} | {Share(killed.Count, different.Count)} | {Share(bare.Count, different.Count)} | {Share(killed.Count(m => m.IsLocated), killed.Count)} | {Share(bare.Count(m => m.IsLocatedBare), bare.Count)} | {Spread(killed.Select(m => m.Found.Length))} | {Spread(bare.Select(m => m.FoundBare.Length))} |"
        );
    }

    private static int Count(List<Mutant> all, EqualityRule rule) => all.Count(mutant => mutant.Equality.Rule == rule);

    private static string Share(int part, int whole) =>
        string.Create(CultureInfo.InvariantCulture, $"{part} ({100.0 * part / whole:0.0} %)");

    private static string Spread(IEnumerable<int> counts)
    {
        var sorted = counts.Order().ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{sorted[sorted.Count / 2]} ({sorted[^1]})");
    }

    private static string Lines(string head, string rule, IEnumerable<string> rows) =>
        string.Join('\n', new[] { head, rule }.Concat(rows));
}
