using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Electrical.Studies;
using WireText.Electrical.Traces;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>A picture that follows something: that keeps its colours, the rest steps back, and nothing moves.</summary>
public class FadingTests
{
    [Theory]
    [InlineData("sel=neck", "neck.hot--sel.A3", "bridge.hot--sel.A1")]
    [InlineData("sel=bridge", "bridge.hot--sel.A1", "neck.hot--sel.A3")]
    [InlineData("vol.2", "vol.2--out.tip", "neck.hot--sel.A3")]
    public void Wire_ThatIsFollowed_KeepsItsColours_AndOthersFade(string follow, string kept, string faded)
    {
        var (before, after) = Pictures(follow);

        Assert.Equal(Every.Of(ColoursOf(before, kept)), ColoursOf(after, kept));
        Assert.NotEqual(ColoursOf(before, faded), ColoursOf(after, faded));
        Every.Item(
            ColoursOf(after, faded),
            colour => Assert.True(DistanceToPaper(colour) <= 0.2 * 3 * 255, colour.ToString())
        );
    }

    [Fact]
    public void Contacts_OfTheStateThatIsFollowed_AreBars()
    {
        var (before, after) = Pictures("sel=neck");

        Assert.DoesNotContain(Flat(before.Items), item => item.Class == "contact");

        // Two poles of the lever are on the way, each a bar in its casing of paper.
        Assert.Equal(4, Flat(after.Items).Count(item => item.Class == "contact"));
    }

    [Fact]
    public void Picture_ThatFollowsSomething_HasEverythingWhereItWas()
    {
        var (before, after) = Pictures("sel=neck");

        Assert.Equal(before.Page.Width, after.Page.Width);
        Assert.Equal(Every.Of(PathsOf(before)), PathsOf(after));
    }

    private static (Picture Before, Picture After) Pictures(string follow)
    {
        const string Name = "4-three-pickups-5way.wiring";
        var text = File.ReadAllText(Repository.PathOf("examples", Name));
        var circuit = Compilation.Of(new SourceText(Name, text), NoSources.Instance).Circuit!;
        var layout = LayoutEngine.Lay(FaceBuilder.BuildProblem(circuit), LayoutEffort.Quick);
        var trace = TraceReader.Read(circuit, Study.Of(circuit), follow).Value!;
        return (
            PictureBuilder.Build(circuit, layout, new PictureOptions()),
            PictureBuilder.Build(circuit, layout, new PictureOptions { Trace = trace })
        );
    }

    private static IEnumerable<PictureItem> Flat(IEnumerable<PictureItem> items) =>
        items
            .Where(item => item.Class != "close-up")
            .SelectMany(item => item is PictureGroup group ? Flat(group.Items).Prepend(item) : [item]);

    private static List<Colour> ColoursOf(Picture picture, string wire) =>
        [
            .. Flat(Flat(picture.Items).Where(item => item.Class == "wire" && item.Shows.Contains(("wire", wire))))
                .OfType<PictureShape>()
                .SelectMany(shape => new[] { shape.Paint.Fill, shape.Paint.Line })
                .OfType<Colour>()
                .Distinct(),
        ];

    private static IEnumerable<string> PathsOf(Picture picture) =>
        Flat(Flat(picture.Items).Where(item => item.Class is "wire" or "part" or "lug"))
            .OfType<PathShape>()
            .Select(path => string.Join(' ', path.Steps));

    private static int DistanceToPaper(Colour colour)
    {
        var paper = Theme.Light.Paper;
        return Math.Abs(colour.Red - paper.Red)
            + Math.Abs(colour.Green - paper.Green)
            + Math.Abs(colour.Blue - paper.Blue);
    }
}
