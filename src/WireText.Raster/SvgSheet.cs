using System.Globalization;
using System.Xml.Linq;
using SkiaSharp;
using Svg.Model.Services;
using Svg.Skia;
using WireText.Raster.Fonts;

namespace WireText.Raster;

/// <summary>An SVG of ours, read to be drawn: its size on paper, its ground and its shapes.</summary>
internal sealed class SvgSheet
{
    public const double MillimetresPerInch = 25.4;

    private readonly XElement root;

    private SvgSheet(XElement root)
    {
        this.root = root;
        Width = Millimetres("width");
        Height = Millimetres("height");
    }

    /// <summary>In millimetres, as <see cref="Height"/>.</summary>
    public double Width { get; }

    public double Height { get; }

    public string Title => root.Elements().FirstOrDefault(e => e.Name.LocalName == "title")?.Value ?? "";

    /// <summary>The colour of the paper, white when it has none.</summary>
    public SKColor Ground =>
        SKColor.TryParse((string?)Papers.FirstOrDefault()?.Attribute("fill"), out var colour) ? colour : SKColors.White;

    private IEnumerable<XElement> Papers =>
        root.Descendants().Where(element => (string?)element.Attribute("class") == "paper");

    /// <exception cref="ArgumentException">The text is no SVG whose root gives its width and height in millimetres.</exception>
    public static SvgSheet Read(string svg)
    {
        try
        {
            return new SvgSheet(XElement.Parse(svg, LoadOptions.PreserveWhitespace));
        }
        catch (System.Xml.XmlException malformed)
        {
            throw new ArgumentException("The SVG is not well-formed XML.", nameof(svg), malformed);
        }
    }

    public void RemovePaper() => Papers.ToList().ForEach(element => element.Remove());

    /// <summary>Its shapes at 96 units to the inch, with every text in the packaged typeface.</summary>
    /// <exception cref="ArgumentException">The SVG has nothing to draw.</exception>
    public SKPicture Load() => Load(root);

    /// <summary>Its shapes at 4 units to one of its own, exactly, and how many units a millimetre of paper has.</summary>
    /// <remarks>The library cuts the size of a drawing to whole units and fits what is on it: here both sides are whole beforehand.</remarks>
    /// <exception cref="ArgumentException">The SVG has nothing to draw.</exception>
    public (SKPicture Drawing, double UnitsPerMillimetre) LoadExactly()
    {
        const int Units = 4;
        var box = ((string?)root.Attribute("viewBox") ?? "").Split(' ');
        if (box.Length != 4 || box[0] != "0" || box[1] != "0" || !(Number(box[2]) > 0) || !(Number(box[3]) > 0))
        {
            throw new ArgumentException("The SVG's viewBox does not start at 0 0.");
        }

        var (width, height) = (Math.Ceiling(Number(box[2])), Math.Ceiling(Number(box[3])));
        var whole = new XElement(root);
        whole.SetAttributeValue("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {width} {height}"));
        whole.SetAttributeValue("width", (width * Units).ToString(CultureInfo.InvariantCulture));
        whole.SetAttributeValue("height", (height * Units).ToString(CultureInfo.InvariantCulture));
        return (Load(whole), Units * Number(box[2]) / Width);
    }

    private static SKPicture Load(XElement svg)
    {
        var model = new SkiaModel(new SKSvgSettings { TypefaceProviders = [new InterTypefaces()] });
        return
            SvgService.FromSvg(svg.ToString(SaveOptions.DisableFormatting)) is { } document
            && SKSvg.ToPicture(document, model, new PackagedTexts(model)) is { } picture
            ? picture
            : throw new ArgumentException("The SVG has nothing to draw.");
    }

    /// <summary>0 when it is none.</summary>
    private static double Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : 0;

    private double Millimetres(string name)
    {
        var text = root.Attribute(name)?.Value ?? "";
        return text.EndsWith("mm", StringComparison.Ordinal) && Number(text[..^2]) is > 0 and var value
            ? value
            : throw new ArgumentException($"The SVG's {name} is not given in millimetres.");
    }
}
