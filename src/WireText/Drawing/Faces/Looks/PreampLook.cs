using WireText.Circuits;
using WireText.Drawing.Layout;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A preamp: a box among the pots, told by its model.</summary>
internal sealed class PreampLook : Look
{
    public override LayoutZone ZoneOf(Part part) => LayoutZone.Pot;

    public override bool IsToldByModel => true;
}
