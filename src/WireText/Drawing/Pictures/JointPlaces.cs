using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Where the ends of wires lie on a lug.</summary>
internal static class JointPlaces
{
    /// <summary>On the page: the lug, or on a case each place where one of the wires lands.</summary>
    /// <param name="wires">Indices into <see cref="Circuits.Circuit.Wires"/>.</param>
    public static IEnumerable<Point> Of(Scene scene, int lug, IEnumerable<int> wires)
    {
        foreach (var part in scene.Parts)
        {
            foreach (var own in part.Face.Lugs.Where(own => own.Lug == lug))
            {
                return [part.OnPage(own.At)];
            }
        }

        var name = scene.Circuit.NameOf(lug);
        var ids = wires.Select(wire => scene.Circuit.Wires[wire].Id).ToHashSet(StringComparer.Ordinal);
        return scene
            .Wires.Select(wire => wire.Route)
            .Concat(scene.Layout.Braids.SelectMany(braid => braid.Tails))
            .Where(route => ids.Contains(route.Wire.Id))
            .Select(route => route.Wire.To == name ? route.Points[^1] : route.Points[0])
            .Distinct();
    }
}
