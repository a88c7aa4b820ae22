using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>A pot: a round shell whose back takes joints and small parts, with the block of its switch where it has one.</summary>
internal sealed class PotLook : Look
{
    /// <summary>How much wider than its lugs the block of a switch is, in millimetres. Chosen by eye.</summary>
    private const double BesideLugs = 4;

    public override LayoutZone ZoneOf(Part part) => LayoutZone.Pot;

    public override bool CarriesSmallParts => true;

    public override IEnumerable<FaceLine> MoreLines(Circuit circuit, Part part) =>
        part.Definition.Model == PartDefinition.StandardModel
            ? []
            : [FaceLine.Fitting(FaceLineKind.Value, part.Definition.Model)];

    public override Colour FillOf(Theme theme) => theme.Shell;

    /// <summary>The switch on the back of a push-pull pot, under its lugs.</summary>
    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme) =>
        BlockOf(face.Face.Lugs, face.Face.Scale) is { } block
            ?
            [
                new RectangleShape(
                    "detail",
                    face.OnPage(block),
                    Tokens.BodyCorner,
                    new Paint(theme.PartFill, theme.Detail, Tokens.DetailLine)
                ),
            ]
            : [];

    public override IEnumerable<Outline> OutlinesOfArt(PlacedFace face) =>
        BlockOf(face.Face.Lugs, face.Face.Scale) is { } block ? [new Outline.Rectangle(face.OnPage(block))] : [];

    public override Box? CoverOf(ImmutableArray<FaceLug> lugs) => BlockOf(lugs, 1);

    /// <summary>A square about the lugs that leaves the rim of the case free, where grounds are soldered; null where no switch is.</summary>
    private static Box? BlockOf(ImmutableArray<FaceLug> lugs, double scale)
    {
        var inner = lugs.Where(lug => lug.Look == LugLook.Riveted).ToImmutableArray();
        if (inner.Length < 2)
        {
            return null;
        }

        var box = inner.Select(lug => Box.Around(lug.At, 0, 0)).Aggregate(Box.Union);
        var side = Math.Max(box.Width, box.Height) + (BesideLugs * scale);
        return Box.Around(box.Centre, side, side);
    }
}
