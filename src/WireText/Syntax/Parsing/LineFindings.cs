using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>What can be wrong with a line by itself, whatever it says.</summary>
internal static class LineFindings
{
    public static FindingDescription UnknownStatement { get; } =
        new(
            Id: "unknown-statement",
            Title: "a line starts with a word that means nothing",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Every line starts with a statement, such as wire or expect, or with a kind of part. A word that is
            neither is mostly a slip; it is never passed over as a comment.
            """,
            Bad: """
            [|wrie|] neck.hot to out.tip white
            """,
            Good: """
            # wire neck.hot to out.tip white
            """,
            Mend: "Correct the first word; a comment starts with #."
        );

    public static FindingDescription Expected { get; } =
        new(
            Id: "expected",
            Title: "a line breaks off or goes on with the wrong word",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Something else must stand at this place: the word to, a colour, a lug. The rest of the file is read all
            the same.
            """,
            Bad: """
            jack out mono
            wire out.tip [|out.sleeve|] white
            """,
            Good: """
            jack out mono
            wire out.tip to out.sleeve white
            """,
            Mend: "Write what the message names at the marked place."
        );

    public static FindingDescription UnclosedText { get; } =
        new(
            Id: "unclosed-text",
            Title: "a quote is opened and not closed",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Words in quotes end on the line they start on. Without the second quote the rest of the line would be
            part of them.
            """,
            Bad: """
            circuit [|"One pickup|]
            """,
            Good: """
            circuit "One pickup"
            """,
            Mend: "Write the closing quote."
        );

    public static FindingDescription StrayCharacter { get; } =
        new(
            Id: "stray-character",
            Title: "a line has a character that cannot be seen",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Text copied from elsewhere can carry characters that no screen shows. Two names that look the same would
            then differ.
            """,
            Bad: "",
            Good: "",
            Mend: "Delete the place and type it again."
        );

    public static FindingDescription StrayIndent { get; } =
        new(
            Id: "stray-indent",
            Title: "an indented line belongs to nothing",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Lines are indented under define and under arrange alone. This one has neither above it.
            """,
            Bad: """
            jack out mono
                [|pot|] vol 250k audio
            """,
            Good: """
            jack out mono
            pot vol 250k audio
            """,
            Mend: "Move the line to the left edge, or write the line above it that it belongs to."
        );

    public static FindingDescription TooDeep { get; } =
        new(
            Id: "too-deep",
            Title: "brackets stand too deep",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A claim about coils has brackets where series and parallel are mixed. More than thirty-two of them inside
            one another are no circuit that anybody winds.
            """,
            Bad: "",
            Good: "",
            Mend: "Write the claim with fewer brackets."
        );

    public static FindingDescription TooLarge { get; } =
        new(
            Id: "too-large",
            Title: "there is more than can be read at once",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A file has 16 MiB and 500,000 lines at most, and a circuit so many parts, lugs, insides and stretches of wire as
            the message says. What is larger was made by a program, or by mistake.
            """,
            Bad: "",
            Good: "",
            Mend: "Divide it into several files."
        );
}
