using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>An inductor: a rod with a flange at each end of its winding.</summary>
internal sealed class InductorLook : TwoLeadLook
{
    public override BodyShape UsualBody(Part part, int lugs, int wires) => new BodyShape.Box(10, 5);

    public override double CornerOf(double shorter) => shorter / 2;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var box = face.MainOutline.Bounds;
        foreach (var x in new[] { box.X + 1.6, box.Right - 1.6 })
        {
            yield return PathShape.Through(
                "detail",
                DetailOf(theme),
                face.OnPage(new Point(x, box.Y + 0.4)),
                face.OnPage(new Point(x, box.Bottom - 0.4))
            );
        }
    }
}
