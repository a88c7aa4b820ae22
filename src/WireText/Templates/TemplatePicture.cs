using System.Collections.Immutable;
using System.Globalization;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Templates;

/// <summary>The holes of a template at true size: each with a cross through its middle, its part's name and its size.</summary>
internal sealed class TemplatePicture
{
    private static readonly Theme Theme = Theme.Print;
    private static readonly TextStyle Name = new(TextWeight.SemiBold, TemplateTokens.NameSize, Theme.Ink);
    private static readonly TextStyle Size = new(TextWeight.Regular, TemplateTokens.SizeSize, Theme.Ink);
    private static readonly TextStyle Side = new(TextWeight.SemiBold, TemplateTokens.SideSize, Theme.Ink);

    private readonly TemplateHoles template;
    private readonly List<PictureItem> items = [];
    private readonly List<Box> taken = [];

    private TemplatePicture(TemplateHoles template) => this.template = template;

    public static Picture Of(TemplateHoles template, string title) => new TemplatePicture(template).Build(title);

    private Picture Build(string title)
    {
        foreach (var placed in template.Placed)
        {
            Body(placed.Outline);
        }

        taken.AddRange(template.Holes.Select(hole => hole.Bounds));
        foreach (var hole in template.Holes)
        {
            Hole(hole);
        }

        foreach (var placed in template.Placed.Where(placed => template.Unknown.Contains(placed.Part)))
        {
            Cross(placed.At, TemplateTokens.LoneCross, TemplateTokens.LoneCross);
            Label(Box.Around(placed.At, 0, 0), [(placed.Part, Name), ("hole not known", Size)]);
        }

        Origin();
        var drawn = taken.Concat(template.Placed.Select(placed => placed.Outline?.Bounds).OfType<Box>());
        return OnPage(drawn.Aggregate(Box.Union).Grown(TemplateTokens.CrossReach + TemplateTokens.Margin), title);
    }

    private static Paint Thin => Paint.Stroked(Theme.Ink, TemplateTokens.CrossLine);

    private void Body(Outline? outline)
    {
        var paint = Paint.Stroked(Theme.PartLine, TemplateTokens.BodyLine) with
        {
            Dashes = [TemplateTokens.BodyDash, TemplateTokens.BodyDash],
        };
        if (outline is Outline.Circle circle)
        {
            items.Add(new CircleShape("body", circle.Centre, circle.Radius, paint));
        }
        else if (outline is Outline.Rectangle rectangle)
        {
            items.Add(new RectangleShape("body", rectangle.Box, 0, paint));
        }
    }

    private void Hole(TemplateHole hole)
    {
        var (paint, box) = (Paint.Stroked(Theme.Ink, TemplateTokens.HoleLine), hole.Bounds);
        PictureShape shape = hole.Shape is HoleShape.Round round
            ? new CircleShape("hole", hole.At, round.Diameter / 2, paint)
            : new RectangleShape("hole", box, Math.Min(box.Width, box.Height) / 2, paint);
        items.Add(shape with { Shows = [("part", hole.Part)] });
        Cross(hole.At, (box.Width / 2) + TemplateTokens.CrossReach, (box.Height / 2) + TemplateTokens.CrossReach);
        Label(
            box,
            [.. hole.IsMain ? [(hole.Part, Name)] : Array.Empty<(string, TextStyle)>(), (hole.Shape.InWords, Size)]
        );
    }

    private void Cross(Point at, double reachX, double reachY)
    {
        items.Add(PathShape.Through("cross", Thin, at - new Point(reachX, 0), at + new Point(reachX, 0)));
        items.Add(PathShape.Through("cross", Thin, at - new Point(0, reachY), at + new Point(0, reachY)));
    }

    /// <summary>Lines of words beside a hole, where they lie on the least: beyond the ends of its cross, or between them.</summary>
    private void Label(Box hole, ImmutableArray<(string Text, TextStyle Style)> lines)
    {
        var fitting = lines
            .Select(line => line with { Text = line.Style.Fit(line.Text, TemplateTokens.Widest) })
            .ToList();
        var width = fitting.Max(line => line.Style.WidthOf(line.Text));
        var height = fitting.Sum(line => line.Style.Size * Tokens.LineHeight);
        var aside = TemplateTokens.LabelGap;
        var beyond = TemplateTokens.CrossReach + aside;
        var box = new[]
        {
            new Box(hole.Centre.X + aside, hole.Bottom + aside, width, height),
            new Box(hole.Centre.X - aside - width, hole.Bottom + aside, width, height),
            new Box(hole.Centre.X + aside, hole.Y - aside - height, width, height),
            new Box(hole.Centre.X - aside - width, hole.Y - aside - height, width, height),
            new Box(hole.Right + beyond, hole.Centre.Y - (height / 2), width, height),
            new Box(hole.X - beyond - width, hole.Centre.Y - (height / 2), width, height),
        }.MinBy(place => taken.Count(place.Overlaps));
        taken.Add(box);
        items.Add(
            new RectangleShape(
                "label-paper",
                box with
                {
                    Height = height - TemplateTokens.LabelGap,
                },
                0,
                Paint.Filled(Theme.Paper)
            )
        );
        var y = box.Y;
        foreach (var (text, style) in fitting)
        {
            items.Add(TextItem.Start("label", text, new Point(box.X, y + (style.Size * DrawnText.CapHeight)), style));
            y += style.Size * Tokens.LineHeight;
        }
    }

    /// <summary>Where the places are measured from, when it lies near.</summary>
    private void Origin()
    {
        var zero = new Point(0, 0);
        if (taken.Exists(box => box.DistanceTo(zero) < TemplateTokens.OriginReach))
        {
            Cross(zero, TemplateTokens.LoneCross, TemplateTokens.LoneCross);
            Label(Box.Around(zero, 0, 0), [("0,0 of the places", Size)]);
        }
    }

    private Picture OnPage(Box drawn, string title)
    {
        var words = DrawnText.Wrap(
            template.Side.InWords(),
            Side.Weight,
            Side.Size,
            Math.Max(drawn.Width, 2 * TemplateTokens.Widest)
        );
        var width = Math.Max(drawn.Width, words.Max(Side.WidthOf));
        var top = words.Count * Side.Size * Tokens.LineHeight;
        var page = new Size(width, top + drawn.Height);
        var shown = new List<PictureItem>
        {
            new RectangleShape("paper", new Box(0, 0, page.Width, page.Height), 0, Paint.Filled(Theme.Paper)),
        };
        var column = new TextColumn(shown, 0, width, 0);
        foreach (var line in words)
        {
            column.Line("side", line, Side);
        }

        shown.Add(
            new PictureView("template", new Point(((width - drawn.Width) / 2) - drawn.X, top - drawn.Y), 1, [.. items])
        );
        return new Picture(
            page,
            DrawnText.Clean(title),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{template.Holes.Length} holes at true size. {template.Side.InWords()}."
            ),
            Theme,
            [.. shown]
        );
    }
}
