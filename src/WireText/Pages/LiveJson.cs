using System.Buffers;
using System.Text;
using System.Text.Json;
using WireText.Drawing.Lettering;

namespace WireText.Pages;

/// <summary>What the events of a page have in common: an object in one line of plain letters.</summary>
internal static class LiveJson
{
    public static string Write(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>The element <c>svg</c>, and the style sheet of its colours.</summary>
    public static void WriteDrawing(Utf8JsonWriter json, ThemedSvg drawing)
    {
        json.WriteString("drawing", drawing.Markup);
        json.WriteString("colours", PageColours.Of(drawing.Colours));
    }

    public static void WriteTexts(Utf8JsonWriter json, string key, IEnumerable<string> texts)
    {
        json.WriteStartArray(key);
        foreach (var text in texts)
        {
            json.WriteStringValue(DrawnText.Clean(text));
        }

        json.WriteEndArray();
    }
}
