using WireText.Drawing.Shapes;

namespace WireText.Drawing.Pictures;

/// <summary>Paints the number of each joint beside it, in the free place nearest by, with a line to it.</summary>
internal sealed class JointPainter(Scene scene, LabelSpace space)
{
    public IEnumerable<PictureItem> Paint() =>
        from joint in scene.Options.Joints
        where scene.HasLug(joint.Lug)
        from at in JointPlaces.Of(scene, joint.Lug, joint.Wires)
        select NumberTag.Paint(scene, space, "joint", joint.Number, at) with
        {
            Shows = [("lug", scene.Circuit.NameOf(joint.Lug))],
        };
}
