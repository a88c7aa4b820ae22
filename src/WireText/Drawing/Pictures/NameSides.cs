using WireText.Drawing.Faces;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>
/// On which side of a lug its name stands, for each model of part and each way that it is turned: on the next part alike, and on
/// the same part drawn larger, it should stand there too.
/// </summary>
internal sealed class NameSides
{
    private readonly Dictionary<(string Kind, string Model, int Turn, string Lug), Side> sides = [];

    /// <summary>The side on which the name of that lug stands already, on a part alike; null for none.</summary>
    public Side? LikedFor(Scene scene, PlacedFace part, FaceLug lug) =>
        sides.TryGetValue(KeyOf(scene, part, lug), out var side) ? side : null;

    /// <summary>Keeps where the names of a part's lugs stand, those beside their lugs.</summary>
    public void Keep(Scene scene, PlacedFace part, IEnumerable<LugLabels.Spot> spots)
    {
        foreach (var (lug, spot) in part.Face.Lugs.Zip(spots))
        {
            if (spot is { IsClear: true, Leader: null })
            {
                sides.TryAdd(KeyOf(scene, part, lug), LugLabels.SideOf(spot.Box, part.OnPage(lug.At)));
            }
        }
    }

    private static (string Kind, string Model, int Turn, string Lug) KeyOf(Scene scene, PlacedFace part, FaceLug lug)
    {
        var owner = scene.PartOf(part);
        return (owner.Kind, owner.Definition.Model, part.Placed.Pose.Turn, $"{lug.Section}.{lug.Label}");
    }
}
