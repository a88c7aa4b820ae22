using System.Collections.Immutable;

namespace WireText.Text;

/// <summary>Collects findings while a stage works; what the stage hands on is immutable.</summary>
/// <remarks>Past <see cref="FindingLimit.MostKept"/> they are counted and left out, and one finding says so.</remarks>
public sealed class FindingSink
{
    private readonly List<Finding> findings = [];
    private Finding? leftOut;

    /// <summary>How many were added, those left out with them.</summary>
    public int Count { get; private set; }

    public void Add(Finding finding)
    {
        Count++;
        if (findings.Count < FindingLimit.MostKept)
        {
            findings.Add(finding);
        }
        else
        {
            leftOut ??= FindingLimit.LeftOutFrom(finding.Location);
        }
    }

    public ImmutableArray<Finding> ToImmutable() => leftOut is null ? [.. findings] : [.. findings, leftOut];
}
