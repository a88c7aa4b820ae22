using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A mini toggle: a moulded block that the edges of its metal bracket hold on two sides.</summary>
internal sealed class MiniToggleLook : SwitchLook
{
    /// <summary>How far a bracket reaches over the block, in millimetres. Chosen by eye.</summary>
    private const double Bracket = 0.9;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var body = face.MainOutline.Bounds.Grown(-Tokens.PartLine / 2);
        var width = Bracket * face.Face.Scale;
        foreach (var x in new[] { body.X, body.Right - width })
        {
            yield return new RectangleShape(
                "bracket",
                face.OnPage(new Box(x, body.Y, width, body.Height)),
                0,
                new Paint(theme.Tin, theme.Detail, Tokens.DetailLine)
            );
        }
    }
}
