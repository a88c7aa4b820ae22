using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A battery: a block beside the jack that switches it, with the two snaps of its clip.</summary>
internal sealed class BatteryLook : Look
{
    /// <summary>The two snaps, of unlike size, and their distance from the edge, in millimetres. Chosen by eye.</summary>
    private const double Socket = 1.5;
    private const double Stud = 1.1;
    private const double Inset = 2.2;

    public override LayoutZone ZoneOf(Part part) => LayoutZone.Jack;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var (body, scale) = (face.MainOutline.Bounds.Grown(-Inset * face.Face.Scale), face.Face.Scale);
        var (socket, stud) = (face.OnPage(new Point(body.X, body.Y)), face.OnPage(new Point(body.Right, body.Y)));
        yield return new CircleShape("snap", socket, Socket * scale, DetailOf(theme));
        yield return new CircleShape("snap", socket, Socket * scale / 2, DetailOf(theme));
        yield return new CircleShape("snap", stud, Stud * scale, Paint.Filled(theme.Tin));
    }
}
