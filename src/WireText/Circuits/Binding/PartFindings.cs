using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What can be wrong with a line that makes a part.</summary>
internal static class PartFindings
{
    public static FindingDescription NameTaken { get; } =
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
        );

    public static FindingDescription UnknownKind { get; } =
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
        );

    public static FindingDescription UnknownModel { get; } =
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
        );

    public static FindingDescription MissingModel { get; } =
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
        );

    public static FindingDescription UnknownWord { get; } =
        new(
            Id: "unknown-word",
            Title: "a word on a part's line means nothing there",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Every word must be known, so that a typo is never taken for a remark, which stands in quotes.
            """,
            Bad: """
            pot vol 250k [|auido|]
            """,
            Good: """
            pot vol 250k audio
            """,
            Mend: "Correct the word, or take it out."
        );

    public static FindingDescription UnknownKey { get; } =
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
        );

    public static FindingDescription MissingValue { get; } =
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
        );

    public static FindingDescription BareTaperLetter { get; } =
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
        );
}
