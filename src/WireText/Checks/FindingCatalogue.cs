using System.Collections.Immutable;
using WireText.Circuits.Binding;
using WireText.Text;

namespace WireText.Checks;

/// <summary>A description of every kind of finding there is: what reading a file gives, then the checks.</summary>
public static class FindingCatalogue
{
    /// <summary>What comes of reading, binding and drawing, in the order in which a file is read.</summary>
    public static ImmutableArray<FindingDescription> OfReading { get; } =
    [
        .. ReadingFindings.OfLines,
        AllowanceFindings.UnknownCheck,
        AllowanceFindings.AllowUnused,
        .. ReadingFindings.OfParts,
        .. ReadingFindings.OfWires,
        .. ReadingFindings.OfDefinitions,
    ];

    public static ImmutableArray<FindingDescription> All { get; } =
    [.. OfReading, .. CheckList.All.Select(check => check.Description)];

    /// <summary>The description of that name, upper and lower case alike, or null.</summary>
    public static FindingDescription? Find(string id) =>
        All.FirstOrDefault(description => string.Equals(description.Id, id, StringComparison.OrdinalIgnoreCase));
}
