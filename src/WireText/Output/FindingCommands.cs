using System.Globalization;
using System.Text;
using WireText.Text;

namespace WireText.Output;

/// <summary>
/// Writes findings as workflow commands of GitHub Actions, a line each: the run then shows each at its line in the change.
/// </summary>
/// <remarks>The form is documented under "Workflow commands for GitHub Actions"; the escapes are those of its toolkit.</remarks>
public static class FindingCommands
{
    /// <param name="workingFolder">The folder of the run, with forward slashes: the commands name files from there.</param>
    public static string Write(IEnumerable<CheckedFile> files, string workingFolder)
    {
        var folder = new WorkingFolder(workingFolder);
        var text = new StringBuilder();
        foreach (var finding in files.SelectMany(file => file.Findings))
        {
            text.Append(CommandOf(finding, folder)).Append('\n');
        }

        return text.ToString();
    }

    private static string CommandOf(Finding finding, WorkingFolder folder)
    {
        var (line, column) = finding.Location.Position;
        var (endLine, endColumn) = finding.Location.Source.PositionOf(finding.Location.Span.End);
        var message = finding.Help is { } help ? $"{finding.Message}\n{help}" : finding.Message;
        // Columns are for a place in one line.
        var place =
            line == endLine
                ? string.Create(CultureInfo.InvariantCulture, $"line={line},col={column},endColumn={endColumn}")
                : string.Create(CultureInfo.InvariantCulture, $"line={line},endLine={endLine}");
        return $"::{WordFor(finding.Severity)} file={Property(NameOf(finding.Location.Source.Path, folder))},{place},title={Property(finding.Id)}::{Data(message)}";
    }

    private static string NameOf(string path, WorkingFolder folder)
    {
        var (names, isBelow) = folder.WayTo(path);
        var way = string.Join('/', names);
        return isBelow || (names is [var first, ..] && WorkingFolder.IsDrive(first)) ? way : "/" + way;
    }

    private static string WordFor(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            _ => "notice",
        };

    private static string Data(string text) => VisibleText.Line(Escaped(text));

    private static string Property(string text) =>
        VisibleText.Line(
            Escaped(text).Replace(":", "%3A", StringComparison.Ordinal).Replace(",", "%2C", StringComparison.Ordinal)
        );

    private static string Escaped(string text) =>
        text.Replace("%", "%25", StringComparison.Ordinal)
            .Replace("\r", "%0D", StringComparison.Ordinal)
            .Replace("\n", "%0A", StringComparison.Ordinal);
}
