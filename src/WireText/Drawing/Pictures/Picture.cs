using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>A finished drawing: shapes, texts and paths in millimetres on the page, in the order in which they are painted.</summary>
/// <param name="Page">The size of the paper; nothing lies outside it.</param>
/// <param name="Description">One sentence for who cannot see it.</param>
public sealed record Picture(
    Size Page,
    string Title,
    string Description,
    Theme Theme,
    ImmutableArray<PictureItem> Items
);

/// <summary>Something on a picture.</summary>
/// <param name="Class">What it is, such as <c>casing</c>.</param>
public abstract record PictureItem(string Class)
{
    /// <summary>Unique in the picture, or null.</summary>
    public string? Id { get; init; }

    /// <summary>What it shows: the part, lug, wire or net, as names and values. What a group shows, its items show too.</summary>
    public ImmutableArray<(string Name, string Value)> Shows { get; init; } = [];
}

public sealed record PictureGroup(string Class, ImmutableArray<PictureItem> Items) : PictureItem(Class);

/// <summary>A picture within a picture: its items, made smaller and moved. It shows what stands elsewhere in full and has no ids.</summary>
/// <param name="At">Where the items' origin goes.</param>
/// <param name="Scale">Millimetres of the page for a millimetre of an item.</param>
public sealed record PictureView(string Class, Point At, double Scale, ImmutableArray<PictureItem> Items)
    : PictureItem(Class);

/// <summary>How an outline is painted.</summary>
/// <param name="LineWidth">In millimetres.</param>
public sealed record Paint(Colour? Fill, Colour? Line, double LineWidth)
{
    /// <summary>Dash and gap in turn, in millimetres; empty for an unbroken line.</summary>
    public ImmutableArray<double> Dashes { get; init; } = [];

    public bool HasRoundEnds { get; init; }

    public static Paint Filled(Colour fill) => new(fill, null, 0);

    public static Paint Stroked(Colour line, double width) => new(null, line, width);
}

public abstract record PictureShape(string Class, Paint Paint) : PictureItem(Class);

/// <param name="Corner">The radius of its corners.</param>
public sealed record RectangleShape(string Class, Box Box, double Corner, Paint Paint) : PictureShape(Class, Paint);

public sealed record CircleShape(string Class, Point Centre, double Radius, Paint Paint) : PictureShape(Class, Paint);

public sealed record PathShape(string Class, ImmutableArray<PathStep> Steps, Paint Paint) : PictureShape(Class, Paint)
{
    /// <summary>A straight line through points.</summary>
    public static PathShape Through(string name, Paint paint, params ReadOnlySpan<Point> points)
    {
        var steps = ImmutableArray.CreateBuilder<PathStep>(points.Length);
        foreach (var point in points)
        {
            steps.Add(steps.Count == 0 ? new PathStep.Move(point) : new PathStep.Line(point));
        }

        return new PathShape(name, steps.ToImmutable(), paint);
    }
}

public enum TextAlign
{
    Start,
    Middle,
    End,
}

/// <summary>One line of text, clean already.</summary>
/// <param name="At">On the baseline, at the place that <paramref name="Align"/> says.</param>
/// <param name="Width">What it takes up by our table of widths.</param>
/// <param name="IsVertical">Read from below upwards: turned round <paramref name="At"/> by 90° to the left.</param>
public sealed record TextItem(
    string Class,
    string Text,
    Point At,
    TextAlign Align,
    TextWeight Weight,
    double Size,
    Colour Colour,
    double Width,
    bool IsVertical
) : PictureItem(Class)
{
    /// <summary>A text centred on a point, both ways, by the height of its capitals.</summary>
    public static TextItem Centred(
        string name,
        string text,
        Point centre,
        TextWeight weight,
        double size,
        Colour colour,
        bool isVertical = false
    )
    {
        var drop = size * DrawnText.CapHeight / 2;
        var at = isVertical ? new Point(centre.X + drop, centre.Y) : new Point(centre.X, centre.Y + drop);
        var width = DrawnText.Width(text, weight, size);
        return new TextItem(name, text, at, TextAlign.Middle, weight, size, colour, width, isVertical);
    }

    public static TextItem Start(string name, string text, Point at, TextWeight weight, double size, Colour colour) =>
        new(name, text, at, TextAlign.Start, weight, size, colour, DrawnText.Width(text, weight, size), false);

    /// <summary>What the letters take up, with what hangs below their line.</summary>
    public Box Ink
    {
        get
        {
            var descent = DrawnText.Descent(Text, Size);
            return IsVertical
                ? Bounds with
                {
                    Width = Bounds.Width + descent,
                }
                : Bounds with
                {
                    Height = Bounds.Height + descent,
                };
        }
    }

    /// <summary>What the capitals take up.</summary>
    public Box Bounds
    {
        get
        {
            var height = Size * DrawnText.CapHeight;
            var before = Align switch
            {
                TextAlign.Start => 0,
                TextAlign.Middle => Width / 2,
                _ => Width,
            };
            return IsVertical
                ? new Box(At.X - height, At.Y + before - Width, height, Width)
                : new Box(At.X - before, At.Y - height, Width, height);
        }
    }
}
