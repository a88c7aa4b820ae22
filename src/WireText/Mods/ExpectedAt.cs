using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Mods;

/// <summary>Where something is expected: a state, heard at a jack that the line names or at the first.</summary>
internal static class ExpectedAt
{
    /// <summary>As it stands behind <c>expect</c>: <c>main: sel=neck</c>, <c>rest</c>.</summary>
    public static string Words(WordSyntax? jack, ImmutableArray<PairSyntax> state) =>
        (jack is null ? "" : $"{jack.Text}: ") + (state.IsEmpty ? "rest" : string.Join(' ', state.Select(Words)));

    /// <summary>True for what a line takes back: the same jack, or none in both, and the same state in any order.</summary>
    public static bool IsMeant(ExpectSyntax expect, DropExpectSyntax drop) =>
        Naming.Alike(expect.Jack?.Text ?? "", drop.Jack?.Text ?? "")
        && expect.State.Select(Words).ToHashSet(Naming.Comparer).SetEquals(drop.State.Select(Words));

    private static string Words(PairSyntax pair) => $"{pair.Key.Text}={pair.Value.Text}";
}
