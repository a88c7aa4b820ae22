using WireText.Circuits;
using WireText.Drawing.Layout;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A battery: a box beside the jack that switches it.</summary>
internal sealed class BatteryLook : Look
{
    public override LayoutZone ZoneOf(Part part) => LayoutZone.Jack;
}
