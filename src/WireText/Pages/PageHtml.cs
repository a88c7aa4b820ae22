using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using WireText.Documents;
using WireText.Output;

namespace WireText.Pages;

/// <summary>Writes a page for a customer: one file of HTML that asks for nothing outside itself and runs its own script alone.</summary>
public static class PageHtml
{
    /// <summary>Starts the viewer on the page.</summary>
    private const string Start = """

        createViewer(document.body, JSON.parse(document.getElementById("data").textContent));

        """;

    private static readonly string Script = "\n" + PageResources.Viewer + Start;

    public static string Write(PageContents contents)
    {
        var drawing = ThemedSvg.Of(contents.Light, contents.Dark);
        var style = "\n" + PageResources.Style + PageColours.Of(drawing.Colours);
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"").Append(Document.Language).Append("\">\n<head>\n");
        html.Append("<meta charset=\"utf-8\">\n");
        html.Append(
            $"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src '{HashOf(Script)}'; style-src '{HashOf(style)}'; base-uri 'none'; form-action 'none'\">\n"
        );
        html.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Append("<meta name=\"color-scheme\" content=\"light dark\">\n");
        AppendElement(html, "title", contents.Title);
        html.Append("<style>").Append(style).Append("</style>\n</head>\n<body>\n");
        AppendHeader(html, contents);
        html.Append("<main>\n");
        AppendInstrument(html, drawing);
        PageSections.Append(html, contents);
        html.Append("</main>\n<footer><p>").Append(MarkupText.Escaped(contents.Foot)).Append("</p></footer>\n");
        html.Append("<script type=\"application/json\" id=\"data\">")
            .Append(PageData.Write(contents.Table))
            .Append("</script>\n");
        html.Append("<script type=\"module\">").Append(Script).Append("</script>\n</body>\n</html>\n");
        return html.ToString();
    }

    private static void AppendHeader(StringBuilder html, PageContents contents)
    {
        html.Append("<header>\n<div>\n");
        AppendElement(html, "h1", contents.Title);
        foreach (var remark in contents.Table.Circuit.Remarks)
        {
            AppendElement(html, "p", remark);
        }

        if (!contents.Table.Circuit.About.IsEmpty)
        {
            html.Append("<dl>\n");
            foreach (var about in contents.Table.Circuit.About)
            {
                html.Append("<div>");
                AppendElement(html, "dt", about.Key);
                AppendElement(html, "dd", about.Words);
                html.Append("</div>\n");
            }

            html.Append("</dl>\n");
        }

        html.Append("</div>\n<div data-place=\"colours\"></div>\n</header>\n");
    }

    /// <summary>The drawing, and places that the viewer fills.</summary>
    private static void AppendInstrument(StringBuilder html, ThemedSvg drawing) =>
        html.Append("<div class=\"instrument\">\n")
            .Append("<section class=\"drawing\" aria-label=\"Drawing\">\n")
            .Append(
                "<div class=\"sheet\" tabindex=\"0\" role=\"region\" aria-label=\"Wiring seen from behind\" data-place=\"drawing\">\n"
            )
            .Append(drawing.Markup)
            .Append("</div>\n<p class=\"hint\" data-place=\"hint\"></p>\n</section>\n")
            .Append("<div class=\"desk\">\n")
            .Append(
                "<noscript><p>Scripts are switched off here: the drawing and the tables are all there is to see.</p></noscript>\n"
            )
            .Append("<section data-place=\"controls\" aria-label=\"Controls\"></section>\n")
            .Append("<section data-place=\"told\" aria-label=\"This position\"></section>\n")
            .Append("<section data-place=\"response\" aria-label=\"Response\"></section>\n")
            .Append("</div>\n</div>\n");

    private static void AppendElement(StringBuilder html, string name, string text) =>
        html.Append(CultureInfo.InvariantCulture, $"<{name}>{MarkupText.Escaped(text)}</{name}>\n");

    /// <summary>How a policy names a script or a style sheet that stands in the page (CSP Level 3, W3C).</summary>
    private static string HashOf(string text) =>
        $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}";
}
