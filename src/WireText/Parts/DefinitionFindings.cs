using WireText.Text;

namespace WireText.Parts;

/// <summary>What can be wrong with the definition of a part.</summary>
internal static class DefinitionFindings
{
    public static FindingDescription BadDefinition { get; } =
        new(
            Id: "bad-definition",
            Title: "a part's definition does not hold together",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A line of the definition names a lug that the part lacks, says a thing twice, or leaves out what every
            part needs. The message says which.
            """,
            Bad: """
            define switch mine
                lugs a 0,0 b 1,1
                position 1 a+[|c|]
            """,
            Good: """
            define switch mine
                lugs a 0,0 b 1,1
                position 1 a+b
            """,
            Mend: "Correct the line that is marked."
        );
}
