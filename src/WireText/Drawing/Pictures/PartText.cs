using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Parts;

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

    private static string ClassOf(FaceLineKind kind) =>
        kind switch
        {
            FaceLineKind.Name => "part-name",
            FaceLineKind.Value => "part-value",
            _ => "part-mark",
        };
}
