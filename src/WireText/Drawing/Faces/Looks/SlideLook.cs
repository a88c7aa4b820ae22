using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A slide switch: its slot, with the knob at one end of it; names of lugs lie on both, so neither has a line.</summary>
internal sealed class SlideLook : SwitchLook
{
    /// <summary>How high the slot is drawn, in millimetres. Chosen by eye.</summary>
    private const double SlotHeight = 3.6;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var (body, height) = (face.MainOutline.Bounds, SlotHeight * face.Face.Scale);
        var slot = Box.Around(body.Centre, body.Width * 0.7, height);
        yield return new RectangleShape("slot", face.OnPage(slot), height / 4, Paint.Filled(theme.PartFill));
        var knob = slot with { Width = slot.Width / 2 };
        yield return new RectangleShape("knob", face.OnPage(knob), height / 4, Paint.Filled(theme.Pole));
    }
}
