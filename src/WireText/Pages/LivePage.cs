using System.Collections.Immutable;
using System.Text;
using WireText.Documents;
using WireText.Drawing.Lettering;
using WireText.Text;

namespace WireText.Pages;

/// <summary>One of the texts that the page beside a text is made of.</summary>
/// <param name="Name">How the page asks for it, below its own address; empty for the page itself.</param>
/// <param name="Type">What it is, as a media type.</param>
public sealed record PageFile(string Name, string Type, string Content);

/// <summary>
/// The page beside a text that somebody writes: the same viewer as on a page for a customer, and a module that puts in what is told
/// of each save. It has no wiring in it: everything comes over the events.
/// </summary>
public static class LivePage
{
    /// <summary>The most places at which the page may be open at once. Chosen: a desk, a tablet and a phone, several times over.</summary>
    public const int MostReaders = 16;

    /// <summary>The most connections at once, those that only ask for a file with them.</summary>
    public const int MostConnections = 4 * MostReaders;

    /// <summary>The most bytes of what a browser says before its request ends. Chosen: several times what browsers send.</summary>
    public const int MostRequestBytes = 16 * 1024;

    /// <summary>The most findings that the page lists; <c>check</c> tells all.</summary>
    public const int MostFindings = 100;

    /// <summary>The most files that are followed.</summary>
    public const int MostFiles = 1_000;

    /// <summary>The most folders of which the system is asked to tell.</summary>
    public const int MostFolders = 16;

    /// <summary>How the page asks for the events, below its own address.</summary>
    public const string Events = "events";

    /// <summary>What the page may do (CSP Level 3, W3C): its own scripts, style sheets and events, and nothing else.</summary>
    public const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>The colours of such a page, as variables of a style sheet.</summary>
    public static string Colours => PageColours.Of([]) + SeverityColours();

    private const string Script = "text/javascript; charset=utf-8";
    private const string Style = "text/css; charset=utf-8";

    /// <summary>Everything that the page asks for, besides the events.</summary>
    public static ImmutableArray<PageFile> Files { get; } =
    [
        new("", "text/html; charset=utf-8", Html()),
        new("live.mjs", Script, PageResources.Live),
        new("viewer.mjs", Script, PageResources.Viewer),
        new("page.css", Style, PageResources.Style + Colours),
        new("live.css", Style, PageResources.LiveStyle),
    ];

    private static string Html()
    {
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"").Append(Document.Language).Append("\">\n<head>\n");
        html.Append("<meta charset=\"utf-8\">\n");
        PageMarkup.AppendMeta(html);
        html.Append("<title>Wiring</title>\n");
        html.Append("<link rel=\"stylesheet\" href=\"page.css\">\n<link rel=\"stylesheet\" href=\"live.css\">\n");
        html.Append("<script type=\"module\" src=\"live.mjs\"></script>\n</head>\n");
        html.Append($"<body data-events=\"{Events}\">\n<header>\n<div>\n");
        html.Append("<div data-live=\"head\"><h1>Wiring</h1></div>\n");
        html.Append(
            "<p class=\"live\" role=\"status\" data-live=\"state\">The page waits for its first picture.</p>\n"
        );
        html.Append("<noscript><p>Scripts are switched off here: nothing can be shown.</p></noscript>\n");
        html.Append("</div>\n<div data-place=\"colours\"></div>\n</header>\n<main>\n");
        PageMarkup.AppendInstrument(
            html,
            "",
            """
            <section data-live="findings" aria-label="Findings"></section>
            <section data-live="changes" aria-label="Since the last save"></section>

            """
        );
        html.Append("<div data-live=\"below\"></div>\n</main>\n<footer><p data-live=\"foot\"></p></footer>\n");
        html.Append(
            "<aside class=\"line\" aria-label=\"Line of the text\" data-live=\"line\" hidden></aside>\n</body>\n</html>\n"
        );
        return html.ToString();
    }

    private static string SeverityColours()
    {
        var (light, dark) = (Of(Theme.Light), Of(Theme.Dark));
        return $$"""
            :root { {{light}}}
            @media (prefers-color-scheme: dark) { :root:not([data-colours="light"]) { {{dark}}} }
            :root[data-colours="dark"] { {{dark}}}

            """;

        static string Of(Theme theme) =>
            $"--error: {theme.Of(Severity.Error)}; --warning: {theme.Of(Severity.Warning)}; ";
    }
}
