using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What can be wrong with a place that is given to a part.</summary>
internal static class PlaceFindings
{
    public static FindingDescription BadTurn { get; } =
        new(
            Id: "bad-turn",
            Title: "a part is turned by an angle that is not drawn",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Parts are drawn upright or turned by quarters.
            """,
            Bad: """
            jack out
            [|place out at 1,2 turned 45|]
            """,
            Good: """
            jack out
            place out at 1,2 turned 90
            """,
            Mend: "Write 0, 90, 180 or 270."
        );
}
