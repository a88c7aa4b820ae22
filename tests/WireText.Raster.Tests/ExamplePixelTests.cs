using System.Xml.Linq;
using SkiaSharp;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Quantities;
using WireText.Testing;
using WireText.Text;

namespace WireText.Raster;

/// <summary>What really shows when an example is drawn: asked of the pixels, in every theme.</summary>
public class ExamplePixelTests
{
    /// <summary>A wire's own width: where less of it shows, its colour cannot be told.</summary>
    private const double LeastShown = 1.0;

    private const float Step = 0.1f;

    /// <summary>Of a lug's label, which may lie partly on a line of its own part. A letter of which more is gone is a guess: our bound, no standard's.</summary>
    private const double LabelShare = 0.5;

    public static TheoryData<string, string> Pictures =>
        Rows.Of(
            from example in Repository.ExampleNames
            from theme in new[] { "committed", "dark", "print" }
            select (example, theme)
        );

    [Theory, MemberData(nameof(Pictures))]
    public void Wire_OfAnExample_ShowsItsOwnColour(string example, string theme)
    {
        var (circuit, svg) = Read(example, theme);
        using var page = PagePixels.Of(svg);

        Every.Item(
            circuit.Wires,
            wire =>
            {
                var cores = svg.Descendants()
                    .Where(e => (string?)e.Attribute("data-wire") == wire.Id && SvgShapes.Class(e) is "wire" or "braid")
                    .SelectMany(group => SvgShapes.OfClass(group, "core"))
                    .SelectMany(core => SvgShapes.Along(core, Step))
                    .Select(page.At)
                    .ToList();
                foreach (var colour in ColoursOf(wire, ThemeOf(theme)))
                {
                    var shown = cores.Count(pixel => pixel == colour) * Step;
                    Assert.True(shown >= LeastShown, $"{wire.Id}: {shown:F1} mm of {colour}");
                }
            }
        );
    }

    [Theory, MemberData(nameof(Pictures))]
    public void Part_OfAnExample_HasItsNameInInk(string example, string theme)
    {
        var (circuit, svg) = Read(example, theme);
        var named = SvgShapes
            .OfClass(svg, "part-name")
            .Where(text => text.Ancestors().All(outer => SvgShapes.Class(outer) != "close-up"))
            .Select(text => (Data(text.Parent!, "part"), text.Value));

        Assert.Equal(circuit.Parts.Select(part => (part.Name, part.Name)), named);
        Assert.Empty(Unreadable(svg));
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("<rect x='12' y='6' width='8' height='8' fill='#FFFFFF'/>", false)]
    [InlineData("<rect x='12' y='6' width='8' height='8' fill='#1D2126'/>", false)]
    public void Text_WithAShapeOverIt_IsNotReadable(string shape, bool isReadable)
    {
        var svg = XDocument.Parse(
            $"""
            <svg xmlns='http://www.w3.org/2000/svg' width='30mm' height='20mm' viewBox='0 0 30 20'>
            <rect class='paper' width='30' height='20' fill='#FFFFFF'/>
            <text class='part-name' x='10' y='12' font-size='6' textLength='12' fill='#1D2126'>neck</text>{shape}
            </svg>
            """
        );

        Assert.Equal(isReadable, Unreadable(svg).Count == 0);
    }

    /// <summary>
    /// The picture is drawn three times: whole, without its texts, and its texts alone on paper. Where the last has ink, the first
    /// must have it too, on a ground from which it stands out.
    /// </summary>
    private static List<string> Unreadable(XDocument svg)
    {
        using var whole = PagePixels.Of(svg);
        using var ground = PagePixels.Of(SvgShapes.Without(svg, e => e.Name.LocalName == "text"));
        using var alone = PagePixels.Of(
            SvgShapes.Without(
                svg,
                e => e.Name.LocalName is "rect" or "circle" or "path" && SvgShapes.Class(e) != "paper"
            )
        );
        var paper = SvgShapes.Fill(SvgShapes.OfClass(svg, "paper").Single());
        var unreadable = new List<string>();
        foreach (var text in SvgShapes.Texts(svg))
        {
            var fill = SvgShapes.Fill(text);
            var isLugLabel = SvgShapes.Class(text) == "lug-label";
            var needed = isLugLabel ? Contrast.OfGraphics : Contrast.OfText;
            var ink = whole.Inside(SvgShapes.BoxOf(text)).Where(p => IsNearer(alone[p.X, p.Y], fill, paper)).ToList();
            var read = ink.Count(p =>
                whole[p.X, p.Y] != ground[p.X, p.Y] && Contrast.Between(Bytes(fill), Bytes(ground[p.X, p.Y])) >= needed
            );
            if (ink.Count == 0 || read < ink.Count * (isLugLabel ? LabelShare : 1))
            {
                unreadable.Add($"'{text.Value}': {read} of {ink.Count} pixels can be read");
            }
        }

        return unreadable;
    }

    private static (Circuit Circuit, XDocument Svg) Read(string example, string theme)
    {
        var path = Repository.PathOf("examples", example);
        var source = new SourceText(example, File.ReadAllText(path));
        if (theme == "committed")
        {
            var circuit = Compilation.Of(source, NoSources.Instance).Circuit!;
            return (circuit, XDocument.Load(Path.ChangeExtension(path, ".svg")));
        }

        var drawn = Drawn.Of(source, new DrawOptions(LayoutEffort.Quick, ThemeOf(theme), example));
        return (drawn.Compiled.Circuit!, XDocument.Parse(drawn.Svg!));
    }

    private static Theme ThemeOf(string name) => Theme.Find(name) ?? Theme.Light;

    /// <summary>The insulation, and its stripe where it has one; a part's lead and a lead without a stated colour are tinned.</summary>
    private static IEnumerable<SKColor> ColoursOf(Wire wire, Theme theme)
    {
        if (wire.Kind == WireKind.Braid)
        {
            return [Pixel(Theme.Insulation(ColourCode.Bare))];
        }

        return wire.Kind == WireKind.PartLead || wire.Colour is not { } colour
            ? [Pixel(theme.Tin)]
            : new[] { colour.Base, colour.Stripe ?? colour.Base }
                .Distinct()
                .Select(plain => Pixel(Theme.Insulation(plain)));
    }

    private static (byte, byte, byte) Bytes(SKColor colour) => (colour.Red, colour.Green, colour.Blue);

    private static SKColor Pixel(Colour colour) => SKColor.Parse(colour.ToString());

    private static bool IsNearer(SKColor pixel, SKColor one, SKColor other) =>
        Distance(pixel, one) < Distance(pixel, other);

    private static int Distance(SKColor a, SKColor b) =>
        Math.Abs(a.Red - b.Red) + Math.Abs(a.Green - b.Green) + Math.Abs(a.Blue - b.Blue);

    private static string Data(XElement element, string name) => (string?)element.Attribute("data-" + name) ?? "";
}
