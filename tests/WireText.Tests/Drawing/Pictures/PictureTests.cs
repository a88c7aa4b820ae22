using System.Xml.Linq;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Output;
using WireText.Testing;

namespace WireText.Tests.Drawing.Pictures;

public class PictureTests
{
    private const string Small = """
        circuit "One pickup"
        pickup bridge single-coil dcr=6k l=2H c=100p
        pot vol 250k audio
        jack out mono
        wire bridge.hot to vol.3 white/black
        wire bridge.ground to vol.case black
        wire vol.2 to out.tip red sleeved
        wire vol.1 to vol.case bare
        wire vol.case to out.sleeve black
        """;

    private const string Hostile = """
        circuit "A < B & C > D 'x' ]]> <script>alert(1)</script>"
        note "emoji 🎸, עברית, and a bell  and a word-that-is-much-longer-than-any-line-can-ever-be-so-that-it-has-to-be-shortened-somewhere-before-the-edge-of-the-paper-comes"
        pickup a-name-that-nobody-would-ever-give-to-a-pickup-but-somebody-did single-coil dcr=6k l=2H c=100p
        metal plate "<b>&amp; claw</b>"
        jack out mono
        wire a-name-that-nobody-would-ever-give-to-a-pickup-but-somebody-did.hot to out.tip white
        wire plate to out.sleeve black
        """;

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Fact]
    public void Picture_OfASmallCircuit_LooksAsItWasJudged() =>
        Snap.Match(
            SvgWriter.Write(
                PictureBuilder.Build(Drawings.CircuitOf(Small), HandLaid.OnePickup(Small), new PictureOptions())
            ),
            "one-pickup.svg"
        );

    [Theory, MemberData(nameof(Examples))]
    public void Picture_OfAnExample_ShowsEveryPartLugAndWire(string example)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        var circuit = Drawings.CircuitOf(text);
        var svg = XDocument.Parse(Drawings.SvgOf(text));

        Assert.Equal(circuit.Parts.Select(part => part.Name), Groups(svg, "part").Select(g => Data(g, "part")));
        Assert.Equal(
            circuit.Lugs.Where(lug => !lug.IsInner).Select(lug => lug.Name).Order(StringComparer.Ordinal),
            Groups(svg, "lug").Select(g => Data(g, "lug")).Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            circuit
                .Wires.Where(wire => wire.Kind != WireKind.Braid)
                .Select(wire => wire.Id)
                .Order(StringComparer.Ordinal),
            Groups(svg, "wire").Select(g => Data(g, "wire")).Order(StringComparer.Ordinal)
        );
        var ids = svg.Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>().ToList();
        Assert.Equal(ids.Count, ids.Distinct(StringComparer.Ordinal).Count());
        Every.Item(ids, id => System.Xml.XmlConvert.VerifyNCName(id));
    }

    [Theory, MemberData(nameof(Examples))]
    public void Picture_OfAnExample_KeepsAllTextOnThePaper(string example)
    {
        var picture = Drawings.PictureOf(File.ReadAllText(Repository.PathOf("examples", example)));

        Every.Item(Texts(picture.Items), text => Assert.True(IsOnPaper(picture.Page, text.Bounds), text.Text));
    }

    [Fact]
    public void Picture_OfHostileText_IsCleanXmlOnThePaper()
    {
        var picture = Drawings.PictureOf(Hostile);
        var svg = XDocument.Parse(SvgWriter.Write(picture));

        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName == "script");
        Assert.Contains(svg.Descendants(), e => e.Value.Contains("<b>&amp; claw</b>", StringComparison.Ordinal));
        Every.Item(Texts(picture.Items), text => Assert.True(IsOnPaper(picture.Page, text.Bounds), text.Text));
    }

    [Fact]
    public void Picture_InACultureWithOtherNumbers_HasTheSameBytes() =>
        Assert.Equal(Drawings.SvgOf(Small), OtherCulture.Run(() => Drawings.SvgOf(Small)));

    [Fact]
    public void Picture_OfAWire_SaysWhereItRuns()
    {
        var wire = Groups(XDocument.Parse(Drawings.SvgOf(Small)), "wire")
            .Single(g => Data(g, "wire") == "bridge.hot--vol.3");

        Assert.Equal("wire-bridge.hot--vol.3", (string?)wire.Attribute("id"));
        Assert.Equal("bridge.hot", Data(wire, "from"));
        Assert.Equal("vol.3", Data(wire, "to"));
        Assert.Equal("WH/BK", Data(wire, "colour"));
        Assert.Equal("wire", Data(wire, "kind"));
        Assert.Equal(
            ["strip", "conductor", "end", "casing", "core", "stripe"],
            wire.Elements().Select(e => (string?)e.Attribute("class"))
        );
    }

    [Fact]
    public void Picture_OfSolder_HasAJointWhereAWireEndsButNoneOnAPickupsOwnLead()
    {
        var svg = XDocument.Parse(Drawings.SvgOf(Small));
        var joints = svg.Descendants().Where(e => (string?)e.Attribute("class") == "joint").ToList();

        Assert.DoesNotContain(
            joints,
            joint =>
                Data(joint, "part") == "bridge" || Data(joint, "lug").StartsWith("bridge", StringComparison.Ordinal)
        );
        Assert.Equal(3, joints.Count(joint => Data(joint, "lug") == "vol.case"));
        Assert.Equal(6 + 2, joints.Count);
    }

    [Fact]
    public void Picture_OfABraid_CoversTheCoreAndEndsInTails()
    {
        var svg = XDocument.Parse(
            Drawings.SvgOf(
                """
                pot vol 250k audio
                jack out mono
                cable vol.2 to out.tip white braid vol.case to out.sleeve
                """
            )
        );

        var braids = Groups(svg, "braid").ToList();
        Assert.Single(braids, g => g.Elements().Any(e => (string?)e.Attribute("class") == "sheath"));
        Assert.Equal(2, braids.Count(g => g.Elements().Any(e => (string?)e.Attribute("class") == "core")));
        Assert.Contains(
            svg.Descendants(),
            e => (string?)e.Attribute("class") == "joint" && Data(e, "lug") == "out.sleeve"
        );
    }

    [Fact]
    public void Picture_OfAMistake_IsDrawnAndMarked()
    {
        var text = File.ReadAllText(Repository.PathOf("examples", "mistakes", "tip-and-sleeve-swapped.wiring"));
        var svg = XDocument.Parse(Drawings.SvgOf(text));

        var marks = Groups(svg, "finding").Where(g => Data(g, "check") == "tip-sleeve-swapped").ToList();
        Assert.Equal(2, marks.Count);
        Assert.Contains(marks[0].Elements(), e => (string?)e.Attribute("class") == "finding-ring");
        Assert.Contains(svg.Descendants(), e => (string?)e.Attribute("class") == "finding-text");
    }

    [Fact]
    public void Picture_WithWiresThatFoundNoWay_SaysSo()
    {
        var circuit = Drawings.CircuitOf(Small);
        var layout = LayoutEngine.Lay(WireText.Drawing.Faces.FaceBuilder.BuildProblem(circuit), LayoutEffort.Quick);
        var without = layout with { Wires = [.. layout.Wires.Skip(1)], Unrouted = [layout.Wires[0].Wire.Id] };

        var svg = SvgWriter.Write(PictureBuilder.Build(circuit, without, new PictureOptions()));

        Assert.Contains("Not drawn: no free way was found", svg, StringComparison.Ordinal);
        Assert.Contains("unrouted-row", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Svg_OfAnyPicture_AsksNothingFromOutside()
    {
        var svg = Drawings.SvgOf(Small);

        Assert.DoesNotContain("href", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("url(", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("\r", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("<style", svg, StringComparison.Ordinal);
        Assert.Equal(1, svg.Split("http").Length - 1);
    }

    private static IEnumerable<XElement> Groups(XDocument svg, string name) =>
        svg.Descendants()
            .Where(e => e.Name.LocalName == "g" && (string?)e.Attribute("class") == name)
            .Where(e => e.Ancestors().All(outer => (string?)outer.Attribute("class") != "close-up"));

    private static string Data(XElement element, string name) => (string?)element.Attribute("data-" + name) ?? "";

    private static IEnumerable<TextItem> Texts(IEnumerable<PictureItem> items) =>
        items.SelectMany(item =>
            item switch
            {
                TextItem text => [text],
                PictureGroup group => Texts(group.Items),
                _ => Enumerable.Empty<TextItem>(),
            }
        );

    private static bool IsOnPaper(Size page, Box box) =>
        box.X >= 0 && box.Y >= 0 && box.Right <= page.Width && box.Bottom <= page.Height;
}
