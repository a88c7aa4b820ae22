using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Syntax.Nodes;

/// <summary>Where something was found at the bench: what stands before the colon of <c>found</c>.</summary>
public abstract record FoundPlaceSyntax(SourceLocation Location) : SyntaxNode(Location);

/// <summary><c>worked</c> or <c>fresh</c>: what is known of the instrument's past. Nothing follows it.</summary>
public sealed record FoundPastSyntax(WordSyntax Word) : FoundPlaceSyntax(Word.Location);

/// <summary>At the plug of a lead, in a state.</summary>
/// <param name="Jack">The jack that the lead is in; null where the line names none.</param>
/// <param name="State">Empty for everything at rest.</param>
/// <param name="Turning">The dial that was turned from end to end; null where none was.</param>
public sealed record FoundAtPlugSyntax(
    WordSyntax? Jack,
    ImmutableArray<PairSyntax> State,
    LugSyntax? Turning,
    SourceLocation Location
) : FoundPlaceSyntax(Location);

/// <summary>From one lug to another, or from the plug's sleeve to bare metal.</summary>
/// <param name="State">Empty where the line names none.</param>
public sealed record FoundBetweenSyntax(
    ImmutableArray<PairSyntax> State,
    LugSyntax From,
    LugSyntax To,
    SourceLocation Location
) : FoundPlaceSyntax(Location);

/// <summary>Across one joint: a probe on the lug, the other on the wire beside it.</summary>
/// <param name="Of">A lug where the same wire ends, which tells it from others on the lug.</param>
public sealed record FoundAtJointSyntax(LugSyntax Lug, LugSyntax Of, SourceLocation Location)
    : FoundPlaceSyntax(Location);

/// <summary>One part or coil by itself, an end of it lifted.</summary>
public sealed record FoundAloneSyntax(LugSyntax Name, SourceLocation Location) : FoundPlaceSyntax(Location);

/// <summary>The lead alone, out of the jack.</summary>
public sealed record FoundAtLeadSyntax(WordSyntax Word) : FoundPlaceSyntax(Word.Location);

/// <summary>The battery.</summary>
/// <param name="Name">Which; null where the line names none.</param>
public sealed record FoundAtCellSyntax(LugSyntax? Name, SourceLocation Location) : FoundPlaceSyntax(Location);

/// <summary>What was found there.</summary>
public abstract record FoundWhatSyntax(SourceLocation Location) : SyntaxNode(Location);

/// <summary>What a meter showed: a value, or the word <c>open</c>.</summary>
/// <param name="IsHighest">True for the highest while a dial was turned.</param>
public sealed record FoundReadingSyntax(WordSyntax Value, bool IsHighest, SourceLocation Location)
    : FoundWhatSyntax(Location);

/// <summary>The coils that sounded when they were tapped.</summary>
public sealed record FoundCoilsSyntax(ImmutableArray<LugSyntax> Coils, SourceLocation Location)
    : FoundWhatSyntax(Location);

/// <summary>A word such as <c>dead</c>, <c>thin</c> or <c>good</c>.</summary>
public sealed record FoundWordSyntax(WordSyntax Word) : FoundWhatSyntax(Word.Location);

/// <summary>A voltage.</summary>
public sealed record FoundVoltsSyntax(WordSyntax Value) : FoundWhatSyntax(Value.Location);
