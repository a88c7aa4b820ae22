using WireText.Circuits;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A resistor: a thin rod.</summary>
internal sealed class ResistorLook : TwoLeadLook
{
    public override BodyShape UsualBody(Part part, int lugs, int wires) => new BodyShape.Box(10, 3.6);

    public override double CornerOf(double shorter) => shorter / 2;
}
