using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Paints the colour code of each wire in a pill on the wire itself.</summary>
/// <param name="led">Tags that stand apart from their wires, by the wires' ids.</param>
internal sealed class TagPainter(Scene scene, ImmutableSortedDictionary<string, TagLeader> led)
{
    public IEnumerable<PictureGroup> Paint()
    {
        foreach (var wire in scene.Wires)
        {
            if (WireFaces.TagOf(wire.Wire) is not { Length: > 0 } tag)
            {
                continue;
            }

            if (wire.Route.Tag is { } box)
            {
                yield return Tag(wire, Pill(wire, box, tag, wire.Route.IsTagVertical));
            }
            else if (led.TryGetValue(wire.Wire.Id, out var leader))
            {
                yield return Tag(wire, [.. LineOf(leader), .. Pill(wire, leader.Box, tag, isVertical: false)]);
            }
        }
    }

    private static PictureGroup Tag(SceneWire wire, ImmutableArray<PictureItem> items) =>
        new("tag", items) { Shows = [("wire", wire.Wire.Id)] };

    private ImmutableArray<PictureItem> LineOf(TagLeader leader) =>
        [
            PathShape.Through("leader", Shapes.Paint.Stroked(scene.Theme.Ink, Tokens.TagLine), leader.From, leader.To),
            new CircleShape("leader-dot", leader.From, Tokens.LeaderDot, Shapes.Paint.Filled(scene.Theme.Ink)),
        ];

    private ImmutableArray<PictureItem> Pill(SceneWire wire, Box box, string tag, bool isVertical)
    {
        var theme = scene.Theme;
        var style = WireStyle.Of(theme, wire.Wire);
        var corner = Math.Min(box.Width, box.Height) / 2;
        return
        [
            new RectangleShape("tag-box", box, corner, new Paint(theme.Paper, style.Casing, Tokens.TagLine)),
            TextItem.Centred("tag-text", tag, box.Centre, TextWeight.Medium, Tokens.TagSize, theme.Ink, isVertical),
        ];
    }
}
