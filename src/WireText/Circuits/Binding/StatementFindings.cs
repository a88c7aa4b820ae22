using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What can be wrong with any statement of a circuit.</summary>
internal static class StatementFindings
{
    public static FindingDescription SaidTwice { get; } =
        new(
            Id: "said-twice",
            Title: "the same thing is said twice",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A value, a title or a place is said once. Of two, nobody could tell which is meant.
            """,
            Bad: """
            circuit "one"
            circuit [|"two"|]
            jack out mono
            """,
            Good: """
            circuit "one"
            jack out mono
            """,
            Mend: "Keep one of the two."
        );
}
