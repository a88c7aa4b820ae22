using System.Collections.Immutable;

namespace WireText.Syntax.Nodes;

/// <summary>What a <c>found</c> line names.</summary>
public static class FoundNames
{
    /// <summary>The lugs, parts, coils and dials.</summary>
    public static IEnumerable<LugSyntax> In(FoundSyntax found) =>
        LugsOf(found.At)
            .Concat(NamedBy(found))
            .Concat(found.What.OfType<FoundCoilsSyntax>().SelectMany(what => what.Coils));

    /// <summary>The lugs that probes stand on.</summary>
    public static ImmutableArray<LugSyntax> LugsOf(FoundPlaceSyntax place) =>
        place switch
        {
            FoundBetweenSyntax between => [between.From, between.To],
            FoundAtJointSyntax joint => [joint.Lug, joint.Of],
            _ => [],
        };

    /// <summary>The controls and dials that are set.</summary>
    public static ImmutableArray<PairSyntax> StateOf(FoundPlaceSyntax place) =>
        place switch
        {
            FoundAtPlugSyntax plug => plug.State,
            FoundBetweenSyntax between => between.State,
            _ => [],
        };

    /// <summary>The dial, the part or the battery that the place names by itself.</summary>
    public static ImmutableArray<LugSyntax> NamedBy(FoundSyntax found) =>
        found.At switch
        {
            FoundAtPlugSyntax { Turning: { } dial } => [dial],
            FoundAloneSyntax alone => [alone.Name],
            FoundAtCellSyntax { Name: { } battery } => [battery],
            _ => [],
        };
}
