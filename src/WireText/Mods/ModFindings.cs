using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Mods;

/// <summary>What can be wrong with a mod and what it stands on.</summary>
internal static class ModFindings
{
    public static FindingDescription CannotReadBase { get; } =
        new(
            Id: "cannot-read-base",
            Title: "what a mod stands on cannot be read",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            The file is not where it was looked for: below the folder of the mod, or in a folder of parts. Without it nothing
            of the mod can be judged.
            """,
            Bad: """
            base [|"stock.wiring"|]
            """,
            Good: """
            jack out mono
            """,
            Mend: "Put the file below the mod's folder, or name its folder with --parts."
        );

    public static FindingDescription BaseGoesRound { get; } =
        new(
            Id: "base-goes-round",
            Title: "a mod stands on itself",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: "One mod stands on a second, and that in the end on the first: there is no circuit under them.",
            Bad: "",
            Good: "",
            Mend: "Let one of them stand on a file that is no mod."
        );

    public static FindingDescription BaseTooDeep { get; } =
        new(
            Id: "base-too-deep",
            Title: "mods stand on one another too deep",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: "Nobody could follow what is left of the first circuit.",
            Bad: "",
            Good: "",
            Mend: "Write the circuit out with wiretext flatten, and stand the mod on that."
        );

    public static FindingDescription BaseLate { get; } =
        new(
            Id: "base-late",
            Title: "a mod names what it stands on too late",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: "Who reads a mod must know first what it changes.",
            Bad: "",
            Good: "",
            Mend: "Write the base before the first part."
        );

    public static FindingDescription NotOnBase { get; } =
        new(
            Id: "not-on-base",
            Title: "what a mod takes out is not there",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A mod lifts wires, and drops and replaces parts, of the circuit that it stands on. What is not there cannot be taken
            out: the circuit was changed since, a name is misspelt, or the file stands on nothing.
            """,
            Bad: """
            jack out mono
            [|lift out.tip|]
            """,
            Good: """
            jack out mono
            """,
            Mend: "Write the lugs and names as they stand in the file that the mod stands on."
        );

    public static FindingDescription StillExpected { get; } =
        new(
            Id: "still-expected",
            Title: "what is expected speaks of a part that a mod drops",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            What the circuit below promises holds for the mod as well, but for what it drops by name. A promise about a part
            that is gone can be neither kept nor broken.
            """,
            Bad: "",
            Good: "",
            Mend: "Drop it too, and write what the mod promises instead."
        );

    /// <summary>All of them, in the order in which a file is read.</summary>
    public static ImmutableArray<FindingDescription> All { get; } =
    [CannotReadBase, BaseGoesRound, BaseTooDeep, BaseLate, NotOnBase, StillExpected];
}
