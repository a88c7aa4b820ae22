using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Syntax.Nodes;

/// <summary>One statement: what a line says. See <c>docs/language</c> for each.</summary>
public abstract record StatementSyntax(SourceLocation Location) : SyntaxNode(Location)
{
    /// <summary>True when the line had a finding: what could be kept of it is here so that its name stays known.</summary>
    public bool IsBroken { get; init; }
}

public sealed record CircuitSyntax(TextSyntax Title, SourceLocation Location) : StatementSyntax(Location);

public sealed record RemarkSyntax(TextSyntax Words, SourceLocation Location) : StatementSyntax(Location);

/// <summary>A line of the title block: for whom, when, by whom.</summary>
/// <param name="Key">What the words are, such as <c>customer</c>.</param>
public sealed record AboutSyntax(WordSyntax Key, TextSyntax Words, SourceLocation Location) : StatementSyntax(Location);

public sealed record IncludeSyntax(TextSyntax Path, SourceLocation Location) : StatementSyntax(Location);

public sealed record BaseSyntax(TextSyntax Path, SourceLocation Location) : StatementSyntax(Location);

public sealed record FinishSyntax(WordSyntax Finish, SourceLocation Location) : StatementSyntax(Location);

/// <param name="Code">Null on a broken line.</param>
/// <param name="Paint">With its <c>#</c>; null on a broken line.</param>
public sealed record ColourSyntax(WordSyntax Name, WordSyntax? Code, WordSyntax? Paint, SourceLocation Location)
    : StatementSyntax(Location);

public sealed record LoadSyntax(ImmutableArray<PairSyntax> Pairs, SourceLocation Location) : StatementSyntax(Location);

public sealed record RestSyntax(ImmutableArray<PairSyntax> Pairs, SourceLocation Location) : StatementSyntax(Location);

/// <summary>What follows a part's name: a <see cref="WordSyntax"/>, <see cref="PairSyntax"/> or <see cref="TextSyntax"/>.</summary>
/// <param name="Arguments">In the order written: models, values, words, pairs, remarks.</param>
public sealed record PartSyntax(
    WordSyntax Kind,
    WordSyntax Name,
    ImmutableArray<SyntaxNode> Arguments,
    FromToSyntax? Hangs,
    SourceLocation Location
) : StatementSyntax(Location);

/// <summary><c>from LUG to LUG</c> at the end of a part.</summary>
public sealed record FromToSyntax(LugSyntax From, LugSyntax To, SourceLocation Location) : SyntaxNode(Location);

public sealed record ReplaceSyntax(WordSyntax Name, ImmutableArray<SyntaxNode> Arguments, SourceLocation Location)
    : StatementSyntax(Location);

public sealed record WireSyntax(
    ImmutableArray<LugSyntax> Lugs,
    WordSyntax Colour,
    WordSyntax? Sleeved,
    ImmutableArray<PairSyntax> Pairs,
    SourceLocation Location
) : StatementSyntax(Location);

public sealed record SpliceSyntax(
    WordSyntax Name,
    ImmutableArray<LugSyntax> Lugs,
    WordSyntax? Sleeved,
    TextSyntax? Remark,
    SourceLocation Location
) : StatementSyntax(Location);

public sealed record CoreSyntax(LugSyntax From, LugSyntax To, WordSyntax Colour, SourceLocation Location)
    : SyntaxNode(Location);

/// <param name="Twisted">The word, when the cores are twisted and have no braid.</param>
/// <param name="Braid">The braid's ends, when there is one.</param>
public sealed record CableSyntax(
    ImmutableArray<CoreSyntax> Cores,
    WordSyntax? Twisted,
    BraidSyntax? Braid,
    ImmutableArray<PairSyntax> Pairs,
    SourceLocation Location
) : StatementSyntax(Location);

/// <param name="From">Null when this end is <c>cut</c>.</param>
/// <param name="To">Null when this end is <c>cut</c>.</param>
public sealed record BraidSyntax(LugSyntax? From, LugSyntax? To, SourceLocation Location) : SyntaxNode(Location);

public sealed record TouchSyntax(ImmutableArray<LugSyntax> Lugs, SourceLocation Location) : StatementSyntax(Location);

public sealed record PositionsSyntax(LugSyntax Control, ImmutableArray<WordSyntax> Names, SourceLocation Location)
    : StatementSyntax(Location);

public sealed record PlaceSyntax(WordSyntax Name, PointSyntax? At, double? Turned, SourceLocation Location)
    : StatementSyntax(Location);

/// <param name="Rows">The indented lines below, each a list of part names with <c>.</c> for an empty cell.</param>
public sealed record ArrangeSyntax(ImmutableArray<ArrangeRowSyntax> Rows, SourceLocation Location)
    : StatementSyntax(Location);

public sealed record ArrangeRowSyntax(ImmutableArray<WordSyntax> Cells, SourceLocation Location) : SyntaxNode(Location);

/// <param name="Jack">The jack that is listened at; null where the line names none.</param>
/// <param name="State">Empty for <c>expect rest</c>.</param>
public sealed record ExpectSyntax(
    WordSyntax? Jack,
    ImmutableArray<PairSyntax> State,
    ImmutableArray<ClaimSyntax> Claims,
    SourceLocation Location
) : StatementSyntax(Location);

public sealed record AllowSyntax(WordSyntax Check, LugSyntax? At, TextSyntax Reason, SourceLocation Location)
    : StatementSyntax(Location);

/// <param name="Controls">The controls whose lugs are open.</param>
/// <param name="At">Lugs where a wire may land too; empty when the line names none.</param>
public sealed record FindSyntax(
    ImmutableArray<LugSyntax> Controls,
    ImmutableArray<LugSyntax> At,
    SourceLocation Location
) : StatementSyntax(Location);

/// <summary>What was measured or heard at the bench, on an instrument that does not behave.</summary>
/// <param name="What">Empty where the line tells the instrument's past.</param>
public sealed record FoundSyntax(FoundPlaceSyntax At, ImmutableArray<FoundWhatSyntax> What, SourceLocation Location)
    : StatementSyntax(Location);

public sealed record LiftSyntax(LugSyntax Lug, LugSyntax? To, SourceLocation Location) : StatementSyntax(Location);

public sealed record DropSyntax(WordSyntax Name, SourceLocation Location) : StatementSyntax(Location);

/// <param name="Jack">The jack of the line that goes; null where that line names none.</param>
/// <param name="State">Empty for <c>drop expect rest</c>.</param>
public sealed record DropExpectSyntax(WordSyntax? Jack, ImmutableArray<PairSyntax> State, SourceLocation Location)
    : StatementSyntax(Location);

/// <param name="Lines">The indented lines below.</param>
public sealed record DefineSyntax(
    WordSyntax Kind,
    WordSyntax Model,
    TextSyntax? Remark,
    ImmutableArray<InsideSyntax> Lines,
    SourceLocation Location
) : StatementSyntax(Location);
