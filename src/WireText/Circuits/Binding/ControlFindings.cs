using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What can be wrong with positions, by name or by number.</summary>
internal static class ControlFindings
{
    public static FindingDescription ReservedName { get; } =
        new(
            Id: "reserved-name",
            Title: "a position has a name that means something else",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            The word any stands for each of the positions, so it can name none of them.
            """,
            Bad: """
            switch sel lever-3way
            positions sel neck [|any|] bridge
            """,
            Good: """
            switch sel lever-3way
            positions sel neck both bridge
            """,
            Mend: "Choose another word."
        );

    public static FindingDescription WrongCount { get; } =
        new(
            Id: "wrong-count",
            Title: "not all positions of a control are named",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Own words for positions are given for all of them, in order: from then on only these words count.
            """,
            Bad: """
            switch sel lever-3way
            positions sel [|neck bridge|]
            """,
            Good: """
            switch sel lever-3way
            positions sel neck both bridge
            """,
            Mend: "Name every position."
        );

    public static FindingDescription NoPositions { get; } =
        new(
            Id: "no-positions",
            Title: "a part without positions is given some",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Only a switch, a pull, a button or a plug has positions to name. A dial turns from 0 to 10.
            """,
            Bad: """
            pot vol 250k audio
            positions [|vol|] a b
            """,
            Good: """
            pot vol push-pull 250k audio
            positions vol.pull full cut
            """,
            Mend: "Name the control that is meant."
        );

    public static FindingDescription UnknownPosition { get; } =
        new(
            Id: "unknown-position",
            Title: "a control has no such position",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            The position must be one that the control has, by your own words for it when there are some. A dial
            stands from 0 to 10.
            """,
            Bad: """
            switch sel lever-3way
            rest sel=[|4|]
            """,
            Good: """
            switch sel lever-3way
            rest sel=3
            """,
            Mend: "Write one of the positions that the message lists."
        );
}
