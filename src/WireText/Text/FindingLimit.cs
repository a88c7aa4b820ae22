using System.Collections.Immutable;

namespace WireText.Text;

/// <summary>How many findings of one file are kept. Nobody reads more, and each takes memory in every form in which it is told.</summary>
public static class FindingLimit
{
    /// <summary>Chosen: two for each part of the largest circuit.</summary>
    public const int MostKept = 20_000;

    internal static FindingDescription TooMany { get; } =
        new(
            Id: "too-many-findings",
            Title: "more was found than is told at once",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Of one file 20,000 findings are told. What comes after them is not known to be right: it was left out.
            """,
            Bad: "",
            Good: "",
            Mend: "Mend what is told, and check again."
        );

    /// <param name="first">Of those that are left out.</param>
    internal static Finding LeftOutFrom(SourceLocation first) =>
        TooMany.At(
            first,
            $"{MostKept} findings are told of one file; from here on there are more",
            "mend those that are told, and check again"
        );

    /// <summary>The first of them, and that there are more; all of them where they are few enough.</summary>
    /// <param name="findings">In the order in which they are told. Their collectors may have left some out already.</param>
    public static ImmutableArray<Finding> Keep(ImmutableArray<Finding> findings)
    {
        if (findings.Length <= MostKept)
        {
            return findings;
        }

        var told = findings.Where(finding => finding.Description != TooMany).Take(MostKept + 1).ToImmutableArray();
        return told.Length <= MostKept ? findings : [.. told.Take(MostKept), LeftOutFrom(told[MostKept].Location)];
    }
}
