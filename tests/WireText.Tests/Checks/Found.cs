using WireText.Checks;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>What the checks find in a text of the bench.</summary>
internal static class Found
{
    /// <summary>The findings of one check.</summary>
    public static List<Finding> Of(string id, string text) =>
        [.. Checker.Run(Bench.CompileText(Bench.Expand(text))).Where(finding => finding.Id == id)];
}
