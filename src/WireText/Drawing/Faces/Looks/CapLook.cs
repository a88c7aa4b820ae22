using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A capacitor: a small block with the code printed on it, and a plus where it has one.</summary>
internal sealed class CapLook : TwoLeadLook
{
    public override BodyShape UsualBody(Part part, int lugs, int wires) => new BodyShape.Box(10, 7);

    public override double CornerOf(double shorter) => Math.Min(shorter / 3, 2);

    public override IEnumerable<FaceLine> MoreLines(Circuit circuit, Part part)
    {
        var capacitor = part.Elements.Select(element => circuit.Elements[element]).OfType<Capacitor>().FirstOrDefault();
        return capacitor is not null && MarkingCode.OfCapacitor(capacitor.Farads) is { } mark
            ? [FaceLine.Fitting(FaceLineKind.Mark, mark)]
            : [];
    }

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        if (!circuit.Parts[face.Index].HasTrait("electrolytic"))
        {
            return [];
        }

        var box = face.MainOutline.Bounds;
        var at = face.OnPage(new Point(box.X + 1.2, box.Y + 1.4));
        return [TextItem.Centred("mark", "+", at, TextWeight.SemiBold, Tokens.LugLabelSize, theme.Ink)];
    }
}
