using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Tests.Drawing.Pictures;

namespace WireText.Tests.Drawing.Faces;

/// <summary>What is painted on a part so that who holds the real one knows it.</summary>
public class PartArtTests
{
    [Theory]
    [InlineData("pickup p single-coil", "pole", 6)]
    [InlineData("pickup p single-coil-cover", "cover", 1)]
    [InlineData("pickup p humbucker-4", "ear", 2)]
    // Six plain poles, and six screws with a slot each.
    [InlineData("pickup p humbucker-4", "pole", 18)]
    [InlineData("switch s lever-3way", "slot", 1)]
    [InlineData("switch s lever-3way", "stop", 3)]
    [InlineData("switch s lever-5way", "stop", 5)]
    // Each screw is a head with a slot in it.
    [InlineData("switch s lever-3way", "screw", 4)]
    [InlineData("switch s lever-5way-4pole", "screw", 4)]
    [InlineData("switch s toggle-3way", "leaf", 2)]
    [InlineData("switch s toggle-3way", "stack", 4)]
    [InlineData("switch s spdt", "bracket", 2)]
    [InlineData("switch s dpdt-on-on-on-a-first", "bracket", 2)]
    [InlineData("switch s slide-dpdt", "knob", 1)]
    [InlineData("battery b 9V", "snap", 3)]
    [InlineData("preamp a buffer", "pad", 4)]
    [InlineData("resistor r 4.7k", "band", 3)]
    [InlineData("cap c 10u electrolytic", "band", 1)]
    public void Part_HasTheArtOfItsModel(string text, string art, int count) =>
        Assert.Equal(count, PictureItems.In(Drawings.PictureOf(text)).Count(item => item.Class == art));

    [Fact]
    public void Lever_ShowsItsHalfWayStopsAsEmptyDots() =>
        // Three throws and two stops half way: common practice.
        Assert.Equal(
            [true, false, true, false, true],
            PictureItems
                .In(Drawings.PictureOf("switch s lever-5way"))
                .OfType<CircleShape>()
                .Where(shape => shape.Class == "stop")
                .Select(shape => shape.Paint.Fill is not null)
        );

    /// <summary>In a larger view a lever's slot and screws are where they are on the part: between its lugs, as large as the view.</summary>
    [Fact]
    public void Art_InALargerView_GrowsWithThePart()
    {
        // Fourteen wires: so many are shown larger.
        var picture = Drawings.PictureOf(
            """
            circuit "fourteen wires on a lever"
            switch  sel lever-3way
            jack    out
            wire    sel.A1 to sel.A2 to sel.A3 to sel.A0 to sel.B0 red
            wire    sel.B1 to sel.B2 to sel.B3 blue
            wire    sel.A0 to out.tip white
            wire    sel.B0 to out.tip yellow
            wire    sel.B1 to out.sleeve black
            wire    sel.B3 to out.sleeve green
            wire    sel.A1 to out.sleeve violet
            wire    sel.A2 to out.tip brown
            wire    sel.A3 to out.sleeve orange
            wire    sel.B2 to out.tip grey
            place   sel turned 0
            """
        );
        var slots = Boxes("slot");
        var bodies = Boxes("body").Where(box => Math.Abs(box.Width / box.Height - (46.0 / 16)) < 0.01).ToArray();

        Assert.Equal(2, slots.Length);
        Assert.Equal(2 * slots[0].Width, slots[1].Width, 6);
        Assert.Equal(2 * bodies[0].Width, bodies[1].Width, 6);
        Assert.Equal(bodies[1].Centre, slots[1].Centre);

        Box[] Boxes(string name) =>
            [
                .. PictureItems
                    .In(picture)
                    .OfType<RectangleShape>()
                    .Where(shape => shape.Class == name)
                    .Select(shape => shape.Box)
                    .OrderBy(box => box.Width),
            ];
    }

    [Theory]
    [InlineData("switch s toggle-3way", "stack")]
    [InlineData("switch s lever-3way", "slot")]
    [InlineData("pot p push-pull 250k", "detail")]
    public void NamesOfLugs_CrossNoLineOfTheArt(string text, string art)
    {
        var items = PictureItems.In(Drawings.PictureOf(text)).ToList();
        var lines = items
            .OfType<RectangleShape>()
            .Where(shape => shape.Class == art)
            .Select(shape => shape.Box)
            .ToList();
        Assert.NotEmpty(lines);

        Testing.Every.Item(
            items.OfType<TextItem>().Where(word => word.Class == "lug-label"),
            word =>
                Assert.True(
                    lines.TrueForAll(line => !line.Overlaps(word.Ink) || line.Contains(word.Ink)),
                    $"{word.Text} crosses the {art}"
                )
        );
    }

    [Fact]
    public void Gangs_OfAConcentricPot_StandAsTheyAreCalled()
    {
        var words = PictureItems.In(Drawings.PictureOf("pot duo concentric 500k audio")).OfType<TextItem>().ToArray();

        var (top, bottom) = (words.Single(word => word.Text == "top"), words.Single(word => word.Text == "bottom"));
        Assert.True(top.Bounds.Bottom < bottom.Bounds.Y);
    }

    /// <summary>The figures in the triangle of a warning, with a corner of their box on neither side of it.</summary>
    [Fact]
    public void Number_OfTwoFigures_FitsItsTriangle()
    {
        var text = "jack out mono\n" + string.Concat(Enumerable.Range(1, 12).Select(i => $"pot p{i} 250k audio\n"));
        var marks = PictureItems
            .In(Drawings.PictureOf(text))
            .OfType<PictureGroup>()
            .Where(group => group.Class == "finding")
            .Select(group => group.Items)
            .Where(mark => mark.OfType<PathShape>().Any())
            .ToArray();
        Assert.Contains(marks, mark => mark.OfType<TextItem>().Any(number => number.Text == "12"));

        Testing.Every.Item(
            marks,
            mark =>
            {
                var corners = mark.OfType<PathShape>().Single().Steps.Take(3).Select(step => step.To).ToArray();
                var ink = mark.OfType<TextItem>().Single().Ink;
                Testing.Every.Item(
                    new[]
                    {
                        new Point(ink.X, ink.Y),
                        new Point(ink.Right, ink.Y),
                        new Point(ink.X, ink.Bottom),
                        new Point(ink.Right, ink.Bottom),
                    },
                    point => Assert.True(IsInside(point, corners), $"{point} of {ink}")
                );
            }
        );
    }

    private static bool IsInside(Point point, Point[] corners) =>
        Enumerable
            .Range(0, corners.Length)
            .Select(i => (From: corners[i], To: corners[(i + 1) % corners.Length]))
            .Select(side =>
                ((side.To.X - side.From.X) * (point.Y - side.From.Y))
                - ((side.To.Y - side.From.Y) * (point.X - side.From.X))
            )
            .All(side => side >= 0);
}
