using System.Buffers;
using System.Text;
using System.Text.Json;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes findings as JSON for other programs. <c>docs/findings-json.md</c> describes it.</summary>
public static class FindingJson
{
    /// <summary>Grows when a reader would have to change.</summary>
    public const int Version = 1;

    /// <param name="files">Each file with its findings, in the order given.</param>
    public static string Write(IEnumerable<CheckedFile> files)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteStartArray("files");
            foreach (var file in files)
            {
                json.WriteStartObject();
                json.WriteString("path", file.Path);
                json.WriteStartArray("findings");
                foreach (var finding in file.Findings)
                {
                    Write(json, finding);
                }

                json.WriteEndArray();
                json.WriteStartArray("waiting");
                foreach (var check in file.Waiting)
                {
                    json.WriteStringValue(check);
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    /// <summary>The word for what a finding is about.</summary>
    internal static string WordFor(SubjectKind kind) =>
        kind switch
        {
            SubjectKind.Lug => "lug",
            SubjectKind.Part => "part",
            _ => "position",
        };

    private static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("id", finding.Id);
        json.WriteString("severity", FindingText.WordFor(finding.Severity));
        json.WriteString("message", finding.Message);
        json.WriteString("help", finding.Help);
        WritePlace(json, finding.Location);
        json.WriteStartArray("related");
        foreach (var related in finding.Related)
        {
            json.WriteStartObject();
            json.WriteString("message", related.Message);
            WritePlace(json, related.Location);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("subjects");
        foreach (var subject in finding.Subjects)
        {
            json.WriteStartObject();
            json.WriteString("kind", WordFor(subject.Kind));
            json.WriteString("name", subject.Name);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("edits");
        foreach (var edit in finding.Edits)
        {
            json.WriteStartObject();
            json.WriteString("newText", edit.NewText);
            WritePlace(json, edit.At);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, SourceLocation location)
    {
        var (line, column) = location.Position;
        var (endLine, endColumn) = location.Source.PositionOf(location.Span.End);
        json.WriteString("file", location.Source.Path);
        json.WriteNumber("line", line);
        json.WriteNumber("column", column);
        json.WriteNumber("endLine", endLine);
        json.WriteNumber("endColumn", endColumn);
    }
}
