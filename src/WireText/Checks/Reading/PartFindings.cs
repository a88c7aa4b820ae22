using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Checks.Reading;

/// <summary>What can be wrong with a line that names a part.</summary>
internal static class PartFindings
{
    public static ImmutableArray<CheckDescription> All { get; } =
    [
        new(
            Id: "name-taken",
            Title: "two parts have one name",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Wires find their part by its name; upper and lower case are one. With two parts of a name they could go
            to either.
            """,
            Bad: """
            pot vol 250k audio
            pot [|vol|] 500k audio
            """,
            Good: """
            pot vol 250k audio
            pot tone 500k audio
            """,
            Mend: "Give each part a name of its own."
        ),
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
        ),
        new(
            Id: "unknown-kind",
            Title: "no kind of part is called that",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            The first word says what a part is. A kind of your own is made with define.
            """,
            Bad: """
            [|pikup|] neck single-coil
            """,
            Good: """
            pickup neck single-coil
            """,
            Mend: "Correct the word, or define the part."
        ),
        new(
            Id: "unknown-model",
            Title: "no part of that kind has that model",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            The model decides which lugs there are and which contacts close. There is none of that name, neither
            among the standard parts nor in this file.
            """,
            Bad: """
            switch sel [|lever-3wy|]
            """,
            Good: """
            switch sel lever-3way
            """,
            Mend: "Correct the model, or define it."
        ),
        new(
            Id: "missing-model",
            Title: "a part lacks its model",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Switches differ too much to take one for granted: poles, throws, and what closes between. The same holds
            for buttons.
            """,
            Bad: """
            switch [|sel|]
            """,
            Good: """
            switch sel lever-3way
            """,
            Mend: "Write the model after the name."
        ),
        new(
            Id: "unknown-word",
            Title: "a word on a part's line means nothing there",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Every word must be known, so that a typo is never taken for a remark. A remark stands in quotes.
            """,
            Bad: """
            pot vol 250k [|auido|]
            """,
            Good: """
            pot vol 250k audio
            """,
            Mend: "Correct the word, or take it out."
        ),
        new(
            Id: "unknown-key",
            Title: "a key on a line means nothing there",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A word before an equals sign must be one that this part, or this wire, has. Otherwise the figure behind
            it would be lost.
            """,
            Bad: """
            pickup neck single-coil [|drc|]=6k
            """,
            Good: """
            pickup neck single-coil dcr=6k
            """,
            Mend: "Correct the key, or take it out."
        ),
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
        ),
        new(
            Id: "missing-value",
            Title: "a part lacks a value that it needs",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A pot, a capacitor, a resistor and an inductor do nothing to the sound that could be worked out without
            their value.
            """,
            Bad: """
            cap [|dark|]
            """,
            Good: """
            cap dark 22n
            """,
            Mend: "Write the value after the name."
        ),
        new(
            Id: "bare-taper-letter",
            Title: "a taper is given by a letter alone",
            Severity: Severity.Note,
            Group: FindingGroup.Text,
            Why: """
            A and B have changed places between schemes and makers. Written as a word a taper means one thing.
            """,
            Bad: """
            pot vol 250k [|A|]
            """,
            Good: """
            pot vol 250k audio
            """,
            Mend: "Write linear or audio, whichever is meant."
        ),
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
        ),
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
        ),
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
        ),
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
        ),
    ];
}
