using System.Collections.Immutable;
using WireText.Geometry;

namespace WireText.Drawing.Shapes;

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
