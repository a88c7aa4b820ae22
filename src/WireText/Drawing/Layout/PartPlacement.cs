using WireText.Geometry;

namespace WireText.Drawing.Layout;

/// <summary>Every part in its final place. No label and no wire has a place yet.</summary>
/// <param name="Poses">By the index of the part in <paramref name="Wiring"/>.</param>
/// <param name="IsFound">By part: true when it found its own place.</param>
/// <param name="Slots">Where the search put the big parts: indices by row and column, -1 for an empty cell; null when the author placed some.</param>
internal sealed record PartPlacement(Wiring Wiring, Pose[] Poses, bool[] IsFound, int[][]? Slots)
{
    public Point OnPage(int terminal) => Poses[Wiring.Terminals[terminal].Part].OnPage(Wiring.Own(terminal));
}
