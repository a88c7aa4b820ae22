using WireText.Checks;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>What the checks find in a text of the bench.</summary>
internal static class Found
{
    /// <summary>The findings of one check, asked for where it must be.</summary>
    public static List<Finding> Of(string id, string text) => OfLines(id, Bench.Expand(text));

    /// <summary>As above, of a text as it stands in a file: a definition's lines are indented.</summary>
    public static List<Finding> OfLines(string id, string text) =>
        [
            .. Checked
                .Findings(Bench.CompileText(text), FindingCatalogue.Find(id)!.OnlyWhenAsked)
                .Where(finding => finding.Id == id),
        ];
}
