using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Drawing.Shapes;
using WireText.Output;

namespace WireText.Pages;

/// <summary>One drawing in two themes: where their colours differ a variable stands, which a style sheet sets.</summary>
/// <param name="Markup">The element <c>svg</c>.</param>
/// <param name="Colours">Each variable's colour in the one theme and in the other; number n is <c>--c</c>n.</param>
internal sealed record ThemedSvg(string Markup, ImmutableArray<(string Light, string Dark)> Colours)
{
    /// <summary>A colour as it is written in an attribute: <c>"#1D2126"</c>.</summary>
    private const int ColourLength = 9;

    /// <param name="light">A picture.</param>
    /// <param name="dark">The same picture in other colours; the very same where it is for one theme alone.</param>
    public static ThemedSvg Of(Picture light, Picture dark)
    {
        var one = SvgWriter.WriteInline(light);
        if (ReferenceEquals(light, dark))
        {
            return new ThemedSvg(one, []);
        }

        var other = SvgWriter.WriteInline(dark);
        var markup = new StringBuilder(one.Length);
        var colours = new Numbered<(string, string)>();
        var at = 0;
        while (one.AsSpan(at).CommonPrefixLength(other.AsSpan(at)) is var same && at + same < one.Length)
        {
            var start = one.LastIndexOf('"', at + same);
            var (first, second) = (one.Substring(start, ColourLength), other.Substring(start, ColourLength));
            if (first[1] != '#' || second[1] != '#' || first[^1] != '"' || second[^1] != '"')
            {
                throw new ArgumentException("the pictures differ in more than colours", nameof(dark));
            }

            var variable = colours.PlaceOf((first[1..^1], second[1..^1]));
            markup.Append(one, at, start - at).Append(CultureInfo.InvariantCulture, $"\"var(--c{variable})\"");
            at = start + ColourLength;
        }

        return new ThemedSvg(markup.Append(one, at, one.Length - at).ToString(), colours.Items);
    }
}
