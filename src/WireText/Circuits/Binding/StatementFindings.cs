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

    public static FindingDescription NotCheckedYet { get; } =
        new(
            Id: "not-checked-yet",
            Title: "a statement is read and kept, but not checked",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            The statement is part of the language and this version does nothing with it yet: what the file says is not what is
            checked. It is said once for each kind. A file that was not judged must not pass for one in which nothing is found.
            """,
            Bad: """
            jack out
            [|lift out.tip|]
            """,
            Good: """
            jack out
            """,
            Mend: "Write the whole circuit into the file, without this statement, until mods are built."
        );
}
