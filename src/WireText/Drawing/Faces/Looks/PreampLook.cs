using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A preamp: a board among the pots, with a hole in each corner and a pad at each lead, told by its model.</summary>
internal sealed class PreampLook : Look
{
    /// <summary>A hole, a pad, and how far they lie inside the edge, in millimetres. Chosen by eye.</summary>
    private const double Hole = 0.7;
    private const double Pad = 1.2;
    private const double Inset = 1.5;

    public override LayoutZone ZoneOf(Part part) => LayoutZone.Pot;

    public override bool IsToldByModel => true;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var (board, pads) = (face.MainOutline.Bounds, Pad * face.Face.Scale);
        foreach (var hole in HolesIn(face))
        {
            yield return new CircleShape("detail", hole.Centre, hole.Radius, DetailOf(theme));
        }

        foreach (var lug in face.Face.Lugs.Where(lug => lug.Look != LugLook.Riveted))
        {
            var pad = new Point(
                Math.Clamp(lug.At.X, board.X + (pads / 2), board.Right - (pads / 2)),
                Math.Clamp(lug.At.Y, board.Y + (pads / 2), board.Bottom - (pads / 2))
            );
            yield return new RectangleShape(
                "pad",
                face.OnPage(Box.Around(pad, pads, pads)),
                0,
                Paint.Filled(theme.Tin)
            );
        }
    }

    public override IEnumerable<Outline> OutlinesOfArt(PlacedFace face) => HolesIn(face);

    /// <summary>On the page.</summary>
    private static IEnumerable<Outline.Circle> HolesIn(PlacedFace face)
    {
        var corners = face.MainOutline.Bounds.Grown(-Inset * face.Face.Scale);
        foreach (var x in new[] { corners.X, corners.Right })
        {
            foreach (var y in new[] { corners.Y, corners.Bottom })
            {
                yield return new Outline.Circle(face.OnPage(new Point(x, y)), Hole * face.Face.Scale);
            }
        }
    }
}
