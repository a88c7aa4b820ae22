using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Drawing.Lettering;

namespace WireText.Pages;

/// <summary>Writes the colours of a page as variables: light, dark where the reader's system or the page's switch says so, and black on white on paper.</summary>
internal static class PageColours
{
    /// <param name="drawing">The colours that a drawing has in the light theme and in the dark; number n is <c>--c</c>n.</param>
    public static string Of(ImmutableArray<(string Light, string Dark)> drawing)
    {
        var (light, dark) = (
            NamesOf(Theme.Light) + Variables(drawing.Select(colour => colour.Light)),
            NamesOf(Theme.Dark) + Variables(drawing.Select(colour => colour.Dark))
        );
        var white = Theme.Print.Paper.ToString();
        var paper = Variables(
            drawing.Select(colour => colour.Light == Theme.Light.Paper.ToString() ? white : colour.Light)
        );
        return $$"""
            :root { color-scheme: light; {{light}}}
            @media (prefers-color-scheme: dark) { :root:not([data-colours="light"]) { color-scheme: dark; {{dark}}} }
            :root[data-colours="dark"] { color-scheme: dark; {{dark}}}
            @media print { :root, :root:not([data-colours="light"]), :root[data-colours="dark"] { color-scheme: light; {{NamesOf(
                Theme.Print
            )}}{{paper}}} }

            """;
    }

    private static string NamesOf(Theme theme) =>
        $"--paper: {theme.Paper}; --ink: {theme.Ink}; --quiet: {theme.QuietInk}; --line: {theme.PartLine}; --thin: {theme.Detail}; --panel: {theme.PartFill}; --now: {theme.Curves[0]}; --was: {theme.Curves[1]}; ";

    private static string Variables(IEnumerable<string> colours)
    {
        var written = new StringBuilder();
        foreach (var (number, colour) in colours.Index())
        {
            written.Append(CultureInfo.InvariantCulture, $"--c{number}: {colour}; ");
        }

        return written.ToString();
    }
}
