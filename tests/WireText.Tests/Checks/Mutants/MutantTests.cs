using WireText.Circuits.Binding;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Tests.Checks.Mutants.Harnesses;
using WireText.Text;

namespace WireText.Tests.Checks.Mutants;

/// <summary>Every slip of a soldering iron in every right example: found, or proven to change nothing.</summary>
public class MutantTests
{
    private const string Page = "docs/mutants.md";

    /// <summary>Of the different mutants of an example, those that must be found without any claim, in percent.</summary>
    private const int LeastWithoutClaims = 90;

    private const int MostFindings = 3;

    [Fact]
    public void Mutants_OfTheExamples_AreFoundOrProvenEqual()
    {
        var suites = Repository.Examples.Select(MutantSuite.Of).ToList();
        WritePage(suites);

        Assert.Empty(suites.SelectMany(suite => suite.FalseAlarms));
        Assert.Empty(
            suites.SelectMany(suite =>
                suite.Survivors.Select(mutant => $"{suite.Example}: {mutant.Name}, at {suite.StateOf(mutant)}")
            )
        );
        Assert.Empty(
            suites.SelectMany(suite =>
                suite
                    .Different.Where(mutant => !mutant.IsLocated)
                    .Select(mutant => $"{suite.Example}: {mutant.Name}, not located")
            )
        );
        Every.Item(suites, HasFewFindings);
        ShortWords.Hold(
            suites.SelectMany(suite => suite.All).SelectMany(mutant => mutant.Found.Concat(mutant.FoundBare))
        );
        Every.Item(suites, HoldsWithoutClaims);
    }

    /// <summary>The page says how many are found of circuits that no check was written beside; nothing is asked of the figures.</summary>
    [Fact]
    public void Mutants_OfCircuitsNobodyTunedOn_AreCounted()
    {
        var suites = UsualHarnesses.All.Select(HarnessSuite.Of).ToList();
        var page = Between(File.ReadAllText(Repository.PathOf(Page)), "untuned", HarnessPage.Figures(suites));
        page = Between(page, "survivors", HarnessPage.Survivors(suites));
        page = Between(page, "unseen", HarnessPage.Unseen(suites));
        AcceptedFile.Check(Page, Between(page, "silent", HarnessPage.Silent(suites)));
    }

    [Fact]
    public void Mutants_OfOneExample_HaveNamesOfTheirOwn()
    {
        foreach (var right in Repository.Examples.Select(MutantSuite.Read))
        {
            var names = WireMutants.Of(right).Select(slip => WireMutants.NameOf(right, slip)).ToList();
            Assert.NotEmpty(names);
            Assert.Equal(names.Count, names.Distinct().Count());
        }
    }

    [Fact]
    public void Mutants_ThatCanBeWritten_AreTheSameCircuitWhenRead()
    {
        foreach (var path in Repository.Examples)
        {
            var (right, text) = (MutantSuite.Read(path), File.ReadAllText(path));
            foreach (var slip in WireMutants.Of(right).Where(slip => WireMutants.CanBeWritten(right, slip)))
            {
                var tree = WiringParser.Parse(new SourceText("mutant.wiring", WireMutants.Written(right, slip, text)));
                var read = Binder.Bind(tree, NoSources.Instance).Circuit!;
                Assert.Equal<int>([.. slip.Apply(right).Nets.OneNet], [.. read.Nets.OneNet]);
            }
        }
    }

    /// <summary>What a right example is left with: nothing, not even a note, unless notes are asked for.</summary>
    [Fact]
    public void RightExamples_HaveNoFindingAndAllowNothing() =>
        Every.Item(
            Repository.Examples,
            path =>
            {
                var source = new SourceText(path, File.ReadAllText(path));
                var compiled = Compilation.Of(source, NoSources.Instance);
                Assert.Empty(compiled.Findings.Where(finding => finding.Severity > Severity.Right));
                Assert.Empty(compiled.Circuit!.Allowances);
            }
        );

    private static void HasFewFindings(MutantSuite suite)
    {
        foreach (var mutant in suite.All)
        {
            Assert.True(mutant.Found.Length <= MostFindings, $"{suite.Example}: {mutant.Name}");
            Assert.True(mutant.FoundBare.Length <= MostFindings, $"{suite.Example}: {mutant.Name}, without claims");
        }

        Assert.Equal(1, Median(suite.Different.Select(mutant => mutant.Found.Length)));
        Assert.Equal(1, Median(suite.Different.Select(mutant => mutant.FoundBare.Length)));
    }

    private static void HoldsWithoutClaims(MutantSuite suite)
    {
        var different = suite.Different.ToList();
        var killed = different.Count(mutant => !mutant.FoundBare.IsEmpty);
        Assert.True(100 * killed >= LeastWithoutClaims * different.Count, $"{suite.Example}: {killed}");
    }

    private static int Median(IEnumerable<int> counts)
    {
        var sorted = counts.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    private static void WritePage(IReadOnlyList<MutantSuite> suites)
    {
        var page = File.ReadAllText(Repository.PathOf(Page));
        page = Between(page, "figures", MutantPage.Figures(suites));
        AcceptedFile.Check(Page, Between(page, "claims", MutantPage.KilledByClaims(suites)));
    }

    private static string Between(string page, string what, string text)
    {
        var (start, end) = ($"<!-- {what}: written by MutantTests -->\n", $"<!-- end of {what} -->\n");
        return $"{page.Split(start)[0]}{start}{text}\n{end}{page.Split(end)[1]}";
    }
}
