using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Pictures;

/// <summary>Paints a part as it is seen from behind: quiet, and with just enough shape to be recognised by who holds the real one.</summary>
internal sealed class PartPainter(Scene scene, PlacedFace part)
{
    private readonly Theme _theme = scene.Theme;
    private readonly Part _part = scene.Circuit.Parts[part.Index];
    private readonly List<PictureItem> _items = [];

    public PictureGroup Paint()
    {
        PaintStubs();
        PaintBodies();
        PaintArt();
        PaintWords();
        return new PictureGroup("part", [.. _items])
        {
            Id = ShapeIds.Of("part", _part.Name),
            Shows = part.Face.Layout.Seat is { } seat
                ? [("part", _part.Name), ("kind", _part.Kind), ("on", seat.Host)]
                : [("part", _part.Name), ("kind", _part.Kind)],
        };
    }

    private bool IsTwoLead => FaceSizes.IsTwoLead(_part);

    private Outline MainOutline => part.Face.Layout.Body[0];

    private Paint Outlined(Colour fill) => new(fill, _theme.PartLine, Tokens.PartLine);

    private Paint Detail => Shapes.Paint.Stroked(_theme.Detail, Tokens.DetailLine);

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
        var style = IsTwoLead || own.IsEmpty ? WireStyle.Neutral(_theme) : WireStyle.Of(_theme, own[0]);
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

        _items.Add(Body(part.OnPage(MainOutline), Outlined(Fill)));
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

    private Colour Fill =>
        _part.Kind switch
        {
            "pot" or "switch" or "button" or "jack" => _theme.Shell,
            "metal" => _theme.Shell,
            "splice" => _theme.Paper,
            _ => _theme.PartFill,
        };

    private PictureShape Body(Outline outline, Paint paint) =>
        outline switch
        {
            Outline.Circle circle => new CircleShape("body", circle.Centre, circle.Radius, paint),
            Outline.Rectangle rectangle => new RectangleShape("body", rectangle.Box, CornerOf(rectangle.Box), paint),
            _ => throw new InvalidOperationException("A body is a circle or a rectangle."),
        };

    private double CornerOf(Box box)
    {
        var shorter = Math.Min(box.Width, box.Height);
        return _part.Kind switch
        {
            "pickup" => Math.Min(shorter / 2, 4),
            "splice" or "resistor" or "inductor" => shorter / 2,
            "cap" => Math.Min(shorter / 3, 2),
            _ => Math.Min(shorter / 4, Tokens.BodyCorner),
        };
    }

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

    private void PaintArt()
    {
        switch (_part.Kind)
        {
            case "pickup":
                PaintBobbins();
                break;
            case "jack":
                PaintJack();
                break;
            case "metal":
                PaintHatching();
                break;
            case "button":
                PaintRing(0.6);
                break;
            case "switch" when MainOutline is Outline.Circle:
                PaintRotaryWafer();
                break;
            case "switch":
                PaintContactRails();
                break;
            case "pot":
                PaintSwitchBlock();
                break;
            case "inductor":
                PaintWinding();
                break;
            case "splice":
                PaintSleeve();
                break;
            case "cap" when _part.HasTrait("electrolytic"):
                PaintPlus();
                break;
            default:
                break;
        }
    }

    /// <summary>One oval a coil, and at each lead whether the coil starts or ends there.</summary>
    private void PaintBobbins()
    {
        var coils = _part.Elements.Select(e => scene.Circuit.Elements[e]).OfType<Coil>().ToImmutableArray();
        var body = MainOutline.Bounds;
        var count = Math.Clamp(coils.Length, 1, 4);
        var names = part.Face.Inside;
        var strip = count > 1 && !names.IsEmpty ? FaceLine.SizeOf(names).Height + 1 : 1.5;
        var inset = new Size(Math.Min(5, body.Width / 8), Math.Min(5.2, body.Height / 4));
        var height = (body.Height - (2 * inset.Height) - ((count - 1) * strip)) / count;
        for (var i = 0; i < count && height > 2; i++)
        {
            var top = body.Y + inset.Height + (i * (height + strip));
            var oval = new Box(body.X + inset.Width, top, body.Width - (2 * inset.Width), height);
            _items.Add(new RectangleShape("coil", part.OnPage(oval), height / 2, Detail));
            if (count > 1 && coils[i].Name.LastIndexOf('.') is >= 0 and var dot)
            {
                PaintCoilWords(coils[i], coils[i].Name[(dot + 1)..], oval);
            }
        }

        foreach (var lug in part.Face.Lugs)
        {
            MarkCoilEnd(lug, coils, body);
        }
    }

    /// <summary>The coil's name and, where there is room, how it is wound; a turned pickup has the names of its leads there.</summary>
    private void PaintCoilWords(Coil coil, string name, Box oval)
    {
        var words = $"{name} · {CoilWords.Describe(coil.Winding, coil.Magnet)}".TrimEnd(' ', '·');
        var fits = DrawnText.Width(words, TextWeight.Regular, Tokens.LugLabelSize) <= oval.Width - oval.Height;
        var isWhole = fits && part.Placed.Turn % 180 == 0;
        var text = isWhole ? words : DrawnText.Fit(name, TextWeight.Regular, Tokens.LugLabelSize, 20);
        var at = part.OnPage(isWhole ? oval.Centre : new Point(oval.X + (oval.Height / 2), oval.Centre.Y));
        _items.Add(TextItem.Centred("coil-name", text, at, TextWeight.Regular, Tokens.LugLabelSize, _theme.QuietInk));
    }

    private void MarkCoilEnd(FaceLug lug, ImmutableArray<Coil> coils, Box body)
    {
        var isStart = coils.Any(coil => coil.Start == lug.Lug);
        if (!isStart && !coils.Any(coil => coil.Finish == lug.Lug))
        {
            return;
        }

        var edge = lug.Outward switch
        {
            Side.North => new Point(lug.At.X, body.Y),
            Side.South => new Point(lug.At.X, body.Bottom),
            Side.East => new Point(body.Right, lug.At.Y),
            _ => new Point(body.X, lug.At.Y),
        };
        var fill = isStart ? _theme.Ink : _theme.Paper;
        _items.Add(
            new CircleShape(
                isStart ? "coil-start" : "coil-finish",
                part.OnPage(edge),
                Tokens.CoilEnd,
                new Paint(fill, isStart ? _theme.Paper : _theme.Ink, Tokens.DetailLine)
            )
        );
    }

    /// <summary>The barrel, and the springs: the tip's is the long one.</summary>
    private void PaintJack()
    {
        var body = MainOutline.Bounds;
        var barrel = part.BarrelRadius;
        var centre = part.OnPage(body.Centre);
        var spring = new Paint(null, _theme.PartLine, Tokens.SpringWidth + (2 * Tokens.DetailLine))
        {
            HasRoundEnds = true,
        };
        var metal = new Paint(null, _theme.Tin, Tokens.SpringWidth) { HasRoundEnds = true };
        foreach (var (from, to) in part.Springs())
        {
            _items.Add(PathShape.Through("spring", spring, from, to));
            _items.Add(PathShape.Through("spring", metal, from, to));
        }

        _items.Add(new CircleShape("barrel", centre, barrel, Shapes.Paint.Stroked(_theme.PartLine, Tokens.DetailLine)));
    }

    private void PaintHatching()
    {
        var box = part.OnPage(MainOutline.Bounds);
        for (var along = Tokens.HatchPitch; along < box.Width + box.Height; along += Tokens.HatchPitch)
        {
            // From the top or right edge down to the left or bottom edge, at 45°.
            var from = new Point(box.X + Math.Min(along, box.Width), box.Y + Math.Max(0, along - box.Width));
            var to = new Point(box.X + Math.Max(0, along - box.Height), box.Y + Math.Min(along, box.Height));
            _items.Add(PathShape.Through("hatch", Detail, from, to));
        }
    }

    private void PaintRing(double share)
    {
        var bounds = MainOutline.Bounds;
        var radius = Math.Min(bounds.Width, bounds.Height) / 2 * share;
        _items.Add(new CircleShape("detail", part.OnPage(bounds.Centre), radius, Detail));
    }

    /// <summary>The boards that rows of lugs are riveted to: a tone without a line, so that nothing competes with wires or names.</summary>
    private void PaintContactRails()
    {
        var rows = part
            .Face.Lugs.Where(lug => lug.Look == LugLook.Riveted)
            .GroupBy(lug => Math.Round(lug.At.Y, 3))
            .Where(row => row.Count() > 1)
            .OrderBy(row => row.Key);
        var body = MainOutline.Bounds.Grown(-Tokens.RailInset);
        foreach (var row in rows)
        {
            var half = Tokens.RailWidth / 2;
            var (top, bottom) = (Math.Max(body.Y, row.Key - half), Math.Min(body.Bottom, row.Key + half));
            var rail = new Box(body.X, top, body.Width, bottom - top);
            _items.Add(
                new RectangleShape("rail", part.OnPage(rail), Tokens.BodyCorner, Shapes.Paint.Filled(_theme.PartFill))
            );
        }
    }

    /// <summary>The round board of a rotary switch and its shaft in the middle, where no lug sits there.</summary>
    private void PaintRotaryWafer()
    {
        var body = MainOutline.Bounds;
        var radius = (Math.Min(body.Width, body.Height) / 2) - Tokens.RailInset;
        var centre = part.OnPage(body.Centre);
        _items.Add(new CircleShape("rail", centre, radius, Shapes.Paint.Filled(_theme.PartFill)));
        if (
            part.Face.Inside.IsEmpty
            && part.Face.Lugs.All(lug => Point.Distance(lug.At, body.Centre) > Tokens.ShaftDiameter)
        )
        {
            PaintRing(Tokens.ShaftDiameter / Math.Min(body.Width, body.Height));
        }
    }

    /// <summary>The switch on the back of a push-pull pot.</summary>
    private void PaintSwitchBlock()
    {
        var inner = part.Face.Lugs.Where(lug => lug.Look == LugLook.Riveted).ToImmutableArray();
        if (inner.Length < 2)
        {
            return;
        }

        var box = inner.Select(lug => Box.Around(lug.At, 0, 0)).Aggregate(Box.Union);
        var block = new Box(box.X - 2.4, box.Y - 2.2, box.Width + 4.8, box.Height + 4.4);
        _items.Add(
            new RectangleShape(
                "detail",
                part.OnPage(block),
                Tokens.BodyCorner,
                new Paint(_theme.PartFill, _theme.Detail, Tokens.DetailLine)
            )
        );
    }

    private void PaintWinding()
    {
        var box = MainOutline.Bounds;
        foreach (var x in new[] { box.X + 1.6, box.Right - 1.6 })
        {
            _items.Add(
                PathShape.Through(
                    "detail",
                    Detail,
                    part.OnPage(new Point(x, box.Y + 0.4)),
                    part.OnPage(new Point(x, box.Bottom - 0.4))
                )
            );
        }
    }

    private void PaintSleeve()
    {
        var box = part.OnPage(MainOutline.Bounds.Grown(-0.7));
        _items.Add(new RectangleShape("detail", box, Math.Min(box.Width, box.Height) / 2, Detail));
    }

    private void PaintPlus()
    {
        var box = MainOutline.Bounds;
        var at = part.OnPage(new Point(box.X + 1.2, box.Y + 1.4));
        _items.Add(TextItem.Centred("mark", "+", at, TextWeight.SemiBold, Tokens.LugLabelSize, _theme.Ink));
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
