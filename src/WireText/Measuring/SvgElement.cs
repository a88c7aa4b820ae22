using System.Xml;

namespace WireText.Measuring;

/// <summary>One element's name and attributes.</summary>
internal sealed record Element(string Name, Dictionary<string, string> Attributes)
{
    public static Element Read(XmlReader xml)
    {
        var element = new Element(xml.LocalName, new Dictionary<string, string>(StringComparer.Ordinal));
        while (xml.MoveToNextAttribute())
        {
            element.Attributes[xml.LocalName] = xml.Value;
        }

        xml.MoveToElement();
        return element;
    }

    public bool Has(string attribute) => Attributes.ContainsKey(attribute);

    public string? Value(string attribute) => Attributes.GetValueOrDefault(attribute);

    /// <exception cref="UnreadablePictureException">The element has no such attribute.</exception>
    public string Required(string attribute) =>
        Value(attribute) ?? throw new UnreadablePictureException($"a {Name} has no {attribute}");

    /// <exception cref="UnreadablePictureException">The element has no such attribute, or it is no number.</exception>
    public double Number(string attribute) => Millimetres.Parse(Required(attribute));

    /// <summary>A number that is not negative.</summary>
    /// <exception cref="UnreadablePictureException">The element has no such attribute, or it is no such number.</exception>
    public double Size(string attribute)
    {
        var value = Number(attribute);
        return value >= 0 ? value : throw new UnreadablePictureException($"a {Name} has a negative {attribute}");
    }

    public bool HasClass(string name) =>
        Value("class") is { } classes && classes.Split(' ').Contains(name, StringComparer.Ordinal);
}
