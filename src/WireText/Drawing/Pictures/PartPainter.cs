using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Faces.Looks;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Paints a part as it is seen from behind: quiet, and with just enough shape to be recognised by who holds the real one.</summary>
internal sealed class PartPainter(Scene scene, PlacedFace face)
{
    private readonly Theme theme = scene.Theme;
    private readonly Part part = scene.PartOf(face);
    private readonly Look look = scene.LookOf(face);
    private readonly List<PictureItem> items = [];

    public PictureGroup Paint()
    {
        PaintStubs();
        PaintBodies();
        items.AddRange(look.Art(face, scene.Circuit, theme));
        PaintWords();
        if (scene.HasHeatSign(face))
        {
            items.AddRange(HeatSign.At(HeatSign.PlaceOn(face.OnPage(face.MainOutline.Bounds)), theme));
        }

        return new PictureGroup("part", [.. items])
        {
            Id = ShapeIds.Of("part", part.Name),
            Shows = face.Face.Layout.Seat is { } seat
                ? [("part", part.Name), ("kind", part.Kind), ("on", seat.Host)]
                : [("part", part.Name), ("kind", part.Kind)],
        };
    }

    private Paint Outlined(Colour fill) => new(fill, theme.PartLine, Tokens.PartLine);

    // What reaches out of the body lies under it.

    private void PaintStubs()
    {
        foreach (var lug in face.Face.Lugs)
        {
            var root = face.RootOf(lug);
            if (lug.Look == LugLook.Tab)
            {
                items.Add(Tab(root, lug));
            }
            else if (lug.Look == LugLook.Lead)
            {
                items.AddRange(LeadStub(face.OnPage(root), lug));
            }
        }
    }

    private RectangleShape Tab(Point root, FaceLug lug)
    {
        var tab = Box.Spanning(face.OnPage(root), face.OnPage(lug.At)).Grown(Tokens.TabWidth / 2);
        return new RectangleShape(
            "tab",
            tab,
            Tokens.TabWidth / 2,
            new Paint(theme.Tin, theme.PartLine, Tokens.DetailLine)
        );
    }

    private IEnumerable<PictureItem> LeadStub(Point root, FaceLug lug)
    {
        var own = scene.WiresAt(lug.Lug);
        var style = look.HangsByTwoLeads(part) || own.IsEmpty ? WireStyle.Neutral(theme) : WireStyle.Of(theme, own[0]);
        var end = face.OnPage(lug.At);
        yield return PathShape.Through("lead", style.CasingPaint, root, end);
        yield return PathShape.Through("lead", style.CorePaint, root, end);
    }

    private void PaintBodies()
    {
        // The board of a pot lies under its case.
        foreach (var board in face.Face.Layout.Body.Skip(1).OfType<Outline.Rectangle>())
        {
            items.Add(new RectangleShape("body", face.OnPage(board.Box), 0, new Paint(null, null, 0)));
            items.Add(Wafer(board.Box));
        }

        items.Add(Body(face.OnPage(face.MainOutline), Outlined(look.FillOf(theme))));
        foreach (var surface in face.Face.Surfaces)
        {
            items.Add(Surface(surface));
        }
    }

    private RectangleShape Wafer(Box board) =>
        new(
            "wafer",
            face.OnPage(PlacedFace.WaferOf(board)),
            Tokens.BodyCorner,
            new Paint(theme.Wafer, theme.PartLine, Tokens.DetailLine)
        );

    private PictureShape Body(Outline outline, Paint paint) =>
        outline switch
        {
            Outline.Circle circle => new CircleShape("body", circle.Centre, circle.Radius, paint),
            Outline.Rectangle rectangle => new RectangleShape(
                "body",
                rectangle.Box,
                look.CornerOf(Math.Min(rectangle.Box.Width, rectangle.Box.Height)),
                paint
            ),
            _ => throw new InvalidOperationException("A body is a circle or a rectangle."),
        };

    /// <summary>Unpainted: it says where the case is for who reads the drawing by program.</summary>
    private PictureShape Surface(FaceSurface surface)
    {
        var none = new Paint(null, null, 0);
        var shows = scene.Shows(surface.Lug);
        return face.OnPage(surface.Shape) switch
        {
            Outline.Circle circle => new CircleShape("surface", circle.Centre, circle.Radius, none) { Shows = shows },
            Outline.Rectangle rectangle => new RectangleShape("surface", rectangle.Box, 0, none) { Shows = shows },
            _ => throw new InvalidOperationException("A surface is a circle or a rectangle."),
        };
    }

    private void PaintWords()
    {
        items.AddRange(PartText.Inside(face, theme));
        if (face.Placed.Label is { } label && !face.Face.Outside.IsEmpty)
        {
            items.AddRange(PartText.Stack(face.Face.Outside, label.Centre, isVertical: false, theme));
        }
    }
}
