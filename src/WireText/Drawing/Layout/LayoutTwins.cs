using System.Collections.Immutable;

namespace WireText.Drawing.Layout;

/// <summary>Whether two layout problems say the same: then they have the same layout, or the same but for the tags.</summary>
public static class LayoutTwins
{
    public static bool Are(LayoutProblem one, LayoutProblem other) =>
        one.Wires.SequenceEqual(other.Wires) && AreButForTheWires(one, other);

    /// <summary>
    /// True where only colours and what tags say differ, and not the order of the wires either, which comes of the colours
    /// between two wires from lug to lug: then every part and path is the same.
    /// </summary>
    public static bool AreButForTheTags(LayoutProblem one, LayoutProblem other) =>
        one.Wires.Length == other.Wires.Length
        && Wiring.InOrder(one.Wires).Select(Untagged).SequenceEqual(Wiring.InOrder(other.Wires).Select(Untagged))
        && AreButForTheWires(one, other);

    private static LayoutWire Untagged(LayoutWire wire) => wire with { Colour = "", Tag = null };

    private static bool AreButForTheWires(LayoutProblem one, LayoutProblem other) =>
        AreAll(one.Parts, other.Parts, AreSame)
        && AreAll(one.Cables, other.Cables, AreSame)
        && HaveSameArrangement(one, other);

    /// <summary>True where the author wants the same rows, or none.</summary>
    public static bool HaveSameArrangement(LayoutProblem one, LayoutProblem other) =>
        AreAll(one.Arrangement, other.Arrangement, (row, otherRow) => row.SequenceEqual(otherRow));

    /// <summary>True where lugs, bodies and words lie alike: then a lattice over the one is one over the other.</summary>
    internal static bool LieAlike(LabelledPlacement one, LabelledPlacement other) =>
        one.Labels.AsSpan().SequenceEqual(other.Labels)
        && one.Placement.Poses.AsSpan().SequenceEqual(other.Placement.Poses)
        && AreAll([.. one.Placement.Wiring.Parts], [.. other.Placement.Wiring.Parts], AreSame);

    private static bool AreSame(LayoutPart one, LayoutPart other) =>
        one with { Body = [], Lugs = [], Surfaces = [] } == other with { Body = [], Lugs = [], Surfaces = [] }
        && one.Body.SequenceEqual(other.Body)
        && one.Surfaces.SequenceEqual(other.Surfaces)
        && AreAll(one.Lugs, other.Lugs, AreSame);

    private static bool AreSame(LayoutLug one, LayoutLug other) =>
        one with { Exits = [] } == other with { Exits = [] } && one.Exits.SequenceEqual(other.Exits);

    private static bool AreSame(LayoutCable one, LayoutCable other) =>
        one with { Cores = [] } == other with { Cores = [] } && one.Cores.SequenceEqual(other.Cores);

    private static bool AreAll<T>(ImmutableArray<T> one, ImmutableArray<T> other, Func<T, T, bool> areSame) =>
        one.Length == other.Length && one.Zip(other).All(pair => areSame(pair.First, pair.Second));
}
