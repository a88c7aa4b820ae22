using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Syntax.Nodes;

/// <summary>One indented line under <c>define</c>.</summary>
public abstract record InsideSyntax(SourceLocation Location) : SyntaxNode(Location);

/// <summary><c>body round 24</c> or <c>body box 46,16</c>. <paramref name="Height"/> is null when round.</summary>
public sealed record BodySyntax(double Width, double? Height, SourceLocation Location) : InsideSyntax(Location);

/// <summary><c>hole round 9.5</c> or <c>hole slot 26,2.5</c>, each with <c>at X,Y</c> or without. <paramref name="Height"/> is null when round.</summary>
public sealed record HoleSyntax(double Width, double? Height, PointSyntax? At, SourceLocation Location)
    : InsideSyntax(Location);

/// <summary><c>lugs …</c> or <c>leads …</c>, each name with its point where one is given.</summary>
public sealed record TerminalsSyntax(
    WordSyntax Keyword,
    ImmutableArray<(WordSyntax Name, PointSyntax? At)> Terminals,
    SourceLocation Location
) : InsideSyntax(Location);

/// <summary><c>metal</c>, <c>spare</c> or <c>inner</c> with names.</summary>
public sealed record NamesSyntax(WordSyntax Keyword, ImmutableArray<WordSyntax> Names, SourceLocation Location)
    : InsideSyntax(Location);

public sealed record BetweenSyntax(WordSyntax Manner, WordSyntax? Endless, SourceLocation Location)
    : InsideSyntax(Location);

public sealed record JoinedSyntax(ImmutableArray<JointSyntax> Joints, SourceLocation Location) : InsideSyntax(Location);

public sealed record CoilInsideSyntax(
    WordSyntax Start,
    WordSyntax Finish,
    WordSyntax? Name,
    ImmutableArray<PairSyntax> Pairs,
    SourceLocation Location
) : InsideSyntax(Location);

public sealed record TrackInsideSyntax(
    WordSyntax Low,
    WordSyntax Wiper,
    WordSyntax High,
    WordSyntax? Name,
    ImmutableArray<PairSyntax> Pairs,
    SourceLocation Location
) : InsideSyntax(Location);

/// <summary><c>position 1 A0+A1</c> or <c>position pull=in A0+A1</c>.</summary>
/// <param name="Control">Null when the control carries the part's own name.</param>
public sealed record PositionSyntax(
    WordSyntax? Control,
    WordSyntax Position,
    ImmutableArray<JointSyntax> Joints,
    SourceLocation Location
) : InsideSyntax(Location);

/// <summary><c>rest POSITION</c> or <c>rest CONTROL=POSITION</c>; a number is where the dials rest.</summary>
public sealed record RestInsideSyntax(WordSyntax? Control, WordSyntax Position, SourceLocation Location)
    : InsideSyntax(Location);

public sealed record AmpInsideSyntax(
    WordSyntax In,
    WordSyntax Out,
    WordSyntax Common,
    ImmutableArray<PairSyntax> Pairs,
    SourceLocation Location
) : InsideSyntax(Location);

/// <summary><c>resistor</c>, <c>cap</c>, <c>inductor</c> or <c>battery</c> between two points, with a value or without.</summary>
public sealed record TwoLeadInsideSyntax(
    WordSyntax Keyword,
    WordSyntax First,
    WordSyntax Second,
    WordSyntax? Value,
    SourceLocation Location
) : InsideSyntax(Location);
