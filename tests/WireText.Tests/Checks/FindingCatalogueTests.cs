using System.Text.RegularExpressions;
using WireText.Checks;
using WireText.Circuits.Binding;
using WireText.Syntax;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>Every finding has a description, and every description of reading is shown by its own examples.</summary>
public partial class FindingCatalogueTests
{
    /// <summary>Where the id stands in a call that reports, or in the constant it is kept in.</summary>
    private static readonly Regex Reported = ReportedPattern();

    public static TheoryData<string> Ids => [.. FindingCatalogue.All.Select(description => description.Id)];

    /// <summary>The checks of allowances look at a whole circuit.</summary>
    private static readonly string[] AllowanceIds = ["unknown-check", "allow-unused"];

    /// <summary>A drawing's limit and what takes several files are tested beside their code.</summary>
    public static TheoryData<string> ReadIds =>
        [
            .. FindingCatalogue
                .OfReading.Where(description => description.HasExamples)
                .Select(description => description.Id)
                .Except(AllowanceIds),
        ];

    public static TheoryData<string> AllowIds => [.. AllowanceIds];

    [Fact]
    public void Catalogue_OfTheSource_HasEveryIdThatIsReported()
    {
        var reported = Directory
            .EnumerateFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories)
            .SelectMany(path => Reported.Matches(File.ReadAllText(path)))
            .SelectMany(match => match.Groups["id"].Captures.Select(capture => capture.Value))
            .ToHashSet();

        Assert.Equal(
            reported.Order(StringComparer.Ordinal),
            FindingCatalogue.OfReading.Select(description => description.Id).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Catalogue_HasEveryIdOnce() =>
        Assert.Equal(Ids.Count, FindingCatalogue.All.Select(description => description.Id).Distinct().Count());

    [Theory]
    [MemberData(nameof(ReadIds))]
    public void BadExample_OfReading_IsReportedAtItsMark(string id)
    {
        var (text, spans) = MarkedText.Parse(FindingCatalogue.Find(id)!.Bad);

        var found = Read(text);

        Assert.Equal([id], found.Select(finding => finding.Id));
        Assert.Equal(FindingCatalogue.Find(id)!.Severity, found[0].Severity);
        Assert.Equal(spans, found.Select(finding => finding.Location.Span));
    }

    [Theory]
    [MemberData(nameof(ReadIds))]
    public void GoodExample_OfReading_ReadsWithoutFinding(string id) =>
        Assert.Empty(Read(FindingCatalogue.Find(id)!.Good));

    [Theory]
    [MemberData(nameof(AllowIds))]
    public void Allowance_OfItsExamples_IsFoundInTheBadOneAlone(string id)
    {
        var description = FindingCatalogue.Find(id)!;
        var (text, spans) = MarkedText.Parse(description.Bad);

        Assert.Equal(spans, Found(text).Select(finding => finding.Location.Span));
        Assert.Empty(Found(description.Good));

        IEnumerable<Finding> Found(string text) =>
            WiringCompiler
                .Check(new SourceText("example.wiring", text), NoSources.Instance)
                .Findings.Where(finding => finding.Id == id);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Page_OfEachFinding_IsFresh(string id) =>
        AcceptedFile.Check($"docs/checks/{id}.md", CheckPage.WriteForDocs(FindingCatalogue.Find(id)!));

    [Fact]
    public void Table_OfAllFindings_IsFresh() =>
        AcceptedFile.Check("docs/checks/README.md", CheckPage.WriteTable(FindingCatalogue.All));

    [Fact]
    public void Pages_InTheDocs_AreThoseOfTheCatalogue() =>
        Assert.Equal(
            FindingCatalogue.All.Select(description => description.Id).Append("README").Order(StringComparer.Ordinal),
            Directory
                .EnumerateFiles(Repository.PathOf("docs", "checks"))
                .Select(Path.GetFileNameWithoutExtension)
                .Order(StringComparer.Ordinal)
        );

    private static List<Finding> Read(string text)
    {
        var tree = Parser.Parse(new SourceText("example.wiring", text));
        return [.. tree.Findings, .. Binder.Bind(tree, NoSources.Instance).Findings];
    }

    [GeneratedRegex(
        """(?:(?:\.(?:Error|Warning|Note|Info)|new Finding)\(\s*|ReportUnless\(\s*isReported,\s*|const string (?:BadDefinition|UnknownCheck|AllowUnused) = )(?:\w+ \? "(?<id>[a-z-]+)" : )?"(?<id>[a-z-]+)"\s*[,;]""",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex ReportedPattern();
}
