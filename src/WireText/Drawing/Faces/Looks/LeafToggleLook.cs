using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A toggle of leaf springs: an open frame with a stack of insulators at the lugs and a leaf on each side of it.</summary>
internal sealed class LeafToggleLook : SwitchLook
{
    /// <summary>The plates of the stack, and how far the frame and the leaves stand off the edge, in millimetres. Chosen by eye.</summary>
    private const int Plates = 4;
    private const double Plate = 0.9;
    private const double Frame = 1.6;
    private const double Leaf = 3.4;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var body = face.MainOutline.Bounds;
        yield return new RectangleShape(
            "detail",
            face.OnPage(body.Grown(-Frame)),
            Tokens.BodyCorner,
            new Paint(theme.PartFill, theme.Detail, Tokens.DetailLine)
        );
        var (left, right) = (body.X + Leaf, body.Right - Leaf);
        var foot = body.Bottom - Frame - 0.6;
        for (var i = 0; i < Plates; i++)
        {
            var plate = new Box(left - 0.8, foot - ((i + 1) * Plate), right - left + 1.6, Plate);
            yield return new RectangleShape("stack", face.OnPage(plate), 0, DetailOf(theme));
        }

        var top = foot - (Plates * Plate);
        foreach (var (x, inwards) in new[] { (left, 1.4), (right, -1.4) })
        {
            yield return PathShape.Through(
                "leaf",
                Paint.Stroked(theme.Tin, 2 * Tokens.DetailLine),
                face.OnPage(new Point(x, top)),
                face.OnPage(new Point(x, body.Y + 6)),
                face.OnPage(new Point(x + inwards, body.Y + 4.4)),
                face.OnPage(new Point(x + inwards, body.Y + 3))
            );
        }
    }
}
