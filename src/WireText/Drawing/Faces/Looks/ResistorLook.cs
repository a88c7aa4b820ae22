using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A resistor: a thin rod with the colour bands of its value.</summary>
internal sealed class ResistorLook : TwoLeadLook
{
    /// <summary>From one band to the next, and how wide one is, in millimetres.</summary>
    private const double Pitch = 1.7;
    private const double Band = 0.9;

    public override BodyShape UsualBody(Part part, int lugs, int wires) => new BodyShape.Box(10, 3.6);

    public override double CornerOf(double shorter) => shorter / 2;

    public override bool HasValueOnBody => false;

    /// <summary>The bands begin at the end that is nearer to them; without the tolerance, which nobody stated.</summary>
    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        if (!HangsByTwoLeads(circuit.Parts[face.Index]) || face.Face.Layout.Seat is not null)
        {
            yield break;
        }

        var ohms = circuit.Parts[face.Index].Elements.Select(element => circuit.Elements[element]).OfType<Resistor>();
        var box = face.MainOutline.Bounds;
        foreach (var (i, colour) in ohms.SelectMany(resistor => ColourBands.Of(resistor.Ohms)).Index())
        {
            var left = box.X + (box.Height / 2) + (i * Pitch);
            yield return new RectangleShape(
                "band",
                face.OnPage(new Box(left, box.Y, Band, box.Height)),
                0,
                new Paint(Theme.Insulation(colour), theme.Detail, Tokens.DetailLine / 2)
            );
        }
    }
}
