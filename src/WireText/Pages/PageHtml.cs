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

    private const string NoScript =
        "<noscript><p>Scripts are switched off here: the drawing and the tables are all there is to see.</p></noscript>\n";

    private static readonly string Script = "\n" + PageResources.Viewer + Start;

    public static string Write(PageContents contents)
    {
        var drawing = ThemedSvg.Of(contents.Light, contents.Dark);
        var style = "\n" + PageResources.Style + PageColours.Of(drawing.Colours);
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"").Append(Document.Language).Append("\">\n<head>\n");
        html.Append("<meta charset=\"utf-8\">\n");
        html.Append(
            $"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src '{PageMarkup.HashOf(Script)}'; style-src '{PageMarkup.HashOf(style)}'; base-uri 'none'; form-action 'none'\">\n"
        );
        PageMarkup.AppendMeta(html);
        PageMarkup.AppendElement(html, "title", contents.Title);
        html.Append("<style>").Append(style).Append("</style>\n</head>\n<body>\n");
        html.Append("<header>\n<div>\n");
        PageMarkup.AppendHead(html, contents.Table.Circuit, contents.Title);
        html.Append("</div>\n<div data-place=\"colours\"></div>\n</header>\n");
        html.Append("<main>\n");
        PageMarkup.AppendInstrument(html, drawing.Markup, NoScript);
        PageSections.Append(html, contents);
        html.Append("</main>\n<footer><p>").Append(MarkupText.Escaped(contents.Foot)).Append("</p></footer>\n");
        html.Append("<script type=\"application/json\" id=\"data\">")
            .Append(PageData.Write(contents.Table))
            .Append("</script>\n");
        html.Append("<script type=\"module\">").Append(Script).Append("</script>\n</body>\n</html>\n");
        return html.ToString();
    }
}
