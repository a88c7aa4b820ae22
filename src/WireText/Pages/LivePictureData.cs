using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using WireText.Comparing;
using WireText.Drawing.Lettering;
using WireText.Output;
using WireText.Text;

namespace WireText.Pages;

/// <summary>Writes what is told of a save at once, as one line of JSON. <c>docs/watch.md</c> describes it.</summary>
internal static class LivePictureData
{
    public static string Write(LivePicture shown) =>
        LiveJson.Write(json =>
        {
            json.WriteString("file", VisibleText.Line(shown.File));
            json.WriteString("trouble", shown.Trouble is { } trouble ? VisibleText.Line(trouble) : null);
            WriteDrawing(json, shown);
            WriteFindings(json, shown.Findings);
            WriteChange(json, shown.Change);
        });

    private static void WriteDrawing(Utf8JsonWriter json, LivePicture shown)
    {
        if (shown.Circuit is not { } circuit || shown.Drawing is not { } drawing)
        {
            json.WriteNull("title");
            return;
        }

        json.WriteString("title", DrawnText.Clean(PageContents.TitleOf(circuit)));
        var head = new StringBuilder();
        PageMarkup.AppendHead(head, circuit, PageContents.TitleOf(circuit));
        json.WriteString("head", head.ToString());
        LiveJson.WriteDrawing(json, ThemedSvg.Of(drawing.Light, drawing.Dark));
        var lines = new LiveLines(circuit);
        WriteNamed(json, "parts", lines.Parts);
        WriteNamed(json, "lugs", lines.Lugs);
        WriteNamed(json, "wires", lines.Wires);
        json.WriteStartArray("lines");
        foreach (var line in lines.Lines)
        {
            json.WriteStartObject();
            json.WriteString("file", line.File);
            json.WriteNumber("line", line.Number);
            json.WriteString("text", line.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Pairs, and no object: a name may be any word.</summary>
    private static void WriteNamed(
        Utf8JsonWriter json,
        string key,
        ImmutableArray<(string Name, ImmutableArray<int> Lines)> named
    )
    {
        json.WriteStartArray(key);
        foreach (var (name, lines) in named)
        {
            json.WriteStartArray();
            json.WriteStringValue(DrawnText.Clean(name));
            foreach (var line in lines)
            {
                json.WriteNumberValue(line);
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    private static void WriteFindings(Utf8JsonWriter json, ImmutableArray<Finding> findings)
    {
        json.WriteString("summary", FindingText.Summary(findings, files: 1));
        json.WriteStartArray("findings");
        foreach (var finding in findings.Take(LivePage.MostFindings))
        {
            json.WriteStartObject();
            json.WriteString("severity", FindingText.WordFor(finding.Severity));
            json.WriteString("id", finding.Id);
            json.WriteString("message", VisibleText.Line(finding.Message));
            json.WriteString("help", finding.Help is { } help ? VisibleText.Lines(help) : null);
            WritePlace(json, finding.Location);
            json.WriteStartArray("related");
            foreach (var related in finding.Related)
            {
                json.WriteStartObject();
                json.WriteString("message", VisibleText.Line(related.Message));
                WritePlace(json, related.Location);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("more", Math.Max(0, findings.Length - LivePage.MostFindings));
    }

    private static void WritePlace(Utf8JsonWriter json, SourceLocation location)
    {
        var line = TextLine.Of(location);
        var column = location.Position.Column;
        json.WriteString("file", line.File);
        json.WriteNumber("line", line.Number);
        json.WriteNumber("column", column);
        json.WriteNumber("length", Math.Min(location.Span.Length, line.Text.Length - column + 1));
        json.WriteString("text", line.Text);
    }

    private static void WriteChange(Utf8JsonWriter json, CircuitComparison? change)
    {
        var listed = change is null ? [] : ChangeList.Of(change);
        json.WriteStartArray("changes");
        foreach (var one in listed)
        {
            json.WriteStringValue(VisibleText.Line($"{ChangeList.WordOf(one.Section)}: {one.Words}"));
        }

        json.WriteEndArray();
        LiveJson.WriteTexts(json, "newParts", listed.Select(one => one.After?.Name).OfType<string>());
        LiveJson.WriteTexts(json, "newWires", listed.Select(one => one.Wire?.After?.Id).OfType<string>());
    }
}
