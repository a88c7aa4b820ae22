using WireText.Text;

namespace WireText.Quantities;

/// <summary>What can be wrong with a value, wherever it stands.</summary>
internal static class ValueFindings
{
    public static FindingDescription BadValue { get; } =
        new(
            Id: "bad-value",
            Title: "a value cannot be read",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A number needs its letter or unit, and one that fits the part: 250 could be 250 ohms or 250 kilohms, and
            m is milli. Nothing is guessed.
            """,
            Bad: """
            pot vol [|250|] audio
            """,
            Good: """
            pot vol 250k audio
            """,
            Mend: "Write the value as the message offers it."
        );
}
