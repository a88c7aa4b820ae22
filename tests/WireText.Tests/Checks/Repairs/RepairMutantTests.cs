using WireText.Testing;

namespace WireText.Tests.Checks.Repairs;

/// <summary>Right examples with one slip in the text: the help of the finding leads back to what was right.</summary>
public class RepairMutantTests
{
    /// <summary>Slips tried for each example.</summary>
    private const int Mistakes = 8;

    private const string Page = "docs/repairs.md";
    private const string Start = "<!-- figures: written by RepairMutantTests -->\n";
    private const string End = "<!-- end of figures -->\n";

    [Fact]
    public void PrintedRepair_OfASlipInAnExample_MakesEverythingHoldAndLeadsBack()
    {
        var figures = Repository
            .ExampleNames.Select(name => (Name: name, Figures: RepairFigures.Of(name, Mistakes)))
            .ToList();
        var all = figures.Aggregate(new RepairFigures(0, 0, 0, 0), (sum, one) => sum + one.Figures);

        // None is led astray: a slip is mended, or it is said that no single wire explains it.
        Assert.Equal(0, all.Other);
        Assert.True(all.Alone + all.Among >= 4 * all.TooMany, all.Row("all"));
        string[] rows =
        [
            "| example | slips | original alone | original among two or three | no single wire | other |",
            "| --- | --- | --- | --- | --- | --- |",
            .. figures.Select(one => one.Figures.Row($"`{one.Name}`")),
            all.Row("all"),
        ];
        var page = File.ReadAllText(Repository.PathOf(Page));
        var (before, after) = (page.Split(Start)[0], page.Split(End)[1]);
        AcceptedFile.Check(Page, $"{before}{Start}{string.Join('\n', rows)}\n{End}{after}");
    }
}
