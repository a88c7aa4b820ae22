using System.Collections.Immutable;

namespace WireText.Text;

/// <summary>Collects findings while a stage works; what the stage hands on is immutable.</summary>
public sealed class FindingSink
{
    private readonly List<Finding> findings = [];

    public int Count => findings.Count;

    public void Add(Finding finding) => findings.Add(finding);

    public ImmutableArray<Finding> ToImmutable() => [.. findings];
}
