using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A jack: the barrel that the plug goes into, and a spring from each lug; the tip's is the long one.</summary>
internal sealed class JackLook : Look
{
    public override LayoutZone ZoneOf(Part part) => LayoutZone.Jack;

    public override bool HasWordsBeside => true;

    public override bool IsToldByModel => true;

    public override Colour FillOf(Theme theme) => theme.Shell;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var edge = new Paint(null, theme.PartLine, Tokens.SpringWidth + (2 * Tokens.DetailLine))
        {
            HasRoundEnds = true,
        };
        var metal = new Paint(null, theme.Tin, Tokens.SpringWidth) { HasRoundEnds = true };
        foreach (var (from, to) in Springs(face))
        {
            yield return PathShape.Through("spring", edge, from, to);
            yield return PathShape.Through("spring", metal, from, to);
        }

        var centre = face.OnPage(face.MainOutline.Bounds.Centre);
        yield return new CircleShape(
            "barrel",
            centre,
            BarrelRadius(face),
            Paint.Stroked(theme.PartLine, Tokens.DetailLine)
        );
    }

    public override IEnumerable<Segment> LinesToKeepOff(PlacedFace face) => Springs(face);

    /// <summary>Each from its lug; the tip's reaches right across the barrel.</summary>
    private static IEnumerable<Segment> Springs(PlacedFace face)
    {
        var centre = face.MainOutline.Bounds.Centre;
        foreach (var lug in face.Face.Lugs)
        {
            var isTip = string.Equals(lug.Label, "tip", StringComparison.OrdinalIgnoreCase);
            var reach = Point.Distance(lug.At, centre) + (BarrelRadius(face) * (isTip ? 1.9 : -1));
            if (reach > 0)
            {
                yield return new Segment(face.OnPage(lug.At), face.OnPage(lug.At.Towards(centre, reach)));
            }
        }
    }

    private static double BarrelRadius(PlacedFace face)
    {
        var body = face.MainOutline.Bounds;
        return Math.Min(body.Width, body.Height) * 0.2;
    }
}
