using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Frames;

/// <summary>Names on a frame that are read from afar: each in the free place nearest to what it names, with a line to it.</summary>
internal sealed class Callouts
{
    private readonly FrameLayout frame;
    private readonly Theme theme;
    private readonly LabelSpace space;
    private readonly Box room;
    private readonly double scale;
    private readonly Box view;
    private readonly TextStyle style;

    /// <param name="view">What of the drawing the stage shows.</param>
    public Callouts(FrameDrawing drawing, FrameLayout frame, Box view)
    {
        (this.frame, this.view, theme) = (frame, view, drawing.Scene.Theme);
        scale = frame.Stage.Width / view.Width;
        var stage = frame.Stage;
        var (left, top) = (Math.Max(stage.X, frame.Safe.X), Math.Max(stage.Y, frame.Safe.Y));
        var (right, bottom) = (Math.Min(stage.Right, frame.Safe.Right), stage.Bottom);
        room = Box.Spanning(OnDrawing(new Point(left, top)), OnDrawing(new Point(right, bottom)));
        space = drawing.Space(room);
        style = new TextStyle(TextWeight.SemiBold, FrameTokens.NameSize * frame.Unit, theme.Ink);
    }

    /// <summary>The names as they are written.</summary>
    public string Written(string name) => style.Fit(name, FrameTokens.WidestName * frame.Unit);

    /// <summary>Keeps names off a part of the drawing.</summary>
    public void KeepOff(Box taken) => space.Take(taken);

    /// <param name="hasRings">True where places are lugs; a part is large enough to be found by its line.</param>
    /// <param name="distances">How far from its place a name may lie, in pixels; nearer is liked better.</param>
    public ImmutableArray<PictureItem> Place(
        ImmutableArray<FrameName> names,
        ImmutableArray<double> distances,
        bool hasRings
    )
    {
        var ring = 2 * FrameTokens.Ring * frame.Unit / scale;
        foreach (var at in names.SelectMany(name => name.Places))
        {
            space.Take(Box.Around(at, ring, ring));
        }

        var boxes = names
            .Where(name => !name.Places.IsEmpty)
            .Select(name => (Name: name, Box: BoxOf(name, distances)))
            .ToList();
        return
        [
            .. boxes.SelectMany(placed => placed.Name.Places.Select(at => Line(at, placed.Box))),
            .. hasRings ? names.SelectMany(name => name.Places).Select(Ring) : [],
            .. boxes.SelectMany(placed => Words(placed.Name.Text, placed.Box)),
        ];
    }

    private Point OnDrawing(Point at) =>
        new(view.X + ((at.X - frame.Stage.X) / scale), view.Y + ((at.Y - frame.Stage.Y) / scale));

    private Point OnFrame(Point at) =>
        new(frame.Stage.X + ((at.X - view.X) * scale), frame.Stage.Y + ((at.Y - view.Y) * scale));

    /// <summary>On the frame.</summary>
    private Box BoxOf(FrameName name, ImmutableArray<double> distances)
    {
        var height = FrameTokens.NameHeight * frame.Unit;
        var width = style.WidthOf(name.Text) + (2 * FrameTokens.NamePadding * frame.Unit);
        var own = new Size(width / scale, height / scale);
        var best = space.Best(
            from distance in distances
            from direction in Enumerable.Range(0, FrameTokens.NameDirections)
            select Within(Around(name.Places[0], distance * frame.Unit / scale, direction, own))
        );
        space.Take(best);
        return Box.Around(OnFrame(best.Centre), width, height);
    }

    private static Box Around(Point at, double distance, int direction, Size size)
    {
        var angle = 2 * Math.PI * direction / FrameTokens.NameDirections;
        var wider = (size.Width - size.Height) / 2;
        var centre = new Point(at.X + (Math.Cos(angle) * (distance + wider)), at.Y + (Math.Sin(angle) * distance));
        return Box.Around(centre, size.Width, size.Height);
    }

    /// <summary>Moved into the safe part of the stage.</summary>
    private Box Within(Box box) =>
        box with
        {
            X = Math.Clamp(box.X, room.X, Math.Max(room.X, room.Right - box.Width)),
            Y = Math.Clamp(box.Y, room.Y, Math.Max(room.Y, room.Bottom - box.Height)),
        };

    private PathShape Line(Point at, Box box) =>
        PathShape.Through(
            "name-line",
            Paint.Stroked(theme.Warning, FrameTokens.NameLine * frame.Unit),
            OnFrame(at),
            box.Centre
        );

    private CircleShape Ring(Point at) =>
        new(
            "ring",
            OnFrame(at),
            FrameTokens.Ring * frame.Unit,
            Paint.Stroked(theme.Warning, FrameTokens.RingLine * frame.Unit)
        );

    private IEnumerable<PictureItem> Words(string text, Box box)
    {
        yield return new RectangleShape(
            "name-box",
            box,
            box.Height / 4,
            new Paint(theme.Paper, theme.Warning, FrameTokens.NameLine * frame.Unit)
        );
        yield return TextItem.Centred("name", text, box.Centre, style.Weight, style.Size, style.Colour);
    }
}
