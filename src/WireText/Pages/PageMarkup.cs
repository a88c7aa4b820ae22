using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using WireText.Circuits;
using WireText.Output;

namespace WireText.Pages;

/// <summary>The pieces of a page: what is said of the job, the drawing, and places that the viewer fills.</summary>
internal static class PageMarkup
{
    /// <summary>The title, the words for the sheet and what is said of the job.</summary>
    public static void AppendHead(StringBuilder html, Circuit circuit, string title)
    {
        AppendElement(html, "h1", title);
        foreach (var remark in circuit.Remarks)
        {
            AppendElement(html, "p", remark);
        }

        if (circuit.About.IsEmpty)
        {
            return;
        }

        html.Append("<dl>\n");
        foreach (var about in circuit.About)
        {
            html.Append("<div>");
            AppendElement(html, "dt", about.Key);
            AppendElement(html, "dd", about.Words);
            html.Append("</div>\n");
        }

        html.Append("</dl>\n");
    }

    /// <summary>The drawing, and places that the viewer fills.</summary>
    /// <param name="drawing">The element <c>svg</c>; empty where it is put in later.</param>
    /// <param name="ahead">What stands beside the drawing, above the controls.</param>
    public static void AppendInstrument(StringBuilder html, string drawing, string ahead) =>
        html.Append("<div class=\"instrument\">\n")
            .Append("<section class=\"drawing\" aria-label=\"Drawing\">\n")
            .Append(
                "<div class=\"sheet\" tabindex=\"0\" role=\"region\" aria-label=\"Wiring seen from behind\" data-place=\"drawing\">\n"
            )
            .Append(drawing)
            .Append("</div>\n<p class=\"hint\" data-place=\"hint\"></p>\n</section>\n")
            .Append("<div class=\"desk\">\n")
            .Append(ahead)
            .Append("<section data-place=\"controls\" aria-label=\"Controls\"></section>\n")
            .Append("<section data-place=\"told\" aria-label=\"This position\"></section>\n")
            .Append("<section data-place=\"response\" aria-label=\"Response\"></section>\n")
            .Append("</div>\n</div>\n");

    /// <summary>What every page says of itself before its title.</summary>
    public static void AppendMeta(StringBuilder html) =>
        html.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append("<meta name=\"color-scheme\" content=\"light dark\">\n");

    public static void AppendElement(StringBuilder html, string name, string text) =>
        html.Append(CultureInfo.InvariantCulture, $"<{name}>{MarkupText.Escaped(text)}</{name}>\n");

    /// <summary>How a policy names a script or a style sheet that stands in the page (CSP Level 3, W3C).</summary>
    public static string HashOf(string text) =>
        $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}";
}
