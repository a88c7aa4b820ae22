using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A push button: a shell with the ring of its plunger.</summary>
internal sealed class ButtonLook : Look
{
    public override LayoutZone ZoneOf(Part part) => LayoutZone.Switch;

    public override Colour FillOf(Theme theme) => theme.Shell;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme) =>
        [Ring(face, theme, share: 0.6)];
}
