using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Checks.Reading;

/// <summary>What can be wrong with a line by itself, whatever it says.</summary>
internal static class LineFindings
{
    public static ImmutableArray<CheckDescription> All { get; } =
    [
        new(
            Id: "unknown-statement",
            Title: "a line starts with a word that means nothing",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Every line starts with a statement, such as wire or expect, or with a kind of part. A word that is
            neither is mostly a slip; it is never passed over as a remark.
            """,
            Bad: """
            [|wrie|] neck.hot to out.tip white
            """,
            Good: """
            # wire neck.hot to out.tip white
            """,
            Mend: "Correct the first word; a remark starts with #."
        ),
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
        ),
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
        ),
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
        ),
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
        ),
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
        ),
        new(
            Id: "too-large",
            Title: "there is more than can be read at once",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A file has 16 MiB at most, and a circuit so many parts and stretches of wire as the message says. What is
            larger was made by a program, or by mistake.
            """,
            Bad: "",
            Good: "",
            Mend: "Divide it into several files."
        ),
        new(
            Id: "too-large-to-draw",
            Title: "there are more wires than one drawing holds",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Past 2,000 stretches of wire a drawing can be made but not read. The circuit is checked all the same.
            """,
            Bad: "",
            Good: "",
            Mend: "Divide the circuit into several files."
        ),
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
        ),
        new(
            Id: "not-checked-yet",
            Title: "a statement is read and kept, but not checked",
            Severity: Severity.Info,
            Group: FindingGroup.Text,
            Why: """
            The statement is part of the language and this version does nothing with it yet. It is said once for each
            kind, so that nobody relies on it. This is a remark, not a finding.
            """,
            Bad: """
            jack out
            [|lift out.tip|]
            """,
            Good: """
            jack out
            """,
            Mend: "Nothing is to be done."
        ),
        new(
            Id: "unknown-check",
            Title: "an allowance names a check that does not exist",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A line that allows a finding names it as it stands in brackets behind the message. With a slip in the
            name nothing would be allowed.
            """,
            Bad: """
            jack out mono
            allow [|unconected-lug|] at out.tip "not used"
            """,
            Good: """
            jack out mono
            allow unconnected-lug at out.tip "wired on the bench"
            """,
            Mend: "Write the name as it stands behind the finding."
        ),
        new(
            Id: "allow-unused",
            Title: "an allowance allows nothing that is found",
            Severity: Severity.Warning,
            Group: FindingGroup.Text,
            Why: """
            A finding was allowed once, and the circuit has changed since. The line that is left would hide the same
            finding when it comes back, where nobody has looked. It is not said where its check could not look at
            every position.
            """,
            Bad: """
            pickup neck single-coil
            jack out mono
            metal saddle
            wire neck.hot to out.tip white
            wire neck.ground to out.sleeve black
            wire saddle to out.sleeve black
            allow [|floating-ground|] at saddle "nylon"
            """,
            Good: """
            pickup neck single-coil
            jack out mono
            metal saddle
            wire neck.hot to out.tip white
            wire neck.ground to out.sleeve black
            allow floating-ground at saddle "nylon"
            """,
            Mend: "Take the line out, or name the finding and the place that are meant."
        ),
    ];
}
