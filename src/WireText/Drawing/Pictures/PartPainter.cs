using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Faces.Looks;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Pictures;

/// <summary>Paints a part as it is seen from behind: quiet, and with just enough shape to be recognised by who holds the real one.</summary>
internal sealed class PartPainter(Scene scene, PlacedFace part)
{
    private readonly Theme _theme = scene.Theme;
    private readonly Part _part = scene.PartOf(part);
    private readonly Look _look = scene.LookOf(part);
    private readonly List<PictureItem> _items = [];

    public PictureGroup Paint()
    {
        PaintStubs();
        PaintBodies();
        _items.AddRange(_look.Art(part, scene.Circuit, _theme));
        PaintWords();
        return new PictureGroup("part", [.. _items])
        {
            Id = ShapeIds.Of("part", _part.Name),
            Shows = part.Face.Layout.Seat is { } seat
                ? [("part", _part.Name), ("kind", _part.Kind), ("on", seat.Host)]
                : [("part", _part.Name), ("kind", _part.Kind)],
        };
    }

    private Paint Outlined(Colour fill) => new(fill, _theme.PartLine, Tokens.PartLine);

    // What reaches out of the body lies under it.

    private void PaintStubs()
    {
        foreach (var lug in part.Face.Lugs)
        {
            var root = part.RootOf(lug);
            if (lug.Look == LugLook.Tab)
            {
                _items.Add(Tab(root, lug));
            }
            else if (lug.Look == LugLook.Lead)
            {
                _items.AddRange(LeadStub(part.OnPage(root), lug));
            }
        }
    }

    private RectangleShape Tab(Point root, FaceLug lug)
    {
        var tab = Box.Spanning(part.OnPage(root), part.OnPage(lug.At)).Grown(Tokens.TabWidth / 2);
        return new RectangleShape(
            "tab",
            tab,
            Tokens.TabWidth / 2,
            new Paint(_theme.Tin, _theme.PartLine, Tokens.DetailLine)
        );
    }

    private IEnumerable<PictureItem> LeadStub(Point root, FaceLug lug)
    {
        var own = scene.WiresAt(lug.Lug);
        var style =
            _look.HangsByTwoLeads(_part) || own.IsEmpty ? WireStyle.Neutral(_theme) : WireStyle.Of(_theme, own[0]);
        var end = part.OnPage(lug.At);
        yield return PathShape.Through("lead", style.CasingPaint, root, end);
        yield return PathShape.Through("lead", style.CorePaint, root, end);
    }

    private void PaintBodies()
    {
        // The board of a pot lies under its case.
        foreach (var board in part.Face.Layout.Body.Skip(1).OfType<Outline.Rectangle>())
        {
            _items.Add(new RectangleShape("body", part.OnPage(board.Box), 0, new Paint(null, null, 0)));
            _items.Add(Wafer(board.Box));
        }

        _items.Add(Body(part.OnPage(part.MainOutline), Outlined(_look.FillOf(_theme))));
        foreach (var surface in part.Face.Surfaces)
        {
            _items.Add(Surface(surface));
        }
    }

    private RectangleShape Wafer(Box board) =>
        new(
            "wafer",
            part.OnPage(PlacedFace.WaferOf(board)),
            Tokens.BodyCorner,
            new Paint(_theme.Wafer, _theme.PartLine, Tokens.DetailLine)
        );

    private PictureShape Body(Outline outline, Paint paint) =>
        outline switch
        {
            Outline.Circle circle => new CircleShape("body", circle.Centre, circle.Radius, paint),
            Outline.Rectangle rectangle => new RectangleShape(
                "body",
                rectangle.Box,
                _look.CornerOf(Math.Min(rectangle.Box.Width, rectangle.Box.Height)),
                paint
            ),
            _ => throw new InvalidOperationException("A body is a circle or a rectangle."),
        };

    /// <summary>Unpainted: it says where the case is for who reads the drawing by program.</summary>
    private PictureShape Surface(FaceSurface surface)
    {
        var none = new Paint(null, null, 0);
        var shows = scene.Shows(surface.Lug);
        return part.OnPage(surface.Shape) switch
        {
            Outline.Circle circle => new CircleShape("surface", circle.Centre, circle.Radius, none) { Shows = shows },
            Outline.Rectangle rectangle => new RectangleShape("surface", rectangle.Box, 0, none) { Shows = shows },
            _ => throw new InvalidOperationException("A surface is a circle or a rectangle."),
        };
    }

    private void PaintWords()
    {
        _items.AddRange(PartText.Inside(part, _theme));
        if (part.Placed.Label is { } label && !part.Face.Outside.IsEmpty)
        {
            _items.AddRange(PartText.Stack(part.Face.Outside, label.Centre, isVertical: false, _theme));
        }
    }
}
