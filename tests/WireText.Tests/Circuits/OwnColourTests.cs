using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Quantities;
using WireText.Syntax;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Tests.Drawing;
using WireText.Tests.Drawing.Pictures;
using WireText.Text;

namespace WireText.Tests.Circuits;

/// <summary>Colours of insulation that a file names for itself, from its line to the drawing.</summary>
public class OwnColourTests
{
    private const string Jack = "jack out\nwire out.tip to out.sleeve";

    [Theory]
    [InlineData("colour cream CR #efe3c2", "cream", "CR")]
    [InlineData("COLOUR cream cr #EFE3C2   # undyed cloth", "Cream", "CR")]
    [InlineData("colour cream CR #efe3c2 #cloth", "CR", "CR")]
    [InlineData("colour cream CR #efe3c2", "cream/black", "CR/BK")]
    [InlineData("colour cream CR #efe3c2", "red/CR", "RD/CR")]
    [InlineData("colour tan TAN #b08b5a", "tan", "TAN")]
    public void WireOfAnOwnColour_AnywhereInTheFile_HasItsTag(string line, string colour, string tag)
    {
        foreach (var text in new[] { $"{line}\n{Jack} {colour}", $"{Jack} {colour}\n{line}" })
        {
            var bound = Bind(text);

            Assert.Empty(bound.Findings);
            Assert.Equal(tag, Assert.Single(bound.Circuit!.Wires).Colour?.Tag);
        }
    }

    [Fact]
    public void OwnColour_OfAnIncludedFile_IsKnown()
    {
        var shop = new SourceText("shop.wiring", "colour cream CR #efe3c2");

        var bound = Binder.Bind(Parse($"include \"shop.wiring\"\n{Jack} cream"), new OneSource(shop));

        Assert.Empty(bound.Findings);
        Assert.Equal("CR", bound.Circuit!.Wires[0].Colour?.Tag);
    }

    /// <summary>What is wrong with the line is said once: a wire of that colour draws no second finding.</summary>
    [Theory]
    [InlineData("colour [|white|] CR #efe3c2", "white", "'white' is a colour already", "a name of its own")]
    [InlineData("colour [|gy|] CR #efe3c2", "GY", "'gy' means grey already", "a name of its own")]
    [InlineData("colour [|purple|] PU #efe3c2", "purple", "'purple' means violet already", "a name of its own")]
    [InlineData("colour cream [|wh|] #efe3c2", "cream", "'wh' means white already", "such as CR")]
    [InlineData("colour cream [|GNYE|] #efe3c2", "cream/black", "'GNYE' means green/yellow already", "such as CR")]
    [InlineData(
        "colour cream CR #efe3c2\ncolour ivory [|cr|] #fffff0",
        "ivory",
        "'cr' means cream already",
        "such as IV"
    )]
    [InlineData(
        "colour cream CR #efe3c2\ncolour [|Cream|] CE #fffff0",
        "cream",
        "'Cream' is a colour already",
        "a name of its own"
    )]
    [InlineData("colour cream [|C|] #efe3c2", "cream", "expected a code of two to four letters", "")]
    [InlineData("colour cream CR [|#efe3|]", "cream", "a paint is # and six digits", "")]
    [InlineData("colour cream CR [|efe3c2|]", "cream", "expected its paint", "")]
    [InlineData("[|color|] cream CR #efe3c2", "white", "no kind of part is called 'color'", "did you mean 'colour'?")]
    public void OwnColour_ThatCannotBeTaken_IsToldOnce(string line, string colour, string message, string help)
    {
        var (text, spans) = MarkedText.Parse($"{line}\n{Jack} {colour}");
        var tree = Parse(text);

        var finding = Assert.Single([.. tree.Findings, .. Binder.Bind(tree, NoSources.Instance).Findings]);

        Assert.Equal(spans.Single(), finding.Location.Span);
        Assert.Contains(message, finding.Message, StringComparison.Ordinal);
        Assert.Contains(help, finding.Help ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void OwnColours_PastTheBound_AreToldOnce()
    {
        var lines = Enumerable
            .Range(0, CircuitLimits.MaxColours + 2)
            .Select(number => $"colour c{number} {(char)('A' + (number / 26))}Z{(char)('A' + (number % 26))} #000000");

        var finding = Assert.Single(Bind(string.Join('\n', lines)).Findings);

        Assert.Equal("too-large", finding.Id);
        Assert.Equal(CircuitLimits.MaxColours + 1, finding.Location.Position.Line);
    }

    [Fact]
    public void OwnColour_OfAWire_IsThePaintOfItsCoreAndStandsInTheLegend()
    {
        var picture = Drawings.PictureOf($"colour cream CR #efe3c2\n{Jack} cream/black");

        var items = PictureItems.In(picture.Items).ToList();

        Assert.Contains(items.OfType<TextItem>(), text => text is { Class: "legend-text", Text: "CR/BK cream/black" });
        Assert.Contains(
            items.OfType<PathShape>(),
            path => path.Class == "sample" && path.Paint.Line == new Colour(0xEF, 0xE3, 0xC2)
        );
    }

    [Fact]
    public void OwnColour_WithAVeryLongName_LeavesNoWordOffThePage()
    {
        var name = "cream" + new string('x', 400);
        var picture = Drawings.PictureOf($"colour {name} CRXX #efe3c2\n{Jack} {name}/{name}");

        Every.Item(
            PictureItems.In(picture.Items).OfType<TextItem>(),
            text => Assert.True(text.Bounds.X >= 0 && text.Bounds.Right <= picture.Page.Width, text.Text)
        );
    }

    /// <summary>WCAG 2.1, 1.4.11: the core or its edge stands out from the paper by 3, whatever paint a file chooses.</summary>
    [Fact]
    public void CasingsOfOwnPaints_OnEveryPaper_KeepTheWireOffThePaper()
    {
        int[] steps = [0x00, 0x18, 0x40, 0x80, 0xC0, 0xFF];
        var paints =
            from red in steps
            from green in steps
            from blue in steps
            select new OwnColour("own", "OW", (red << 16) | (green << 8) | blue);

        foreach (var (theme, paint) in Every.Of(Theme.All.SelectMany(theme => paints.Select(paint => (theme, paint)))))
        {
            var core = Ratio(Theme.Insulation(paint), theme.Paper);
            var casing = Ratio(theme.CasingOf(paint), theme.Paper);
            Assert.True(Math.Max(core, casing) >= Contrast.OfGraphics, $"{theme.Name} {paint}: {core:F1}, {casing:F1}");
        }
    }

    [Fact]
    public void Format_OwnColours_StandInColumns() =>
        Assert.Equal(
            """
            colour  cream      CR   #efe3c2  # cloth
            colour  light-tan  TAN  #b08b5a

            """,
            Formatter.Format(Parse("colour cream CR #efe3c2  # cloth\ncolour   light-tan TAN #b08b5a"))
        );

    private static double Ratio(Colour one, Colour other) =>
        Contrast.Between((one.Red, one.Green, one.Blue), (other.Red, other.Green, other.Blue));

    private static WiringTree Parse(string text) => WiringParser.Parse(new SourceText("own.wiring", text));

    private static BoundCircuit Bind(string text) => Binder.Bind(Parse(text), NoSources.Instance);

    private sealed class OneSource(SourceText source) : ISourceProvider
    {
        public SourceLoad Load(string path, SourceText from) => new(source, null);
    }
}
