using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>A part on which many wires end is drawn once more, larger; what it shows is held to the text of the circuit.</summary>
public class CloseUpTests
{
    /// <summary>A cross of two wires on a double changeover switch: no room for a tag on either.</summary>
    private const string Crossed = """
        circuit "crossed"
        pickup  neck  single-coil
        switch  turn  slide-dpdt
        jack    out   mono
        wire    neck.hot    to turn.A0 white
        wire    neck.ground to turn.B0 grey
        wire    turn.A1 to turn.B2 orange
        wire    turn.A2 to turn.B1 violet
        wire    turn.A1 to out.tip red
        wire    turn.B1 to out.sleeve black
        """;

    /// <summary>With these fourteen wires end on the switch, and it is shown larger.</summary>
    private const string More = """

        wire    turn.A0 to out.tip green
        wire    turn.B0 to out.sleeve brown
        wire    turn.A2 to out.tip blue
        wire    turn.B2 to out.sleeve pink
        wire    turn.A0 to turn.B2 yellow
        wire    turn.B0 to turn.A2 turquoise
        wire    turn.A1 to out.sleeve bare
        wire    turn.B1 to out.tip white
        """;

    public static TheoryData<string> Examples() => Rows.Of(Repository.ExampleNames);

    [Theory]
    [MemberData(nameof(Examples))]
    public void CloseUp_HasEveryWireOfItsPart_AndSaysWhereItGoes(string name)
    {
        var (circuit, picture) = Draw(name);
        foreach (var close in CloseUpsOf(picture))
        {
            var part = circuit.FindPart(ShownBy(close, "part")!)!;
            var wires = circuit.Wires.Where(wire => part.Lugs.Any(wire.Touches)).ToList();
            var drawn = PictureItems
                .In(close.Items)
                .Where(item => item.Class is "wire" or "braid")
                .Select(item => ShownBy(item, "wire"));
            Assert.Equal(
                wires.Select(wire => wire.Id).Order(StringComparer.Ordinal),
                drawn.Distinct().Order(StringComparer.Ordinal)
            );

            var others = wires
                .Where(wire => wire.Kind != WireKind.Braid)
                .SelectMany(wire => new[] { wire.From, wire.To })
                .Where(lug => lug >= 0 && !part.Lugs.Contains(lug))
                .Select(circuit.NameOf);
            var said = PictureItems
                .In(close.Items)
                .OfType<TextItem>()
                .Where(text => text.Class == "way")
                .Select(text => text.Text);
            Assert.Equal(others.Order(StringComparer.Ordinal), said.Order(StringComparer.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Words_InACloseUp_LieOnNothing(string name)
    {
        var (_, picture) = Draw(name);
        foreach (var close in CloseUpsOf(picture))
        {
            var tags = PictureItems
                .In(close.Items)
                .OfType<RectangleShape>()
                .Where(item => item.Class == "tag-box")
                .Select(tag => tag.Box);
            var words = PictureItems
                .In(close.Items)
                .OfType<TextItem>()
                .Where(text => text.Class != "tag-text")
                .ToList();
            var lugs = PictureItems
                .In(close.Items)
                .OfType<CircleShape>()
                .Where(item => item.Class is "eyelet" or "joint");
            Box[] taken = [.. tags, .. words.Select(word => word.Bounds)];
            for (var i = 0; i < taken.Length; i++)
            {
                Assert.DoesNotContain(taken.Skip(i + 1), other => Touch(taken[i], other));
                Every.Item(
                    lugs,
                    lug =>
                        Assert.True(Distance(taken[i], lug) >= lug.Radius, $"{close.Shows[0]}: {taken[i]} {lug.Centre}")
                );
            }

            var paper = new Box(0, 0, picture.Page.Width, picture.Page.Height);
            Every.Item(taken, box => Assert.True(IsInside(paper, box), $"{close.Shows[0]}: {box}"));
        }
    }

    /// <summary>Tags that have no room on their wires stand at the end of a line, so nothing is shown larger for them alone.</summary>
    [Fact]
    public void Switch_WithFewWiresAcrossIt_IsNotShownLarger()
    {
        var picture = Drawings.PictureOf(Crossed);

        Assert.Empty(CloseUpsOf(picture));
        var tags = PictureItems
            .In(picture)
            .OfType<TextItem>()
            .Where(text => text.Class == "tag-text")
            .Select(text => text.Text);
        Assert.Equal(["BK", "GY", "OG", "RD", "VT", "WH"], tags.Order(StringComparer.Ordinal));
        Assert.DoesNotContain(PictureItems.In(picture.Items), item => item.Class == "wire-row");
    }

    [Fact]
    public void CloseUp_WithRoomBesideTheTitle_StandsThere()
    {
        var items = PictureItems
            .In(
                Drawings
                    .PictureOf($"{Crossed}{More}\npickup bridge single-coil\narrange\n    neck turn bridge out\n")
                    .Items
            )
            .ToList();
        var frame = Assert.Single(items.OfType<RectangleShape>(), item => item.Class == "close-up-frame").Box;
        var words = items
            .OfType<TextItem>()
            .Where(text => text.Class is "title" or "file" or "note" or "legend-text")
            .ToList();

        Assert.NotEmpty(words);
        Every.Item(words, word => Assert.True(word.Bounds.Right < frame.X, $"'{word.Text}' reaches into the frame"));
        Assert.True(frame.Y < words.Max(word => word.Bounds.Bottom), "the frame begins below all words");
    }

    [Fact]
    public void Part_WithFourteenWiresOrMore_IsShownLarger()
    {
        var all =
            "circuit \"a pot\"\npot vol 500k audio\njack out mono\n"
            + string.Concat(Enumerable.Range(1, 14).Select(Ground));
        var fewer = all[..all.LastIndexOf("pickup", StringComparison.Ordinal)];

        Assert.Equal(["vol"], CloseUpsOf(Drawings.PictureOf(all)).Select(close => ShownBy(close, "part")));
        Assert.Empty(CloseUpsOf(Drawings.PictureOf(fewer)));

        static string Ground(int pickup) => $"pickup p{pickup} single-coil\nwire p{pickup}.ground to vol.case black\n";
    }

    [Fact]
    public void Part_WithElevenWiresThatAllHaveTheirTags_IsNotShownLarger() =>
        Assert.Empty(CloseUpsOf(Draw("8-twin-coil-cut.wiring", LayoutEffort.Full).Picture));

    [Fact]
    public void Page_OfADrawingNarrowerThanItsCloseUp_IsAsWideAsThat()
    {
        var picture = Drawings.PictureOf(
            """
            circuit "ten jumpers"
            switch  selector  lever-5way-4pole
            jack    output    mono
            arrange
                selector
                output
            wire    selector.A0 to selector.B1 to selector.C2 to selector.D3 red
            wire    selector.D0 to selector.C1 to selector.B2 to selector.A3 blue
            wire    selector.B0 to selector.A1 to selector.D2 to selector.C3 white
            wire    selector.A4 to output.tip yellow
            wire    selector.D5 to output.sleeve black
            """
        );

        var close = Assert.Single(CloseUpsOf(picture));
        var frame = PictureItems
            .In(close.Items)
            .OfType<RectangleShape>()
            .Single(item => item.Class == "close-up-frame")
            .Box;
        var body = PictureItems.In(picture.Items).OfType<RectangleShape>().First(item => item.Class == "body").Box;
        // The switch at true size would fit the narrowest page; at 2 : 1 it does not.
        Assert.True(body.Width + (2 * Tokens.PageMargin) < Tokens.NarrowestPage, $"{body.Width}");
        Assert.True(frame.Width + (2 * Tokens.PageMargin) > Tokens.NarrowestPage, $"{frame.Width}");
        Assert.InRange(frame.Right, 0, picture.Page.Width - Tokens.PageMargin);
    }

    [Fact]
    public void Drawing_WithRoomForEveryTag_HasNoCloseUp() =>
        Assert.Empty(CloseUpsOf(Draw("1-one-pickup.wiring").Picture));

    private static (Circuit Circuit, Picture Picture) Draw(string name, LayoutEffort effort = LayoutEffort.Quick)
    {
        var source = new SourceText(name, File.ReadAllText(Repository.PathOf("examples", name)));
        var compiled = Compilation.Of(source, NoSources.Instance);
        var circuit = compiled.Circuit!;
        return (circuit, PictureBuilder.Build(circuit, compiled.PlanFor(effort)!.Layout, new PictureOptions()));
    }

    private static List<PictureGroup> CloseUpsOf(Picture picture) =>
        [.. PictureItems.In(picture.Items).OfType<PictureGroup>().Where(group => group.Class == "close-up")];

    private static string? ShownBy(PictureItem item, string name) =>
        item.Shows.Where(shown => shown.Name == name).Select(shown => shown.Value).FirstOrDefault();

    private static bool Touch(Box a, Box b) => a.X < b.Right && b.X < a.Right && a.Y < b.Bottom && b.Y < a.Bottom;

    private static bool IsInside(Box outer, Box inner) =>
        inner.X >= outer.X && inner.Y >= outer.Y && inner.Right <= outer.Right && inner.Bottom <= outer.Bottom;

    private static double Distance(Box box, CircleShape disc)
    {
        var dx = Math.Max(0, Math.Max(box.X - disc.Centre.X, disc.Centre.X - box.Right));
        var dy = Math.Max(0, Math.Max(box.Y - disc.Centre.Y, disc.Centre.Y - box.Bottom));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}
