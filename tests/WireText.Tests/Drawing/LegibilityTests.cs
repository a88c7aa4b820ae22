using System.Globalization;
using System.Text;
using System.Xml.Linq;
using WireText.Testing;

namespace WireText.Tests.Drawing;

/// <summary>How large the smallest letters of the examples are on a wide screen; writes docs/legibility.md.</summary>
public class LegibilityTests
{
    /// <summary>The width of a full high-definition picture.</summary>
    private const int PictureWidth = 1920;

    /// <summary>What was wished for in such a picture.</summary>
    private const double WishedPixels = 14;

    /// <summary>What was wished for is wished for up to so many wires.</summary>
    private const int MostWires = 40;

    private static IEnumerable<string> Examples => Repository.ExampleNames;

    [Fact]
    public void LegibilityPage_IsWhatIsMeasured() => AcceptedFile.Check("docs/legibility.md", Page());

    /// <summary>The sizes that the page names are those in the committed SVG; lengths there are millimetres of paper.</summary>
    [Fact]
    public void Drawing_OfAnExample_HasNoLetterSmallerThanAMark() =>
        Every.Item(Examples, example => Assert.True(SmallestText(Drawing(example)).Size >= 1.8, example));

    private static string Page()
    {
        var page = new StringBuilder(
            string.Create(
                CultureInfo.InvariantCulture,
                $"""
                # How large the letters are

                Written by `LegibilityTests` from the drawings beside the examples, the words below each drawing included: the size of
                the smallest letters (the font size) in a picture {PictureWidth} pixels wide, and how wide a picture must be for {WishedPixels:0} pixels. At least {WishedPixels:0}
                were wished for up to {MostWires} wires. On paper, and in an SVG that is zoomed, letters have their size in millimetres.

                | example | wires | page, mm | smallest letters, mm | of which | pixels | {WishedPixels:0} pixels from a width of |
                | --- | --- | --- | --- | --- | --- | --- |

                """
            )
        );
        var missed = new List<string>();
        foreach (var example in Examples)
        {
            var svg = Drawing(example);
            var (size, text) = SmallestText(svg);
            var width = PageWidth(svg);
            var pixels = size * PictureWidth / width;
            var wires = FullDrawings.Of(example).Compiled.Circuit!.Wires.Length;
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {Path.GetFileNameWithoutExtension(example)} | {wires} | {width:0} | {size} | {text} | {pixels:0.0} | {Math.Ceiling(width * WishedPixels / size)} |\n"
            );
            if (wires <= MostWires && pixels < WishedPixels)
            {
                missed.Add(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"- {Path.GetFileNameWithoutExtension(example)}: {WishedPixels - pixels:0.0} pixels short"
                    )
                );
            }
        }

        return page.Append("\n## Not reached\n\n")
            .AppendJoin('\n', missed.DefaultIfEmpty("None."))
            .Append('\n')
            .ToString();
    }

    private static XElement Drawing(string example) => XDocument.Parse(FullDrawings.Of(example).Svg!).Root!;

    /// <summary>The smallest, and the first text of that size by what it is: <c>part-mark</c>.</summary>
    private static (double Size, string Text) SmallestText(XElement svg) =>
        svg.Descendants()
            .Where(element => element.Name.LocalName == "text")
            .Select(text =>
                (Size: Number((string)text.Attribute("font-size")!), Text: Kind((string)text.Attribute("class")!))
            )
            .MinBy(text => text.Size);

    private static string Kind(string name) =>
        name switch
        {
            "part-mark" => "marking code",
            "coil-name" => "coil",
            "section-label" => "gang of a pot",
            "lug-label" => "lug",
            "tag-text" => "colour code",
            _ => name,
        };

    private static double PageWidth(XElement svg) => Number(((string)svg.Attribute("width")!)[..^"mm".Length]);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
