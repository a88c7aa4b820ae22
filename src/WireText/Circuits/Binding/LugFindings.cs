using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What can be wrong with the name of a part or a lug.</summary>
internal static class LugFindings
{
    public static FindingDescription UnknownPart { get; } =
        new(
            Id: "unknown-part",
            Title: "no part has that name",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            The line names a part that is not in this file. What leads to it is not looked at any further.
            """,
            Bad: """
            jack out mono
            wire [|uot|].tip to out.sleeve white
            """,
            Good: """
            jack out mono
            wire out.tip to out.sleeve white
            """,
            Mend: "Correct the name, or write the part's line."
        );

    public static FindingDescription UnknownLug { get; } =
        new(
            Id: "unknown-lug",
            Title: "a part has no such lug",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Which lugs there are is decided by the part's model. The message lists them.
            """,
            Bad: """
            jack out mono
            wire out.[|tpi|] to out.sleeve white
            """,
            Good: """
            jack out mono
            wire out.tip to out.sleeve white
            """,
            Mend: "Write a lug that the part has."
        );

    public static FindingDescription WhichLug { get; } =
        new(
            Id: "which-lug",
            Title: "a part is named where one of its lugs is meant",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A part with several lugs cannot be soldered to as a whole. Only a part with one lug, such as a splice or
            a plate, is its own lug.
            """,
            Bad: """
            jack out mono
            pot vol 250k audio
            wire [|vol|] to out.sleeve black
            """,
            Good: """
            jack out mono
            pot vol 250k audio
            wire vol.case to out.sleeve black
            """,
            Mend: "Write the lug after a dot."
        );
}
