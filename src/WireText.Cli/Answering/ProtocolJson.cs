using System.Collections.Immutable;
using System.Text.Json;
using WireText.Text;

namespace WireText.Cli.Answering;

/// <summary>Places and edits as LSP 3.17 writes them: lines from 0, and in a line UTF-16 units from 0.</summary>
internal static class ProtocolJson
{
    /// <summary>What stands under names, one in the other; null where nothing does.</summary>
    public static JsonElement? Find(JsonElement value, params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
        {
            if (value.ValueKind != JsonValueKind.Object || !value.TryGetProperty(name, out value))
            {
                return null;
            }
        }

        return value;
    }

    /// <summary>The offset in a text that a <c>Position</c> says.</summary>
    public static int OffsetIn(SourceText source, JsonElement position) =>
        source.OffsetOf(
            OneMore(position.GetProperty("line").GetInt64()),
            OneMore(position.GetProperty("character").GetInt64())
        );

    public static TextSpan SpanIn(SourceText source, JsonElement range) =>
        TextSpan.FromBounds(OffsetIn(source, range.GetProperty("start")), OffsetIn(source, range.GetProperty("end")));

    public static void WriteRange(Utf8JsonWriter json, string name, SourceText source, TextSpan span)
    {
        json.WriteStartObject(name);
        WritePosition(json, "start", source, span.Start);
        WritePosition(json, "end", source, span.End);
        json.WriteEndObject();
    }

    public static void WritePosition(Utf8JsonWriter json, string name, SourceText source, int offset)
    {
        var (line, column) = source.PositionOf(offset);
        json.WriteStartObject(name);
        json.WriteNumber("line", line - 1);
        json.WriteNumber("character", column - 1);
        json.WriteEndObject();
    }

    public static void WriteEdits(Utf8JsonWriter json, IEnumerable<TextEdit> edits)
    {
        json.WriteStartArray();
        foreach (var edit in edits)
        {
            json.WriteStartObject();
            WriteRange(json, "range", edit.At.Source, edit.At.Span);
            json.WriteString("newText", edit.NewText);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A <c>Location</c>.</summary>
    /// <param name="document">The text that the editor asked about, which has its own address.</param>
    public static void WriteLocation(Utf8JsonWriter json, SourceLocation at, OpenDocument document)
    {
        json.WriteStartObject();
        json.WriteString("uri", AddressOf(at.Source, document));
        WriteRange(json, "range", at.Source, at.Span);
        json.WriteEndObject();
    }

    /// <summary>What stands in a <c>WorkspaceEdit</c>: the edits, file by file.</summary>
    public static void WriteChanges(Utf8JsonWriter json, ImmutableArray<TextEdit> edits, OpenDocument document)
    {
        json.WriteStartObject("changes");
        foreach (var file in edits.GroupBy(edit => AddressOf(edit.At.Source, document), StringComparer.Ordinal))
        {
            json.WritePropertyName(file.Key);
            WriteEdits(json, file.OrderBy(edit => edit.At.Span.Start));
        }

        json.WriteEndObject();
    }

    public static string AddressOf(SourceText source, OpenDocument document) =>
        source.Path == document.Compiled.Source.Path
            ? document.Address
            : DocumentAddress.Of(Path.GetFullPath(source.Path));

    private static int OneMore(long number) => (int)Math.Clamp(number, 0, int.MaxValue - 1) + 1;
}
