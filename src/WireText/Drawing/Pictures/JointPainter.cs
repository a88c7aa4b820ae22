using WireText.Building;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Paints the number of each joint beside it, in the free place nearest by, with a line to it.</summary>
internal sealed class JointPainter(Scene scene, LabelSpace space)
{
    public IEnumerable<PictureItem> Paint() =>
        from joint in scene.Options.Joints
        where scene.HasLug(joint.Lug)
        from at in PlacesOf(joint)
        select NumberTag.Paint(scene.Theme, space, "joint", joint.Number, at) with
        {
            Shows = [("lug", scene.Circuit.NameOf(joint.Lug))],
        };

    /// <summary>On the page: the lug, or on a case each place where a wire of the joint lands.</summary>
    private IEnumerable<Point> PlacesOf(Joint joint)
    {
        foreach (var part in scene.Parts)
        {
            foreach (var lug in part.Face.Lugs.Where(lug => lug.Lug == joint.Lug))
            {
                return [part.OnPage(lug.At)];
            }
        }

        var name = scene.Circuit.NameOf(joint.Lug);
        var ids = joint.Wires.Select(wire => scene.Circuit.Wires[wire].Id).ToHashSet(StringComparer.Ordinal);
        return scene
            .Wires.Select(wire => wire.Route)
            .Concat(scene.Layout.Braids.SelectMany(braid => braid.Tails))
            .Where(route => ids.Contains(route.Wire.Id))
            .Select(route => route.Wire.To == name ? route.Points[^1] : route.Points[0])
            .Distinct();
    }
}
