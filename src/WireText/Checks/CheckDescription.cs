using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Checks;

/// <summary>What there is to say about a check: its finding, and what that finding explains.</summary>
public sealed record CheckDescription(
    string Id,
    string Title,
    Severity Severity,
    FindingGroup Group,
    string Why,
    string Bad,
    string Good,
    string Mend
) : FindingDescription(Id, Title, Severity, Group, Why, Bad, Good, Mend)
{
    /// <summary>What is dropped while a finding of this check stands.</summary>
    public ImmutableArray<Silence> Silences { get; init; } = [];

    /// <summary>True for a check whose errors say that the whole instrument is dead: no warning makes those wait.</summary>
    public bool YieldsToErrorsAlone { get; init; }
}
