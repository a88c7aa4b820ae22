using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Sets a part's lines one under the other, centred.</summary>
internal static class PartText
{
    public static IEnumerable<TextItem> Stack(
        ImmutableArray<FaceLine> lines,
        Point centre,
        bool isVertical,
        Theme theme
    )
    {
        var offset = -lines.Sum(line => line.Height) / 2;
        foreach (var line in lines)
        {
            var middle = offset + (line.Height / 2);
            var at = isVertical ? new Point(centre.X + middle, centre.Y) : new Point(centre.X, centre.Y + middle);
            yield return TextItem.Centred(
                ClassOf(line.Kind),
                line.Text,
                at,
                line.Weight,
                line.Size,
                line.Kind == FaceLineKind.Name ? theme.Ink : theme.QuietInk,
                isVertical
            );
            offset += line.Height;
        }
    }

    /// <summary>The words on a part's body; none where they stand beside it.</summary>
    public static IEnumerable<TextItem> Inside(PlacedFace part, Theme theme)
    {
        if (part.Face.Layout.TextBox is not { } own || part.Face.Inside.IsEmpty)
        {
            return [];
        }

        var box = part.OnPage(own);
        var size = FaceLine.SizeOf(part.Face.Inside);
        var isVertical = part.Placed.Turn % 180 != 0 && size.Width > box.Width + 0.01 && !FitsUpright(part, box, size);
        return Stack(part.Face.Inside, box.Centre, isVertical, theme);
    }

    /// <summary>A turned part has its words upright when the body still holds them beside the names of its leads.</summary>
    private static bool FitsUpright(PlacedFace part, Box turned, Size size)
    {
        var body = part.OnPage(part.Face.Layout.Body[0].Bounds);
        var upright = Box.Around(turned.Centre, size.Width, size.Height);
        return part.Face.Lugs.All(lug => lug.Look == LugLook.Lead && !upright.Overlaps(NameOf(part, lug)))
            && upright.X > body.X
            && upright.Right < body.Right
            && upright.Y > body.Y
            && upright.Bottom < body.Bottom;
    }

    /// <summary>Where the name of a lead stands when nothing is in the way: inside the edge that it comes out of.</summary>
    private static Box NameOf(PlacedFace part, FaceLug lead)
    {
        var outward = part.OnPage(lead.Outward).Towards(1);
        var root = part.OnPage(part.RootOf(lead));
        var width = DrawnText.Width(lead.Label, TextWeight.Medium, Tokens.LugLabelSize);
        var (alongX, alongY) = (Tokens.LabelGap + (width / 2), Tokens.LabelGap + (Tokens.LugLabelSize / 2));
        return Box.Around(root - new Point(outward.X * alongX, outward.Y * alongY), width, Tokens.LugLabelSize);
    }

    private static string ClassOf(FaceLineKind kind) =>
        kind switch
        {
            FaceLineKind.Name => "part-name",
            FaceLineKind.Value => "part-value",
            FaceLineKind.Remark => "part-remark",
            _ => "part-mark",
        };
}
