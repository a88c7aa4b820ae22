using System.Collections.Immutable;
using WireText.Building;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Paints the number of each joint beside it, in the free place nearest by, with a line to it.</summary>
internal sealed class JointPainter(Scene scene, LabelSpace space)
{
    /// <summary>From the joint to the middle of its number, in millimetres; nearer is liked better.</summary>
    private static readonly ImmutableArray<double> Distances = [2.8, 3.6, 4.6, 5.8, 7.2, 9];

    private const int Directions = 16;

    public IEnumerable<PictureItem> Paint() =>
        from joint in scene.Options.Joints
        where scene.HasLug(joint.Lug)
        from at in PlacesOf(joint)
        select Number(joint, at);

    /// <summary>On the page: the lug, or on a case each place where a wire of the joint lands.</summary>
    private IEnumerable<Point> PlacesOf(Joint joint)
    {
        foreach (var part in scene.Parts)
        {
            foreach (var lug in part.Face.Lugs.Where(lug => lug.Lug == joint.Lug))
            {
                return [part.OnPage(lug.At)];
            }
        }

        var name = scene.Circuit.NameOf(joint.Lug);
        var ids = joint.Wires.Select(wire => scene.Circuit.Wires[wire].Id).ToHashSet(StringComparer.Ordinal);
        return scene
            .Wires.Select(wire => wire.Route)
            .Concat(scene.Layout.Braids.SelectMany(braid => braid.Tails))
            .Where(route => ids.Contains(route.Wire.Id))
            .Select(route => route.Wire.To == name ? route.Points[^1] : route.Points[0])
            .Distinct();
    }

    private PictureGroup Number(Joint joint, Point at)
    {
        var (theme, text) = (scene.Theme, Scene.Text(joint.Number));
        var width = DrawnText.Width(text, TextWeight.Medium, Tokens.JointNumberSize) + (2 * Tokens.JointNumberPadding);
        var size = new Size(Math.Max(width, Tokens.JointNumberHeight), Tokens.JointNumberHeight);
        var box = space.Best(
            from distance in Distances
            from direction in Enumerable.Range(0, Directions)
            select Box.Around(Around(at, distance, direction, size), size.Width, size.Height)
        );
        space.Take(box);
        var line = new Paint(null, theme.Ink, Tokens.JointNumberLine);
        ImmutableArray<PictureItem> items =
        [
            PathShape.Through("joint-line", line, at, box.Centre),
            new RectangleShape("joint-box", box, size.Height / 2, line with { Fill = theme.Paper }),
            TextItem.Centred("joint-number", text, box.Centre, TextWeight.Medium, Tokens.JointNumberSize, theme.Ink),
        ];
        return new PictureGroup("joint-tag", items) { Shows = [("lug", scene.Circuit.NameOf(joint.Lug))] };
    }

    private static Point Around(Point at, double distance, int direction, Size size)
    {
        var angle = 2 * Math.PI * direction / Directions;
        var wider = (size.Width - size.Height) / 2;
        return new Point(at.X + (Math.Cos(angle) * (distance + wider)), at.Y + (Math.Sin(angle) * distance));
    }
}
