using System.Text;

namespace WireText.Pages;

/// <summary>The fixed texts of a page: the viewer's script and the style sheet.</summary>
internal static class PageResources
{
    /// <summary>A module that exports <c>createViewer(root, data)</c>.</summary>
    public static string Viewer { get; } = Read("viewer.mjs");

    public static string Style { get; } = Read("page.css");

    /// <summary>A module that starts itself on the page that is served while somebody writes.</summary>
    public static string Live { get; } = Read("live.mjs");

    public static string LiveStyle { get; } = Read("live.css");

    private static string Read(string name)
    {
        using var stream = typeof(PageResources).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
