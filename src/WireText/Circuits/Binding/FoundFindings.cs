using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What can be wrong with what was found at the bench.</summary>
internal static class FoundFindings
{
    public static FindingDescription BadFound { get; } =
        new(
            Id: "bad-found",
            Title: "what was found cannot be found there",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Each place at the bench tells something else: a plug is measured and listened at, a joint is measured, a capacitor is
            good or it is not. A line that mixes them cannot be reasoned with.
            """,
            Bad: """
            cap dark 47n
            found dark alone: [|reads 3.2k|]
            """,
            Good: """
            cap dark 47n
            found dark alone: shorted
            """,
            Mend: "Write what can be found there."
        );
}
