using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Syntax.Nodes;

/// <summary>What an <c>expect</c> says must be true.</summary>
public abstract record ClaimSyntax(SourceLocation Location) : SyntaxNode(Location);

/// <summary><c>silence</c>, <c>dead</c>, <c>open</c>, <c>hum-cancelling</c>.</summary>
public sealed record WordClaimSyntax(WordSyntax Word) : ClaimSyntax(Word.Location);

/// <summary><c>battery on</c> or <c>battery off</c>.</summary>
public sealed record BatteryClaimSyntax(bool IsOn, SourceLocation Location) : ClaimSyntax(Location);

/// <summary><c>reads</c>, <c>resonates</c> or <c>level</c> with a value and an optional tolerance.</summary>
/// <param name="At">The frequency that a level is claimed at, or null.</param>
/// <param name="Share">Of how many instruments of a run it is claimed, behind <c>for</c>; or null.</param>
public sealed record ValueClaimSyntax(
    WordSyntax Quantity,
    WordSyntax Value,
    WordSyntax? At,
    WordSyntax? Tolerance,
    WordSyntax? Share,
    SourceLocation Location
) : ClaimSyntax(Location);

/// <summary>Which coils are heard and how they are joined.</summary>
public sealed record CoilsClaimSyntax(CoilsSyntax Coils) : ClaimSyntax(Coils.Location);

public abstract record CoilsSyntax(SourceLocation Location) : SyntaxNode(Location);

/// <summary>One pickup or coil, or a group in brackets.</summary>
/// <param name="Coil">The name; null when <paramref name="Group"/> is given.</param>
/// <param name="Through">The part that it, or all of the group, is heard through; or null.</param>
public sealed record CoilSyntax(
    bool IsReversed,
    LugSyntax? Coil,
    WordSyntax? Through,
    CoilsSyntax? Group,
    SourceLocation Location
) : CoilsSyntax(Location);

public enum CoilJoin
{
    Parallel,
    Series,
}

public sealed record JoinedCoilsSyntax(CoilJoin Join, ImmutableArray<CoilsSyntax> Coils, SourceLocation Location)
    : CoilsSyntax(Location);
