using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What is said of controls whose wires are to be found.</summary>
internal static class OpenFindings
{
    public static FindingDescription ToBeFound { get; } =
        new(
            Id: "to-be-found",
            Title: "the wires of a control are to be found",
            Severity: Severity.Note,
            Group: FindingGroup.Text,
            Why: """
            A find line leaves the lugs of a control open. Until its wires are there nobody can say what the positions do, so
            the checks of what wires make wait, and claims are neither proved nor refuted.
            """,
            Bad: """
            switch sel spdt
            [|find sel|]
            """,
            Good: """
            jack out mono
            """,
            Mend: "Ask for the wires, and put them in place of the line: wiretext propose FILE --write."
        );
}
