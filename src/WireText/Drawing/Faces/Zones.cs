using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Parts;

namespace WireText.Drawing.Faces;

/// <summary>Where a part belongs in the cavity when the author says nothing; a user's own kind is judged by what is inside it.</summary>
internal static class Zones
{
    public static LayoutZone Of(Part part) =>
        part.Kind switch
        {
            "pickup" => LayoutZone.Pickup,
            "pot" or "preamp" => LayoutZone.Pot,
            "switch" or "button" => LayoutZone.Switch,
            "jack" or "battery" => LayoutZone.Jack,
            "metal" => LayoutZone.Ground,
            "cap" or "resistor" or "inductor" or "splice" => LayoutZone.Small,
            _ => ByInsides(part),
        };

    private static LayoutZone ByInsides(Part part)
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
