using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>
/// A pickup: one oval a coil with its poles, of two kinds where there are two coils, a second outline under a cover, and at each lead
/// whether a coil starts or ends there.
/// </summary>
internal sealed class PickupLook : Look
{
    /// <summary>More coils than these are not drawn: their ovals would be too thin to tell apart.</summary>
    private const int MostCoils = 4;

    /// <summary>One a string, on an instrument of six.</summary>
    private const int Poles = 6;

    /// <summary>The radius of a pole and of the hole in an ear, and how far inside a cover the bobbin's plate ends, in millimetres. Chosen by eye.</summary>
    private const double Pole = 1.7;
    private const double EarHole = 0.9;
    private const double UnderCover = 1;

    public override LayoutZone ZoneOf(Part part) => LayoutZone.Pickup;

    public override double CornerOf(double shorter) => Math.Min(shorter / 2, 4);

    /// <summary>How its only coil is wound; left to the build sheet where the body has no room for it.</summary>
    public override FaceLine? LineWithRoom(Circuit circuit, Part part)
    {
        var words = CoilsOf(circuit, part) is [var coil] ? CoilWords.Describe(coil.Winding, coil.Magnet) : "";
        return words.Length > 0 ? FaceLine.Fitting(FaceLineKind.Value, words) : null;
    }

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        var coils = CoilsOf(circuit, circuit.Parts[face.Index]);
        return
        [
            .. Plate(face, coils.Length, theme),
            .. Bobbins(face, coils, theme),
            .. face.Face.Lugs.SelectMany(lug => CoilEnd(face, lug, coils, theme)),
        ];
    }

    private static ImmutableArray<Coil> CoilsOf(Circuit circuit, Part part) =>
        [.. part.Elements.Select(element => circuit.Elements[element]).OfType<Coil>()];

    /// <summary>The line of a cover, and the ears that two coils on one plate hang by.</summary>
    private static IEnumerable<PictureItem> Plate(PlacedFace face, int coils, Theme theme)
    {
        var body = face.MainOutline.Bounds;
        if (face.Face.Lugs.Any(lug => string.Equals(lug.Label, "cover", StringComparison.OrdinalIgnoreCase)))
        {
            yield return new RectangleShape(
                "cover",
                face.OnPage(body.Grown(-UnderCover * face.Face.Scale)),
                3,
                DetailOf(theme)
            );
        }

        if (coils == 2 && body.Width > 30)
        {
            foreach (var x in new[] { body.X + 2.4, body.Right - 2.4 })
            {
                yield return new CircleShape(
                    "ear",
                    face.OnPage(new Point(x, body.Centre.Y)),
                    EarHole * face.Face.Scale,
                    DetailOf(theme)
                );
            }
        }
    }

    /// <summary>A row of poles, so quiet that words lie on them: plain ones, or screws with a slot in each.</summary>
    private static IEnumerable<PictureItem> PoleRow(PlacedFace face, Box oval, bool areScrews, Theme theme)
    {
        var pitch = (oval.Width - oval.Height) / (Poles - 1);
        var radius = Pole * face.Face.Scale;
        if (pitch < 3 * radius || oval.Height < 3 * radius)
        {
            yield break;
        }

        for (var i = 0; i < Poles; i++)
        {
            var at = new Point(oval.X + (oval.Height / 2) + (i * pitch), oval.Centre.Y);
            yield return new CircleShape("pole", face.OnPage(at), radius, Paint.Filled(theme.Pole));
            if (areScrews)
            {
                yield return PathShape.Through(
                    "pole",
                    Paint.Stroked(theme.PartFill, 2 * Tokens.DetailLine),
                    face.OnPage(at - new Point(radius, 0)),
                    face.OnPage(at + new Point(radius, 0))
                );
            }
        }
    }

    private static IEnumerable<PictureItem> Bobbins(PlacedFace face, ImmutableArray<Coil> coils, Theme theme)
    {
        var body = face.MainOutline.Bounds;
        var count = Math.Clamp(coils.Length, 1, MostCoils);
        var names = face.Face.Inside;
        var strip = count > 1 && !names.IsEmpty ? FaceLine.SizeOf(names).Height + 1 : 1.5;
        var inset = new Size(Math.Min(5, body.Width / 8), Math.Min(5.2, body.Height / 4));
        var height = (body.Height - (2 * inset.Height) - ((count - 1) * strip)) / count;
        for (var i = 0; i < count && height > 2; i++)
        {
            var top = body.Y + inset.Height + (i * (height + strip));
            var oval = new Box(body.X + inset.Width, top, body.Width - (2 * inset.Width), height);
            yield return new RectangleShape("coil", face.OnPage(oval), height / 2, DetailOf(theme));
            foreach (var pole in PoleRow(face, oval, areScrews: i == 1, theme))
            {
                yield return pole;
            }

            if (count > 1 && coils[i].Name.LastIndexOf('.') is >= 0 and var dot)
            {
                yield return CoilName(face, coils[i], coils[i].Name[(dot + 1)..], oval, theme);
            }
        }
    }

    /// <summary>The coil's name and, where there is room, how it is wound; a turned pickup has the names of its leads there.</summary>
    private static TextItem CoilName(PlacedFace face, Coil coil, string name, Box oval, Theme theme)
    {
        var words = $"{name} · {CoilWords.Describe(coil.Winding, coil.Magnet)}".TrimEnd(' ', '·');
        var fits = DrawnText.Width(words, TextWeight.Regular, Tokens.LugLabelSize) <= oval.Width - oval.Height;
        var isWhole = fits && face.Placed.Turn % 180 == 0;
        var text = isWhole ? words : DrawnText.Fit(name, TextWeight.Regular, Tokens.LugLabelSize, 20);
        var at = face.OnPage(isWhole ? oval.Centre : new Point(oval.X + (oval.Height / 2), oval.Centre.Y));
        return TextItem.Centred("coil-name", text, at, TextWeight.Regular, Tokens.LugLabelSize, theme.QuietInk);
    }

    /// <summary>A dot on the edge of the body at a lead: full where a coil starts, empty where one ends.</summary>
    private static IEnumerable<PictureItem> CoilEnd(
        PlacedFace face,
        FaceLug lug,
        ImmutableArray<Coil> coils,
        Theme theme
    )
    {
        var isStart = coils.Any(coil => coil.Start == lug.Lug);
        if (!isStart && !coils.Any(coil => coil.Finish == lug.Lug))
        {
            return [];
        }

        var body = face.MainOutline.Bounds;
        var edge = lug.Outward switch
        {
            Side.North => new Point(lug.At.X, body.Y),
            Side.South => new Point(lug.At.X, body.Bottom),
            Side.East => new Point(body.Right, lug.At.Y),
            _ => new Point(body.X, lug.At.Y),
        };
        return
        [
            new CircleShape(
                isStart ? "coil-start" : "coil-finish",
                face.OnPage(edge),
                Tokens.CoilEnd,
                new Paint(isStart ? theme.Ink : theme.Paper, isStart ? theme.Paper : theme.Ink, Tokens.DetailLine)
            ),
        ];
    }
}
