using WireText.Checks;
using WireText.Circuits.Binding;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>Every check by its own examples, and the pages made from them.</summary>
public class CheckExampleTests
{
    public static TheoryData<string> Ids => Rows.Of(CheckList.All.Select(check => check.Description.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void BadExample_OfEachCheck_IsReportedAtItsMarksAndAlone(string id)
    {
        var (text, spans) = MarkedText.Parse(DescriptionOf(id).Bad);

        var found = Run(text, withHarmless: DescriptionOf(id).OnlyWhenAsked);

        Every.Item(found, finding => Assert.Equal(id, finding.Id));
        Assert.Equal(spans, found.Select(finding => finding.Location.Span));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void GoodExample_OfEachCheck_HasNoFinding(string id) =>
        Assert.DoesNotContain(
            Run(DescriptionOf(id).Good, withHarmless: DescriptionOf(id).OnlyWhenAsked),
            finding => finding.Severity > Severity.Right
        );

    [Theory]
    [MemberData(nameof(Ids))]
    public void OnlyWhenAsked_OfACheck_IsANoteThatNobodySeesUnasked(string id)
    {
        var description = DescriptionOf(id);
        if (description.OnlyWhenAsked)
        {
            Assert.Equal(Severity.Note, description.Severity);
            Assert.Empty(Run(MarkedText.Parse(description.Bad).Text, withHarmless: false));
        }
        else
        {
            Assert.NotEqual(FindingGroup.Beliefs, description.Group);
        }
    }

    [Fact]
    public void CheckList_HasEveryCheckOnce()
    {
        var listed = CheckList.All.Select(check => check.GetType()).ToList();
        var written = typeof(ICheck)
            .Assembly.GetTypes()
            .Where(t => t is { IsClass: true } && t.IsAssignableTo(typeof(ICheck)));

        Assert.Equal(
            written.OrderBy(t => t.Name, StringComparer.Ordinal),
            listed.OrderBy(t => t.Name, StringComparer.Ordinal)
        );
        Assert.Equal(Ids.Count, CheckList.All.Select(check => check.Description.Id).Distinct().Count());
    }

    private static FindingDescription DescriptionOf(string id) =>
        CheckList.All.Single(check => check.Description.Id == id).Description;

    private static IReadOnlyList<Finding> Run(string text, bool withHarmless)
    {
        var tree = WiringParser.Parse(new SourceText("example.wiring", text));
        Assert.Empty(tree.Findings);
        var bound = Binder.Bind(tree, NoSources.Instance);
        Assert.Empty(bound.Findings);
        return [.. Checked.Findings(bound.Circuit!, withHarmless)];
    }
}
