using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A toggle of leaf springs: an open frame with a stack of insulators at the lugs and a leaf on each side of it.</summary>
internal sealed class LeafToggleLook : SwitchLook
{
    /// <summary>The plates of the stack, how far it and the frame and the leaves stand off the edge, in millimetres: below the frame stand the names of the lugs. Chosen by eye.</summary>
    private const int Plates = 4;
    private const double Plate = 0.9;
    private const double Frame = 1.6;
    private const double BelowFrame = 3.6;
    private const double Leaf = 3.4;
    private const double BelowStack = 5.2;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var (body, scale) = (face.MainOutline.Bounds, face.Face.Scale);
        yield return new RectangleShape(
            "detail",
            face.OnPage(FrameOf(face)),
            Tokens.BodyCorner,
            new Paint(theme.PartFill, theme.Detail, Tokens.DetailLine)
        );
        var (left, right) = (body.X + (Leaf * scale), body.Right - (Leaf * scale));
        var foot = body.Bottom - (BelowStack * scale);
        for (var i = 0; i < Plates; i++)
        {
            var height = Plate * scale;
            var plate = new Box(left, foot - ((i + 1) * height), right - left, height);
            yield return new RectangleShape("stack", face.OnPage(plate), 0, DetailOf(theme));
        }

        var top = foot - (Plates * Plate * scale);
        foreach (var (x, inwards) in new[] { (left, 1.4 * scale), (right, -1.4 * scale) })
        {
            yield return PathShape.Through(
                "leaf",
                Paint.Stroked(theme.Tin, 2 * Tokens.DetailLine),
                face.OnPage(new Point(x, top)),
                face.OnPage(new Point(x, body.Y + (6 * scale))),
                face.OnPage(new Point(x + inwards, body.Y + (4.4 * scale))),
                face.OnPage(new Point(x + inwards, body.Y + (3 * scale)))
            );
        }
    }

    /// <summary>The line of the frame below which the names of the lugs stand.</summary>
    public override IEnumerable<Segment> LinesToKeepOff(PlacedFace face)
    {
        var frame = FrameOf(face);
        yield return new Segment(
            face.OnPage(new Point(frame.X, frame.Bottom)),
            face.OnPage(new Point(frame.Right, frame.Bottom))
        );
    }

    private static Box FrameOf(PlacedFace face)
    {
        var (frame, scale) = (face.MainOutline.Bounds.Grown(-Frame * face.Face.Scale), face.Face.Scale);
        return frame with { Height = frame.Height - ((BelowFrame - Frame) * scale) };
    }
}
