using WireText.Circuits;
using WireText.Documents;
using WireText.Drawing.Shapes;
using WireText.Electrical.Studies;
using WireText.Geometry;
using WireText.Output;
using WireText.Parts;
using WireText.Syntax;
using WireText.Syntax.Parsing;
using WireText.Templates;
using WireText.Testing;
using WireText.Tests.Drawing;
using WireText.Text;

namespace WireText.Tests.Templates;

public class TemplateHolesTests
{
    private const string Plate = """
        circuit "Plate"
        define switch own
            body round 20
            lugs a -3,0 b 3,0
            position 1 a+b
            position 2
        pickup neck single-coil
        switch sel lever-3way
        pot vol 250k audio
        pot tone 250k audio hole=8mm
        switch k own
        jack out mono
        cap dark 22n
        button kill momentary hole=none
        button loose momentary
        place neck at 0,-60
        place sel at 30,30 turned 90
        place vol at 75,30
        place tone at 105.5,30
        place k at 135,30
        place kill at 150,30
        place dark at 160,30
        """;

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Fact]
    public void Holes_FromBehind_LieWhereThePlacesSay()
    {
        var template = TemplateHoles.Of(Drawings.CircuitOf(Plate), TemplateSide.Behind);

        Assert.Equal(
            [
                ("sel", new HoleShape.Slot(2.5, 26), new Point(30, 30)),
                ("sel", new HoleShape.Round(3.5), new Point(30, 30 - 20.6)),
                ("sel", new HoleShape.Round(3.5), new Point(30, 30 + 20.6)),
                ("vol", new HoleShape.Round(10), new Point(75, 30)),
                ("tone", (HoleShape)new HoleShape.Round(8), new Point(105.5, 30)),
            ],
            template.Holes.Select(hole => (hole.Part, hole.Shape, hole.At))
        );
        Assert.Equal([true, true, true, true, false], template.Holes.Select(hole => hole.IsUsual));
        Assert.Equal(["k"], template.Unknown.ToArray());
        Assert.Equal(["out", "loose"], template.NotPlaced.ToArray());
    }

    /// <summary>The way from any hole to any other is the same, and right is left.</summary>
    [Fact]
    public void Holes_FromTheFront_AreMirrored()
    {
        var circuit = Drawings.CircuitOf(Plate);
        var (behind, front) = (
            TemplateHoles.Of(circuit, TemplateSide.Behind).Holes,
            TemplateHoles.Of(circuit, TemplateSide.Front).Holes
        );

        Assert.Equal(behind.Length, front.Length);
        for (var i = 1; i < Every.Of(behind).Count; i++)
        {
            Assert.Equal(behind[i - 1].At.X - behind[i].At.X, front[i].At.X - front[i - 1].At.X, 1e-9);
            Assert.Equal(behind[i - 1].At.Y - behind[i].At.Y, front[i - 1].At.Y - front[i].At.Y, 1e-9);
            Assert.Equal(behind[i].Shape, front[i].Shape);
        }
    }

    [Fact]
    public void Hole_OfAPart_ChangesNoStudy()
    {
        var example = File.ReadAllText(Repository.PathOf("examples", "1-one-pickup.wiring"));
        var drilled = example.Replace("250k audio", "250k audio hole=8mm", StringComparison.Ordinal);

        Assert.NotEqual(example, drilled);
        Assert.True(ElectricalTwins.Are(Drawings.CircuitOf(example), Drawings.CircuitOf(drilled)));
        Assert.Equal(new HoleShape.Round(8), Drawings.CircuitOf(drilled).FindPart("vol")!.Holes[0].Shape);
    }

    /// <summary>Every standard part sits in a hole whose size is said, or is of a kind that sits in none.</summary>
    [Fact]
    public void StandardParts_ThatSitInAHole_SayWhich() =>
        Every.Item(
            StandardParts.Catalogue.Definitions,
            part => Assert.Equal(PartKinds.SitsInAHole(part.Kind), !part.Holes.IsEmpty)
        );

    [Theory, MemberData(nameof(Examples))]
    public void List_OfAnExamplePlacedAsItIsDrawn_IsAsAccepted(string name) =>
        Snap.Match(HoleListCsv.Write(TemplateHoles.Of(Placed(name), TemplateSide.Front)), $"{name}.csv");

    /// <summary>What the pages hold is read at the bench: on paper no letter is below 2 mm.</summary>
    [Theory, MemberData(nameof(Examples))]
    public void Pages_OfAnExample_HaveNoSmallLetter(string name)
    {
        var circuit = Placed(name);
        var template = TemplateHoles.Of(circuit, TemplateSide.Front);

        var pages = DocumentSetter.Set(DrillingTemplate.Compose(circuit, template, name), Paper.A4);

        Every.Item(
            pages.SelectMany(page => TextsOf(page.Picture.Items)),
            text => Assert.True(text.Size >= 2, $"'{text.Text}' is {text.Size} mm large")
        );
    }

    [Fact]
    public void Page_SaysItsSideAndWhatIsMissing()
    {
        var circuit = Drawings.CircuitOf(Plate);
        var document = DrillingTemplate.Compose(circuit, TemplateHoles.Of(circuit, TemplateSide.Front), "plate.wiring");

        var bullets = document.Blocks.OfType<Block.Bullets>().SelectMany(list => list.Items).ToList();
        var words = DocumentSetter
            .Set(document, Paper.A4)
            .Select(page => TextsOf(page.Picture.Items).Select(text => text.Text).ToList())
            .ToList();
        Assert.Equal(
            ["k", "out", "loose"],
            bullets.Select(item => item[..item.IndexOf(':', StringComparison.Ordinal)])
        );
        Every.Item(
            words,
            page => Assert.Contains(page, text => text.Contains("from the front", StringComparison.OrdinalIgnoreCase))
        );
        Assert.Contains("hole not known", words[^1]);
    }

    [Fact]
    public void Names_ThatAreHostile_StayWords()
    {
        var circuit = Drawings.CircuitOf(
            $"""
            circuit "</text><script>x</script>"
            pot {new string('W', 80)} 250k audio
            place {new string('W', 80)} at 10,10
            """
        );
        var template = TemplateHoles.Of(circuit, TemplateSide.Behind);

        var pages = DocumentSetter.Set(DrillingTemplate.Compose(circuit, template, "\",=1"), Paper.A4);

        Every.Item(
            pages,
            page => Assert.DoesNotContain("<script", SvgWriter.Write(page.Picture), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void HoleLines_ThatAreFormatted_SayTheSame()
    {
        const string Text = """
            define switch own
              lugs a -3,0 b 3,0
              hole slot 26,2.5
              hole round 3 at   -20.5,0
              position 1 a+b
            """;
        var formatted = Formatter.Format(WiringParser.Parse(new SourceText("a.wiring", Text)));

        Assert.Contains("    hole     round 3 at -20.5,0\n", formatted, StringComparison.Ordinal);
        Assert.Equal(HolesOf(Text), HolesOf(formatted));
        Assert.Equal(
            [
                new PartHole(new HoleShape.Slot(26, 2.5), new Point(0, 0)),
                new PartHole(new HoleShape.Round(3), new Point(-20.5, 0)),
            ],
            HolesOf(formatted)
        );
    }

    private static IEnumerable<PartHole> HolesOf(string definition) =>
        Drawings.CircuitOf(definition + "\nswitch s own\n").FindPart("s")!.Holes;

    /// <summary>An example with every part placed where its drawing has it.</summary>
    private static Circuit Placed(string name)
    {
        var drawn = FullDrawings.Of(name);
        var circuit = drawn.Compiled.Circuit!;
        return circuit with
        {
            Places =
            [
                .. Every
                    .Of(drawn.Layout!.Parts)
                    .Select(part =>
                    {
                        var own = circuit.FindPart(part.Part.Id)!;
                        return new GivenPlace(own.Index, part.At, part.Turn, own.NameAt);
                    }),
            ],
        };
    }

    private static IEnumerable<TextItem> TextsOf(IEnumerable<PictureItem> items) =>
        items.SelectMany(item =>
            item switch
            {
                TextItem text => [text],
                PictureGroup group => TextsOf(group.Items),
                PictureView view => TextsOf(view.Items),
                _ => Enumerable.Empty<TextItem>(),
            }
        );
}
