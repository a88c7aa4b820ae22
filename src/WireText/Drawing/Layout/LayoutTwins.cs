using System.Collections.Immutable;

namespace WireText.Drawing.Layout;

/// <summary>Whether two layout problems say the same: then they have the same layout.</summary>
public static class LayoutTwins
{
    public static bool Are(LayoutProblem one, LayoutProblem other) =>
        AreAll(one.Parts, other.Parts, AreSame)
        && one.Wires.SequenceEqual(other.Wires)
        && AreAll(one.Cables, other.Cables, AreSame)
        && AreAll(one.Arrangement, other.Arrangement, (row, otherRow) => row.SequenceEqual(otherRow));

    private static bool AreSame(LayoutPart one, LayoutPart other) =>
        one with { Body = [], Lugs = [], Surfaces = [] } == other with { Body = [], Lugs = [], Surfaces = [] }
        && one.Body.SequenceEqual(other.Body)
        && one.Surfaces.SequenceEqual(other.Surfaces)
        && AreAll(one.Lugs, other.Lugs, AreSame);

    private static bool AreSame(LayoutLug one, LayoutLug other) =>
        one.Id == other.Id && one.At == other.At && one.Exits.SequenceEqual(other.Exits);

    private static bool AreSame(LayoutCable one, LayoutCable other) =>
        one with { Cores = [] } == other with { Cores = [] } && one.Cores.SequenceEqual(other.Cores);

    private static bool AreAll<T>(ImmutableArray<T> one, ImmutableArray<T> other, Func<T, T, bool> areSame) =>
        one.Length == other.Length && one.Zip(other).All(pair => areSame(pair.First, pair.Second));
}
