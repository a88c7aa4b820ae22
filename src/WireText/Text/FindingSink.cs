using System.Collections.Immutable;

namespace WireText.Text;

/// <summary>Collects findings while a stage works; what the stage hands on is immutable.</summary>
public sealed class FindingSink
{
    private readonly List<Finding> findings = [];

    public int Count => findings.Count;

    public void Add(Finding finding) => findings.Add(finding);

    public void Error(string id, SourceLocation at, string message, string? help = null) =>
        findings.Add(new Finding(id, Severity.Error, at, message, help));

    public void Warning(string id, SourceLocation at, string message, string? help = null) =>
        findings.Add(new Finding(id, Severity.Warning, at, message, help));

    public void Note(string id, SourceLocation at, string message, string? help = null) =>
        findings.Add(new Finding(id, Severity.Note, at, message, help));

    public void Info(string id, SourceLocation at, string message, string? help = null) =>
        findings.Add(new Finding(id, Severity.Info, at, message, help));

    public ImmutableArray<Finding> ToImmutable() => [.. findings];
}
