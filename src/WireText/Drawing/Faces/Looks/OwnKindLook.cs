using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A kind that the author made up: drawn from its body and lugs, and judged by what is inside it.</summary>
internal sealed class OwnKindLook : Look
{
    public override LayoutZone ZoneOf(Part part)
    {
        var insides = part.Definition.Insides;
        if (insides.Any(inside => inside is Inside.CoilInside))
        {
            return LayoutZone.Pickup;
        }

        if (insides.Any(inside => inside is Inside.TrackInside or Inside.AmplifierInside))
        {
            return LayoutZone.Pot;
        }

        if (insides.Any(inside => inside is Inside.BatteryInside))
        {
            return LayoutZone.Jack;
        }

        if (!part.Definition.Controls.IsEmpty)
        {
            return LayoutZone.Switch;
        }

        return part.Lugs.Length == 2 && !insides.IsEmpty ? LayoutZone.Small : LayoutZone.Ground;
    }
}
