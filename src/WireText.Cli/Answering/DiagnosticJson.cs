using System.Text.Json;
using WireText.Text;

namespace WireText.Cli.Answering;

/// <summary>Findings as the diagnostics of LSP 3.17. One that stands in another file is told where this file names that one.</summary>
internal static class DiagnosticJson
{
    /// <summary>The program, as it is named beside each of them.</summary>
    public const string Source = "wiretext";

    /// <param name="named">Where a document names a file that it stands on or includes, by the path of that file.</param>
    public static void Write(
        Utf8JsonWriter json,
        Finding finding,
        OpenDocument document,
        Func<SourceText, SourceLocation> named
    )
    {
        var own = document.Compiled.Source;
        var isHere = finding.Location.Source == own;
        var at = isHere ? finding.Location : named(finding.Location.Source);
        json.WriteStartObject();
        ProtocolJson.WriteRange(json, "range", own, at.Span);
        json.WriteNumber("severity", SeverityOf(finding.Severity));
        json.WriteString("code", finding.Id);
        json.WriteString("source", Source);
        json.WriteString("message", finding.Help is { } help ? $"{finding.Message}\n{help}" : finding.Message);
        WriteRelated(json, finding, document, isHere);
        json.WriteEndObject();
    }

    private static void WriteRelated(Utf8JsonWriter json, Finding finding, OpenDocument document, bool isHere)
    {
        json.WriteStartArray("relatedInformation");
        RelatedPlace[] own = isHere ? [] : [new RelatedPlace(finding.Location, finding.Message)];
        foreach (var related in own.Concat(finding.Related).Where(related => IsAFile(related.Location.Source)))
        {
            json.WriteStartObject();
            json.WritePropertyName("location");
            ProtocolJson.WriteLocation(json, related.Location, document);
            json.WriteString("message", related.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();

        // The standard parts are in the program, and no file.
        static bool IsAFile(SourceText source) => source != Parts.StandardParts.Source;
    }

    private static int SeverityOf(Severity severity) =>
        severity switch
        {
            Severity.Error => 1,
            Severity.Warning => 2,
            _ => 3,
        };
}
