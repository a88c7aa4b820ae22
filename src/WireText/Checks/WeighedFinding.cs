using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>A finding with what the shop and the author make of it.</summary>
/// <param name="Check">The check that found it.</param>
/// <param name="Finding">As it was found.</param>
/// <param name="Weighed">With the weight that is set; null where the shop does not want it.</param>
/// <param name="Allowance">The line that says that it is meant; null for none.</param>
internal sealed record WeighedFinding(CheckDescription Check, Finding Finding, Finding? Weighed, Allowance? Allowance)
{
    public static WeighedFinding Of(
        AllowanceIndex allowances,
        CheckDescription check,
        Finding finding,
        CheckSettings settings
    ) => new(check, finding, settings.Apply(finding), allowances.Of(finding));

    /// <summary>True when it is told as a mistake: what is only a note, allowed or not wanted explains nothing else.</summary>
    public bool IsMistake => Allowance is null && Weighed is { Severity: >= Severity.Warning };

    public Severity Severity => Weighed?.Severity ?? Finding.Severity;
}
