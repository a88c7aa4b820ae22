using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>A number in a ring beside what it is about, in the free place nearest by, with a line to it.</summary>
internal static class NumberTag
{
    /// <summary>From what it is about to the middle of the number, in millimetres; nearer is liked better.</summary>
    private static readonly ImmutableArray<double> Distances = [2.8, 3.6, 4.6, 5.8, 7.2, 9];

    private const int Directions = 16;

    /// <summary>Nearer than this a lug is the one that the number is about, in millimetres.</summary>
    private const double Own = 0.1;

    /// <param name="name">What its shapes are called: <c>joint</c>, <c>change</c>.</param>
    public static PictureGroup Paint(Scene scene, LabelSpace space, string name, int number, Point at)
    {
        var (theme, text) = (scene.Theme, Scene.Text(number));
        var width = DrawnText.Width(text, TextWeight.Medium, Tokens.JointNumberSize) + (2 * Tokens.JointNumberPadding);
        var size = new Size(Math.Max(width, Tokens.JointNumberHeight), Tokens.JointNumberHeight);
        List<Box> places =
        [
            .. from distance in Distances
            from direction in Enumerable.Range(0, Directions)
            select Box.Around(Around(at, distance, direction, size), size.Width, size.Height),
        ];

        // A line over another lug would say that the number is about that one.
        var lugs = LugsBeside(scene, at);
        var clear = places.FindAll(place => !lugs.Exists(lug => new Segment(at, place.Centre).Meets(lug)));
        var box = space.Best(clear.Count > 0 ? clear : places);
        space.Take(box);
        var line = new Paint(null, theme.Ink, Tokens.JointNumberLine);
        return new PictureGroup(
            $"{name}-tag",
            [
                PathShape.Through($"{name}-line", line, at, box.Centre),
                new RectangleShape($"{name}-box", box, size.Height / 2, line with { Fill = theme.Paper }),
                TextItem.Centred(
                    $"{name}-number",
                    text,
                    box.Centre,
                    TextWeight.Medium,
                    Tokens.JointNumberSize,
                    theme.Ink
                ),
            ]
        );
    }

    /// <summary>The lugs and joints on cases that a line from a place could reach, but for the one that is there.</summary>
    private static List<Box> LugsBeside(Scene scene, Point at) =>
        [
            .. scene
                .Parts.SelectMany(part => part.Face.Lugs.Select(lug => part.OnPage(lug.At)))
                .Concat(
                    scene
                        .Parts.SelectMany(part => part.Face.Surfaces)
                        .SelectMany(scene.JointsOn)
                        .Select(joint => joint.At)
                )
                .Where(lug => Point.Distance(lug, at) is > Own and var away && away < Distances[^1])
                .Select(lug => Box.Around(lug, Tokens.JointDiameter, Tokens.JointDiameter)),
        ];

    private static Point Around(Point at, double distance, int direction, Size size)
    {
        var angle = 2 * Math.PI * direction / Directions;
        var wider = (size.Width - size.Height) / 2;
        return new Point(at.X + (Math.Cos(angle) * (distance + wider)), at.Y + (Math.Sin(angle) * distance));
    }
}
