using WireText.Circuits;
using WireText.Drawing.Layout;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A small part that hangs by its own two leads, unless its definition gives it a body of another make.</summary>
internal abstract class TwoLeadLook : Look
{
    public override LayoutZone ZoneOf(Part part) => LayoutZone.Small;

    public override bool HangsByTwoLeads(Part part) => part.Definition.Body is null && part.Lugs.Length == 2;
}
