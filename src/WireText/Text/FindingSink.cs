using System.Collections.Immutable;

namespace WireText.Text;

/// <summary>Collects findings while a stage works; what the stage hands on is immutable.</summary>
public sealed class FindingSink
{
    private readonly List<Finding> findings = [];

    public int Count => findings.Count;

    public void Add(Finding finding) => findings.Add(finding);

    /// <param name="edit">The change that mends it, where that is certain.</param>
    public void Error(string id, SourceLocation at, string message, string? help = null, TextEdit? edit = null) =>
        findings.Add(new Finding(id, Severity.Error, at, message, help) { Edits = edit is null ? [] : [edit] });

    public void Warning(string id, SourceLocation at, string message, string? help = null) =>
        findings.Add(new Finding(id, Severity.Warning, at, message, help));

    public void Note(string id, SourceLocation at, string message, string? help = null) =>
        findings.Add(new Finding(id, Severity.Note, at, message, help));

    public void Info(string id, SourceLocation at, string message, string? help = null) =>
        findings.Add(new Finding(id, Severity.Info, at, message, help));

    public ImmutableArray<Finding> ToImmutable() => [.. findings];
}
