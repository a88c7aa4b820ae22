using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Checks;

/// <summary>What a shop makes of the checks: how much the findings of some weigh, or that they are not wanted.</summary>
/// <param name="weights">By id; null where findings are not wanted.</param>
public sealed class CheckSettings(ImmutableDictionary<string, Severity?> weights)
{
    /// <summary>Everything as the table of checks says.</summary>
    public static CheckSettings Standard { get; } = new([]);

    /// <summary>The ids that can be set, in the order of the table. A line that cannot be read has to change, whoever reads it.</summary>
    public static ImmutableArray<string> Ids { get; } =
    [.. CheckList.All.Select(check => check.Description.Id), AllowanceFindings.AllowUnused.Id];

    public bool IsOff(string id) => weights.TryGetValue(id, out var weight) && weight is null;

    /// <summary>The finding with the weight that is set; null when it is not wanted.</summary>
    public Finding? Apply(Finding finding) =>
        !weights.TryGetValue(finding.Id, out var weight) ? finding
        : weight is { } severity ? finding with { Severity = severity }
        : null;
}
