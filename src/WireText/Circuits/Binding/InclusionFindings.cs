using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What can be wrong with the models a circuit has, and with the files they come from.</summary>
internal static class InclusionFindings
{
    public static FindingDescription ModelTaken { get; } =
        new(
            Id: "model-taken",
            Title: "a model is defined twice",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A model has one definition. The standard parts cannot be defined again: a circuit would then mean another
            thing on another bench.
            """,
            Bad: """
            define switch [|lever-3way|]
                lugs a 0,0 b 1,1
                position 1 a+b
            """,
            Good: """
            define switch my-lever
                lugs a 0,0 b 1,1
                position 1 a+b
            """,
            Mend: "Give it a name of its own."
        );

    public static FindingDescription ColourTaken { get; } =
        new(
            Id: "colour-taken",
            Title: "a name or a code of a colour means another colour",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A colour's name and its code mean one colour each. With two of them nobody at the bench could tell from a tag which
            wire is meant.
            """,
            Bad: """
            jack out mono
            colour cream [|WH|] #efe3c2
            wire out.tip to out.sleeve cream
            """,
            Good: """
            jack out mono
            colour cream CR #efe3c2
            wire out.tip to out.sleeve cream
            """,
            Mend: "Give it a name and a code of its own."
        );

    public static FindingDescription CannotInclude { get; } =
        new(
            Id: "cannot-include",
            Title: "a file cannot be included",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            The file is not where it was looked for: below the folder of the file that names it, or in a folder of
            parts.
            """,
            Bad: """
            include [|"mine.wiring"|]
            """,
            Good: """
            # include "mine.wiring"
            """,
            Mend: "Put the file there, or name its folder with --parts."
        );

    public static FindingDescription IncludeTooDeep { get; } =
        new(
            Id: "include-too-deep",
            Title: "files include one another too deep",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            One file includes a second, that a third, and so on. Mostly one of them includes itself in the end.
            """,
            Bad: "",
            Good: "",
            Mend: "Include the file with the definitions directly."
        );

    public static FindingDescription OnlyDefinitions { get; } =
        new(
            Id: "only-definitions",
            Title: "an included file has more than definitions",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            An include takes the parts and the colours that a file defines. A part or a wire in it would be in no circuit.
            """,
            Bad: "",
            Good: "",
            Mend: "Move the line to the circuit that includes the file."
        );
}
