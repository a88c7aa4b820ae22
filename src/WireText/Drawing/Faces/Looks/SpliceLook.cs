using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>Leads soldered together in the air: a sleeve over the joint, longer the more wires meet in it.</summary>
internal sealed class SpliceLook : Look
{
    public override LayoutZone ZoneOf(Part part) => LayoutZone.Small;

    public override BodyShape UsualBody(Part part, int lugs, int wires) =>
        new BodyShape.Box(8 + (4 * Math.Clamp(wires, 2, 12)), 6);

    public override bool IsSolderedAlongItsBody => true;

    public override bool HasWordsBeside => true;

    public override Colour FillOf(Theme theme) => theme.Paper;

    public override double CornerOf(double shorter) => shorter / 2;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var box = face.OnPage(face.MainOutline.Bounds.Grown(-0.7));
        return [new RectangleShape("detail", box, Math.Min(box.Width, box.Height) / 2, DetailOf(theme))];
    }

    public override LookSign Sign { get; } = new("splice: leads joined in a sleeve", Sample);

    private static IEnumerable<PictureItem> Sample(Theme theme, Point left, Point right)
    {
        var box = Box.Spanning(left, right).Grown(Tokens.SpliceSampleHeight / 2);
        var sleeve = box with { X = left.X, Width = right.X - left.X };
        var inner = sleeve.Grown(-Tokens.SleeveLine * 2);
        var line = new Paint(theme.Paper, theme.PartLine, Tokens.PartLine);
        return
        [
            new RectangleShape("sample", sleeve, sleeve.Height / 2, line),
            new RectangleShape("sample", inner, inner.Height / 2, DetailOf(theme)),
        ];
    }
}
