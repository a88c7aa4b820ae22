using System.Globalization;
using System.Xml.Linq;
using WireText.Frames;
using WireText.Output;

namespace WireText.Tests.Frames;

/// <summary>A frame as its SVG says: nothing here knows how it was made.</summary>
internal sealed class FrameSvg
{
    /// <summary>The height of a capital of the typeface over the size of the text: 2048 of 2816 units.</summary>
    private const double CapHeight = 2048.0 / 2816;

    private readonly XElement root;
    private readonly double pixels;

    public FrameSvg(Frame frame, FrameSize size)
    {
        root = XElement.Parse(SvgWriter.Write(frame.Picture));
        pixels = size.Width / Number(((string)root.Attribute("viewBox")!).Split(' ')[2]);
    }

    /// <summary>The heights of the capitals of its names, in pixels.</summary>
    public IEnumerable<double> NameHeights =>
        Of("text", "name").Select(text => Number((string)text.Attribute("font-size")!) * CapHeight * pixels);

    public string Caption => string.Join(' ', Of("text", "caption").Select(text => text.Value));

    /// <summary>The ids of the wires that are drawn, wherever the view is: those of the small drawing of all.</summary>
    public IReadOnlySet<string> Wires =>
        Of("g", "overview")
            .Descendants()
            .Where(element => (string?)element.Attribute("class") is "wire" or "braid")
            .Select(element => (string)element.Attribute("data-wire")!)
            .ToHashSet(StringComparer.Ordinal);

    /// <summary>Millimetres of the frame for one of the drawing.</summary>
    public double Scale
    {
        get
        {
            var transform = (string)Of("g", "stage").Single().Attribute("transform")!;
            return Number(transform[(transform.LastIndexOf('(') + 1)..^1]);
        }
    }

    private IEnumerable<XElement> Of(string name, string kind) =>
        root.Descendants()
            .Where(element => element.Name.LocalName == name && (string?)element.Attribute("class") == kind);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
