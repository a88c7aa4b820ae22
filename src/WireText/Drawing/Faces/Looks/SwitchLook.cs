using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A switch of any make: in a frame the boards that its rows of lugs are riveted to; on a round one, as a rotary switch has, the one board.</summary>
internal class SwitchLook : Look
{
    public override LayoutZone ZoneOf(Part part) => LayoutZone.Switch;

    public override bool IsToldByModel => true;

    public override Colour FillOf(Theme theme) => theme.Shell;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme) =>
        face.MainOutline is Outline.Circle ? Wafer(face, theme) : Rails(face, theme);

    /// <summary>A tone without a line, so that nothing competes with wires or names.</summary>
    private static IEnumerable<PictureItem> Rails(PlacedFace face, Theme theme)
    {
        var rows = face
            .Face.Lugs.Where(lug => lug.Look == LugLook.Riveted)
            .GroupBy(lug => Math.Round(lug.At.Y, 3))
            .Where(row => row.Count() > 1)
            .OrderBy(row => row.Key);
        var body = face.MainOutline.Bounds.Grown(-Tokens.RailInset);
        foreach (var row in rows)
        {
            var half = Tokens.RailWidth / 2;
            var (top, bottom) = (Math.Max(body.Y, row.Key - half), Math.Min(body.Bottom, row.Key + half));
            var rail = new Box(body.X, top, body.Width, bottom - top);
            yield return new RectangleShape("rail", face.OnPage(rail), Tokens.BodyCorner, Paint.Filled(theme.PartFill));
        }
    }

    /// <summary>The round board, and the shaft in its middle where neither a lug nor a word is there.</summary>
    private static IEnumerable<PictureItem> Wafer(PlacedFace face, Theme theme)
    {
        var body = face.MainOutline.Bounds;
        var radius = (Math.Min(body.Width, body.Height) / 2) - Tokens.RailInset;
        yield return new CircleShape("rail", face.OnPage(body.Centre), radius, Paint.Filled(theme.PartFill));
        if (
            face.Face.Inside.IsEmpty
            && face.Face.Lugs.All(lug => Point.Distance(lug.At, body.Centre) > Tokens.ShaftDiameter)
        )
        {
            yield return Ring(face, theme, Tokens.ShaftDiameter / Math.Min(body.Width, body.Height));
        }
    }
}
