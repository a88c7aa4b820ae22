using System.Collections.Immutable;
using WireText.Mods;
using WireText.Parts;
using WireText.Quantities;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Every kind of finding that comes of reading a file and making its circuit, in the order of the table in the docs.</summary>
/// <remarks>Each is declared where it is found; a test holds these lists to be complete.</remarks>
public static class ReadingFindings
{
    /// <summary>Of a line by itself, and of how much there is.</summary>
    public static ImmutableArray<FindingDescription> OfLines { get; } =
    [
        LineFindings.UnknownStatement,
        LineFindings.Expected,
        LineFindings.UnclosedText,
        LineFindings.StrayCharacter,
        LineFindings.StrayIndent,
        LineFindings.TooDeep,
        LineFindings.TooLarge,
        FindingLimit.TooMany,
        CircuitLimits.TooLargeToDraw,
        StatementFindings.SaidTwice,
    ];

    /// <summary>Of a line that makes a part, names its positions or places it.</summary>
    public static ImmutableArray<FindingDescription> OfParts { get; } =
    [
        PartFindings.NameTaken,
        ControlFindings.ReservedName,
        PartFindings.UnknownKind,
        PartFindings.UnknownModel,
        PartFindings.MissingModel,
        PartFindings.UnknownWord,
        PartFindings.UnknownKey,
        ValueFindings.BadValue,
        PartFindings.MissingValue,
        PartFindings.BareTaperLetter,
        ControlFindings.WrongCount,
        ControlFindings.NoPositions,
        ControlFindings.UnknownPosition,
        PlaceFindings.BadTurn,
    ];

    /// <summary>Of a line that joins lugs.</summary>
    public static ImmutableArray<FindingDescription> OfWires { get; } =
    [
        LugFindings.UnknownPart,
        LugFindings.UnknownLug,
        LugFindings.WhichLug,
        WireFindings.UnknownColour,
        WireFindings.LeadInARun,
        WireFindings.LeadEndsTwice,
        WireFindings.LeadToLead,
        WireFindings.NotTwoLeads,
        OpenFindings.ToBeFound,
        FoundFindings.BadFound,
    ];

    /// <summary>Of parts of one's own, and of the files they come from.</summary>
    public static ImmutableArray<FindingDescription> OfDefinitions { get; } =
    [
        DefinitionFindings.BadDefinition,
        InclusionFindings.ModelTaken,
        InclusionFindings.ColourTaken,
        InclusionFindings.CannotInclude,
        InclusionFindings.IncludeTooDeep,
        InclusionFindings.OnlyDefinitions,
        .. ModFindings.All,
    ];
}
