using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>Bare metal that must be grounded: a hatched plate, soldered anywhere.</summary>
internal sealed class MetalLook : Look
{
    public override LayoutZone ZoneOf(Part part) => LayoutZone.Ground;

    public override BodyShape UsualBody(Part part, int lugs, int wires) => new BodyShape.Box(22, 10);

    public override bool IsSolderedAlongItsBody => true;

    public override bool HasWordsBeside => true;

    public override Colour FillOf(Theme theme) => theme.Shell;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var box = face.OnPage(face.MainOutline.Bounds);
        for (var along = Tokens.HatchPitch; along < box.Width + box.Height; along += Tokens.HatchPitch)
        {
            // From the top or right edge down to the left or bottom edge, at 45°.
            var from = new Point(box.X + Math.Min(along, box.Width), box.Y + Math.Max(0, along - box.Width));
            var to = new Point(box.X + Math.Max(0, along - box.Height), box.Y + Math.Min(along, box.Height));
            yield return PathShape.Through("hatch", DetailOf(theme), from, to);
        }
    }
}
