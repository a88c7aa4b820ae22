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
        var body = face.MainOutline.Bounds;
        var y = body.Y + Inset;
        yield return new CircleShape("snap", face.OnPage(new Point(body.X + Inset, y)), Socket, DetailOf(theme));
        yield return new CircleShape("snap", face.OnPage(new Point(body.X + Inset, y)), Socket / 2, DetailOf(theme));
        yield return new CircleShape(
            "snap",
            face.OnPage(new Point(body.Right - Inset, y)),
            Stud,
            Paint.Filled(theme.Tin)
        );
    }
}
