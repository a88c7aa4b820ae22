using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Paints the colour code of each wire in a pill on the wire itself.</summary>
internal sealed class TagPainter(Scene scene)
{
    public IEnumerable<PictureGroup> Paint()
    {
        foreach (var wire in scene.Wires)
        {
            if (wire.Route.Tag is { } box && WireFaces.TagOf(wire.Wire) is { Length: > 0 } tag)
            {
                yield return Pill(wire, box, tag);
            }
        }
    }

    private PictureGroup Pill(SceneWire wire, Box box, string tag)
    {
        var theme = scene.Theme;
        var style = WireStyle.Of(theme, wire.Wire);
        var corner = Math.Min(box.Width, box.Height) / 2;
        ImmutableArray<PictureItem> items =
        [
            new RectangleShape("tag-box", box, corner, new Paint(theme.Paper, style.Casing, Tokens.TagLine)),
            TextItem.Centred(
                "tag-text",
                tag,
                box.Centre,
                TextWeight.Medium,
                Tokens.TagSize,
                theme.Ink,
                wire.Route.IsTagVertical
            ),
        ];
        return new PictureGroup("tag", items) { Shows = [("wire", wire.Wire.Id)] };
    }
}
