using WireText.Checks;
using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;
using BindingFlags = System.Reflection.BindingFlags;

namespace WireText.Tests.Checks;

/// <summary>Every finding has a description, and every description of reading is shown by its own examples.</summary>
public class FindingCatalogueTests
{
    public static TheoryData<string> Ids => Rows.Of(FindingCatalogue.All.Select(description => description.Id));

    /// <summary>The checks of allowances look at a whole circuit.</summary>
    private static readonly string[] AllowanceIds = ["unknown-check", "allow-unused"];

    public static TheoryData<string> ReadIds =>
        Rows.Of(
            FindingCatalogue
                .OfReading.Where(description => description.HasExamples)
                .Select(description => description.Id)
                .Except(AllowanceIds)
        );

    public static TheoryData<string> AllowIds => Rows.Of(AllowanceIds);

    /// <summary>What no short text shows: text that is too large, several files, a character that cannot be seen.</summary>
    private static readonly Dictionary<string, Func<IEnumerable<Finding>>> Shown = new(StringComparer.Ordinal)
    {
        ["stray-character"] = () => Read("jack out \u200bmono"),
        ["too-deep"] = () => Read($"expect rest: {new string('(', 33)}neck{new string(')', 33)}"),
        ["too-large"] = () => Read(new string('#', WiringParser.MaxLength + 1)),
        ["too-many-findings"] = () => Read(Lines("wire", FindingLimit.MostKept + 1)).Skip(FindingLimit.MostKept),
        ["too-large-to-draw"] = () =>
            Compilation
                .Of(
                    new SourceText(
                        "example.wiring",
                        // The last line cannot be read, so that so many wires are not checked.
                        $"jack out\n{Lines("wire out.tip to out.sleeve white", CircuitLimits.MaxDrawnWires + 1)}wire"
                    ),
                    NoSources.Instance
                )
                .DrawingFindings,
        ["include-too-deep"] = () => Read("include \"mine.wiring\"", new Endless("include")),
        ["only-definitions"] = () => Read("include \"mine.wiring\"", new OneSource("jack out")),
        ["base-goes-round"] = () => Read("base \"mine.wiring\"", new OneSource("base \"mine.wiring\"")),
        ["base-too-deep"] = () => Read("base \"mine.wiring\"", new Endless("base")),
        ["base-late"] = () => Read("jack out mono\nbase \"mine.wiring\"", new OneSource("metal plate")),
        ["still-expected"] = () =>
            Read("base \"mine.wiring\"\ndrop neck", new OneSource("pickup neck single-coil\nexpect rest: neck")),
    };

    public static TheoryData<string> ShownIds => Rows.Of(Shown.Keys);

    /// <summary>A finding cannot be made without a description, and a description that is declared is in the catalogue.</summary>
    [Fact]
    public void Catalogue_HasEveryDescriptionThatAStageDeclares()
    {
        const BindingFlags Any = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic;
        var declared = typeof(Compilation)
            .Assembly.GetTypes()
            .SelectMany(type => type.GetProperties(Any))
            .Where(property => property.PropertyType == typeof(FindingDescription))
            .Select(property => (FindingDescription)property.GetValue(null)!);

        Assert.Equal(
            declared.Select(description => description.Id).Order(StringComparer.Ordinal),
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

    [Fact]
    public void Shown_HasWhatNoExampleShows() =>
        Assert.Equal(
            FindingCatalogue
                .All.Where(description => !description.HasExamples)
                .Select(description => description.Id)
                .Order(StringComparer.Ordinal),
            Shown.Keys.Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(ShownIds))]
    public void Description_WithoutExample_IsReported(string id) =>
        Assert.Contains(Shown[id](), finding => finding.Description == FindingCatalogue.Find(id));

    [Theory]
    [MemberData(nameof(AllowIds))]
    public void Allowance_OfItsExamples_IsFoundInTheBadOneAlone(string id)
    {
        var description = FindingCatalogue.Find(id)!;
        var (text, spans) = MarkedText.Parse(description.Bad);

        Assert.Equal(spans, Found(text).Select(finding => finding.Location.Span));
        Assert.Empty(Found(description.Good));

        IEnumerable<Finding> Found(string text) =>
            Compilation
                .Of(new SourceText("example.wiring", text), NoSources.Instance)
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
            Repository
                .FilesIn("docs/checks", "*")
                .Select(Path.GetFileNameWithoutExtension)
                .Order(StringComparer.Ordinal)
        );

    private static string Lines(string line, int count) => string.Concat(Enumerable.Repeat(line + '\n', count));

    private static List<Finding> Read(string text, ISourceProvider? sources = null)
    {
        var tree = WiringParser.Parse(new SourceText("example.wiring", text));
        return [.. tree.Findings, .. Binder.Bind(tree, sources ?? NoSources.Instance).Findings];
    }

    private sealed class OneSource(string text) : ISourceProvider
    {
        public SourceLoad Load(string path, SourceText from) => SourceLoad.Found(new SourceText(path, text));
    }

    /// <summary>Each file names another one.</summary>
    private sealed class Endless(string statement) : ISourceProvider
    {
        public SourceLoad Load(string path, SourceText from) =>
            SourceLoad.Found(new SourceText(path, $"{statement} \"further-{path}\""));
    }
}
