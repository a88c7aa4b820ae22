using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Drawing.Faces.Looks;

/// <summary>
/// A capacitor with its value and the code printed on it: a block of film, a disc of ceramic, a cylinder of paper in oil with its
/// two end caps, an electrolytic with a band at its minus.
/// </summary>
internal sealed class CapLook : TwoLeadLook
{
    /// <summary>How deep an end cap and a band are, in millimetres.</summary>
    private const double EndCap = 1.4;
    private const double MinusBand = 1.6;

    public override bool IsPolarised(Part part) => part.HasTrait(Part.Electrolytic);

    public override BodyShape UsualBody(Part part, int lugs, int wires) =>
        part.HasTrait(Part.Ceramic) ? new BodyShape.Round(9.6)
        : part.HasTrait(Part.PaperInOil) ? new BodyShape.Box(15, 7)
        : part.HasTrait(Part.Electrolytic) ? new BodyShape.Box(13, 7)
        : new BodyShape.Box(10, 7);

    public override double CornerOf(double shorter) => Math.Min(shorter / 3, 2);

    public override IEnumerable<FaceLine> MoreLines(Circuit circuit, Part part)
    {
        var capacitor = part.Elements.Select(element => circuit.Elements[element]).OfType<Capacitor>().FirstOrDefault();
        return capacitor is not null && MarkingCode.OfCapacitor(capacitor.Farads) is { } mark
            ? [FaceLine.Fitting(FaceLineKind.Mark, mark)]
            : [];
    }

    public override IEnumerable<FaceLine> LinesBeside(Part part) =>
        new[] { Part.Film, Part.Ceramic, Part.PaperInOil, Part.Electrolytic }
            .Where(part.HasTrait)
            .Select(word => FaceLine.Fitting(FaceLineKind.Mark, word));

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var part = circuit.Parts[face.Index];
        var box = face.MainOutline.Bounds;
        if (part.HasTrait(Part.PaperInOil))
        {
            yield return Across(face, theme, box.X + EndCap);
            yield return Across(face, theme, box.Right - EndCap);
        }

        if (part.HasTrait(Part.Electrolytic))
        {
            var band = new Box(box.Right - MinusBand - 0.6, box.Y, MinusBand, box.Height);
            yield return new RectangleShape("band", face.OnPage(band), 0, Paint.Filled(theme.Detail));
            var at = face.OnPage(new Point(box.X + 1.2, box.Y + 1.4));
            yield return TextItem.Centred("mark", "+", at, TextWeight.SemiBold, Tokens.LugLabelSize, theme.Ink);
        }
    }

    private static PathShape Across(PlacedFace face, Theme theme, double x)
    {
        var box = face.MainOutline.Bounds;
        return PathShape.Through(
            "detail",
            DetailOf(theme),
            face.OnPage(new Point(x, box.Y + 0.3)),
            face.OnPage(new Point(x, box.Bottom - 0.3))
        );
    }
}
