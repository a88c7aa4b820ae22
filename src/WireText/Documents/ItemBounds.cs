using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Documents;

/// <summary>What items of a picture take up.</summary>
internal static class ItemBounds
{
    /// <summary>The item, or as much of a group as has something within a window; null for nothing.</summary>
    public static PictureItem? Within(PictureItem item, Box window)
    {
        if (item is PictureGroup group)
        {
            var inner = group.Items.Select(one => Within(one, window)).OfType<PictureItem>().ToList();
            return inner.Count == 0 ? null : group with { Items = [.. inner] };
        }

        return Of(item).Overlaps(window) ? item : null;
    }

    private static Box Of(PictureItem item) =>
        item switch
        {
            PictureGroup group => group.Items.Select(Of).Aggregate(Box.Union),
            PictureView view => OfView(view),
            RectangleShape rectangle => rectangle.Box.Grown(rectangle.Paint.LineWidth / 2),
            CircleShape circle => Box.Around(circle.Centre, 2 * circle.Radius, 2 * circle.Radius)
                .Grown(circle.Paint.LineWidth / 2),
            PathShape path => path.Steps.Select(Of).Aggregate(Box.Union).Grown(path.Paint.LineWidth / 2),
            TextItem text => text.Ink,
            _ => throw new InvalidOperationException($"No bounds for {item.GetType().Name}."),
        };

    private static Box OfView(PictureView view)
    {
        var inner = view.Items.Select(Of).Aggregate(Box.Union);
        return new Box(
            view.At.X + (inner.X * view.Scale),
            view.At.Y + (inner.Y * view.Scale),
            inner.Width * view.Scale,
            inner.Height * view.Scale
        );
    }

    private static Box Of(PathStep step) =>
        step switch
        {
            PathStep.Turn turn => Box.Spanning(turn.Corner, turn.To),
            PathStep.Hop hop => Box.Around(hop.To, 4 * hop.Radius, 4 * hop.Radius),
            _ => Box.Spanning(step.To, step.To),
        };
}
