using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>
/// One part drawn once more, larger, with every wire that ends on it and the name of where each goes: for a part on
/// which much is soldered, or where a tag or a name has no room even at the end of a line.
/// </summary>
internal sealed class CloseUp
{
    /// <summary>With so many wires on one lug, a part's own lead among them, a part is shown larger. Chosen.</summary>
    private const int SeveralWires = 3;

    /// <summary>
    /// With so many wires a part is shown larger whatever room they have. Chosen: with eleven or twelve, each name and tag in its
    /// place, the larger view shows nothing that the drawing does not.
    /// </summary>
    private const int ManyWires = 14;

    private readonly Scene scene;
    private readonly ImmutableArray<WayOut> ways;
    private readonly Size inner;
    private readonly Frame margin;

    /// <summary>What words beside the frame take up on its four sides.</summary>
    private readonly record struct Frame(double Left, double Top, double Right, double Bottom);

    private CloseUp(Scene scene, ImmutableArray<WayOut> ways, Size inner)
    {
        (this.scene, this.ways, this.inner) = (scene, ways, inner);
        margin = new Frame(Room(Side.West), Room(Side.North), Room(Side.East), Room(Side.South));
    }

    private double Room(Side side) =>
        ways.Where(way => way.Side == side && !way.IsInside)
            .Select(way => WidthOf(way) + (2 * Tokens.LabelGap) + Tokens.LabelTouch)
            .DefaultIfEmpty(0)
            .Max();

    private static double WidthOf(WayOut way) => DrawnText.Width(way.To, TextWeight.Medium, Tokens.LugLabelSize);

    /// <summary>The part's index in <see cref="Circuit.Parts"/>.</summary>
    public int Part => scene.Parts[0].Index;

    /// <summary>With its caption and the words round it.</summary>
    public Size Size =>
        new(
            Math.Max(margin.Left + inner.Width + margin.Right, CaptionWidth),
            Tokens.CaptionHeight + margin.Top + inner.Height + margin.Bottom
        );

    public CrossingSigns Signs => WirePainter.SignsIn(scene);

    /// <summary>The ids of wires that carry their tag here.</summary>
    public IEnumerable<string> Tagged =>
        scene.Wires.Where(wire => wire.Route.Tag is not null).Select(wire => wire.Wire.Id);

    /// <summary>The close-ups that a drawing needs, in the order of the parts.</summary>
    /// <param name="drawn">The drawing, with the names and tags that had room.</param>
    public static ImmutableArray<CloseUp> Of(Scene scene, PictureBuilder.DrawnCircuit drawn)
    {
        var wanted = scene
            .Wires.Where(wire => IsUntagged(wire) && !drawn.Led.Contains(wire.Wire.Id))
            .Select(wire => DensestEnd(scene, wire.Wire))
            .Concat(scene.Parts.Where(part => IsCrowded(scene, part)).Select(part => part.Index))
            .Concat(drawn.Unnamed)
            .ToHashSet();
        return [.. scene.Parts.Where(part => wanted.Contains(part.Index)).Select(part => Build(scene, part))];
    }

    private static bool IsUntagged(SceneWire wire) => wire.Route.Tag is null && WireFaces.TagOf(wire.Wire).Length > 0;

    /// <summary>True when very many wires end on a part, or several share a lug, some of them the leads of a part that hangs there.</summary>
    private static bool IsCrowded(Scene scene, PlacedFace part) =>
        scene.PartOf(part).Lugs.SelectMany(lug => scene.WiresAt(lug)).Distinct().Count() >= ManyWires
        || part.Face.Lugs.Any(lug =>
            scene.WiresAt(lug.Lug) is { Length: >= SeveralWires } wires
            && wires.Any(wire => wire.Kind == WireKind.PartLead)
        );

    /// <summary>Of a wire's two parts the one that has more lugs in the same room, if it is worth a closer look; else -1.</summary>
    private static int DensestEnd(Scene scene, Wire wire) =>
        new[] { wire.From, wire.To }
            .Where(lug => lug >= 0)
            .Select(lug => scene.FindPart(scene.Circuit.PartOf(scene.Circuit.Lugs[lug]).Index))
            .OfType<PlacedFace>()
            .Where(part => part.Face.Lugs.Length > 2)
            .OrderByDescending(part => part.Face.Lugs.Length / (part.Bounds.Width * part.Bounds.Height))
            .Select(part => part.Index)
            .FirstOrDefault(-1);

    private static CloseUp Build(Scene scene, PlacedFace part)
    {
        var cut = new CloseUpCut(scene, part);
        var larger = new Scene(scene.Circuit, [cut.Face], cut.Layout, scene.Options with { Findings = [] })
        {
            NameSides = scene.NameSides,
        };
        return new CloseUp(
            larger,
            cut.Ways,
            new Size(cut.Region.Width * Tokens.CloseUpScale, cut.Region.Height * Tokens.CloseUpScale)
        );
    }

    /// <summary>The close-up with its upper left corner at a point of the page.</summary>
    public PictureGroup Paint(Point at)
    {
        var theme = scene.Theme;
        var origin = new Point(at.X + margin.Left, at.Y + Tokens.CaptionHeight + margin.Top);
        var frame = new Box(origin.X, origin.Y, inner.Width, inner.Height);
        var moved = new Scene(
            scene.Circuit,
            [.. scene.Parts.Select(part => part.Face)],
            LayoutShift.By(scene.Layout, origin),
            scene.Options
        )
        {
            NameSides = scene.NameSides,
        };
        var words = ways.Select(way => way with { At = way.At + origin }).Select(Words).ToImmutableArray();
        var space = new LabelSpace(moved, frame);
        foreach (var word in words)
        {
            space.Take(word.Bounds);
        }

        IEnumerable<PictureItem> items =
        [
            .. Caption(at),
            new RectangleShape(
                "close-up-frame",
                frame,
                Tokens.BodyCorner,
                new Paint(theme.Paper, theme.Detail, Tokens.DetailLine)
            ),
            .. PictureBuilder.Drawing(moved, space, namesAll: true).Items,
            .. words,
        ];
        return new PictureGroup("close-up", [.. items.Select(PictureBuilder.WithoutIds)]) { Shows = [("part", Name)] };
    }

    private string Name => scene.Circuit.Parts[Part].Name;

    private static string ScaleWords =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Tokens.CloseUpScale:0.#} : 1");

    private double CaptionWidth =>
        DrawnText.Width(CaptionName, TextWeight.SemiBold, Tokens.NameSize)
        + Tokens.SpaceInCaption
        + DrawnText.Width(ScaleWords, TextWeight.Regular, Tokens.NoteSize);

    private string CaptionName => DrawnText.Fit(Name, TextWeight.SemiBold, Tokens.NameSize, Tokens.WidestLabel);

    private IEnumerable<TextItem> Caption(Point at)
    {
        var baseline = at.Y + Tokens.NameSize;
        var theme = scene.Theme;
        yield return TextItem.Start(
            "close-up-name",
            CaptionName,
            at with
            {
                Y = baseline,
            },
            TextWeight.SemiBold,
            Tokens.NameSize,
            theme.Ink
        );
        var after = DrawnText.Width(CaptionName, TextWeight.SemiBold, Tokens.NameSize) + Tokens.SpaceInCaption;
        yield return TextItem.Start(
            "close-up-scale",
            ScaleWords,
            new Point(at.X + after, baseline),
            TextWeight.Regular,
            Tokens.NoteSize,
            theme.QuietInk
        );
    }

    /// <summary>Where a wire goes on to, written on from its end.</summary>
    private TextItem Words(WayOut way)
    {
        var size = Tokens.LugLabelSize;
        var away = (2 * Tokens.LabelGap) + (WidthOf(way) / 2) + Tokens.LabelTouch;
        var towards = way.Side.Towards(1);
        return TextItem.Centred(
            "way",
            way.To,
            new Point(way.At.X + (towards.X * away), way.At.Y + (towards.Y * away)),
            TextWeight.Medium,
            size,
            scene.Theme.Ink,
            way.Side is Side.North or Side.South
        );
    }
}
