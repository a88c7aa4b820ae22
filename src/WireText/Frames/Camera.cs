using WireText.Geometry;

namespace WireText.Frames;

/// <summary>
/// What of the drawing each frame shows. A view stays while it holds what the next step is about; where it does not, the new one
/// takes in as many of the following steps as it can.
/// </summary>
internal sealed class Camera(Box whole, FrameLayout frame)
{
    private const int Thousandths = 1000;

    private readonly double margin = FrameTokens.ViewMargin * frame.Unit;

    /// <summary>The views, one a step.</summary>
    /// <param name="steps">What each is about, in millimetres of the drawing; null for what has no place there.</param>
    public IReadOnlyList<Box> Views(IReadOnlyList<Box?> steps)
    {
        var views = new List<Box>();
        for (var i = 0; i < steps.Count; i++)
        {
            var stays = views.Count > 0 && (steps[i] is not { } about || Holds(views[^1], about));
            views.Add(
                stays ? views[^1]
                : steps[i] is { } first ? ViewOf(Together(first, steps.Skip(i + 1)))
                : Whole
            );
        }

        return views;
    }

    /// <summary>The view of all, as large as it can be.</summary>
    public Box Whole =>
        At(whole.Centre, Cut(Math.Min(frame.Stage.Width / whole.Width, frame.Stage.Height / whole.Height)));

    /// <summary>True when a step lies inside a view, with room for its names, and is not too small there.</summary>
    public bool Holds(Box view, Box about)
    {
        const double Near = 1e-6;
        var scale = frame.Stage.Width / view.Width;
        return view.Grown(Near).Contains(about.Grown(margin / scale))
            && scale >= (FrameTokens.LeastShare * ScaleOf(about)) - Near;
    }

    private Box Together(Box first, IEnumerable<Box?> next)
    {
        var (all, best) = (first, ScaleOf(first));
        foreach (var about in next.OfType<Box>())
        {
            var wider = Box.Union(all, about);
            best = Math.Max(best, ScaleOf(about));
            if (ScaleOf(wider) < FrameTokens.LeastShare * best)
            {
                break;
            }

            all = wider;
        }

        return all;
    }

    /// <summary>Millimetres of the frame for one of the drawing: the largest at which a box has its margin, cut to what an SVG holds exactly.</summary>
    private double ScaleOf(Box about)
    {
        var (width, height) = (frame.Stage.Width - (2 * margin), frame.Stage.Height - (2 * margin));
        var scale = Math.Min(
            FrameTokens.Closest * frame.Unit,
            Math.Min(width / Math.Max(about.Width, 1), height / Math.Max(about.Height, 1))
        );
        return Cut(scale);
    }

    private static double Cut(double scale) => Math.Floor(scale * Thousandths) / Thousandths;

    private Box ViewOf(Box about)
    {
        var scale = ScaleOf(about);
        var room = whole.Grown(margin / scale);
        var view = At(about.Centre, scale);
        return new Box(
            Within(view.X, view.Width, room.X, room.Width),
            Within(view.Y, view.Height, room.Y, room.Height),
            view.Width,
            view.Height
        );
    }

    private Box At(Point centre, double scale) =>
        Box.Around(centre, frame.Stage.Width / scale, frame.Stage.Height / scale);

    /// <summary>Along one side: not past the drawing, and in its middle where the view is larger.</summary>
    private static double Within(double from, double length, double start, double room) =>
        length >= room ? start + ((room - length) / 2) : Math.Clamp(from, start, start + room - length);
}
