using System.Buffers;
using System.Text;
using System.Text.Json;
using WireText.Editing;
using WireText.Text;

namespace WireText.Playground;

/// <summary>What an editor is told of a text, as JSON; places are offsets in UTF-16 units, as the editor counts.</summary>
internal static class EditingJson
{
    /// <summary>For each finding that is told, in its order, the edits that mend it.</summary>
    public static string Mends(LiveWiring live) =>
        Write(json =>
        {
            json.WriteStartArray();
            foreach (var finding in live.Findings)
            {
                json.WriteStartArray();
                foreach (var fix in QuickFixes.Of(finding))
                {
                    json.WriteStartObject();
                    json.WriteString("title", VisibleText.Line(fix.Title));
                    json.WriteStartArray("edits");
                    foreach (var edit in fix.Edits)
                    {
                        WriteSpan(json, edit.At.Span);
                        json.WriteString("text", edit.NewText);
                        json.WriteEndObject();
                    }

                    json.WriteEndArray();
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }

            json.WriteEndArray();
        });

    /// <summary>Three numbers a word: where it starts, where it ends, and its kind by place in <see cref="WordKind"/>.</summary>
    public static string Tokens(Compilation compiled) =>
        Write(json =>
        {
            json.WriteStartArray();
            foreach (var token in WordTokens.Of(compiled))
            {
                json.WriteNumberValue(token.At.Start);
                json.WriteNumberValue(token.At.End);
                json.WriteNumberValue((int)token.Kind);
            }

            json.WriteEndArray();
        });

    public static string Completions(Compilation compiled, int offset) =>
        Write(json =>
        {
            json.WriteStartArray();
            foreach (var word in Editing.Completions.At(compiled, offset))
            {
                WriteSpan(json, word.At);
                json.WriteString("word", word.Word);
                json.WriteString("detail", VisibleText.Line(word.Detail));
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });

    /// <summary>Begins an object with where something starts and ends.</summary>
    private static void WriteSpan(Utf8JsonWriter json, TextSpan span)
    {
        json.WriteStartObject();
        json.WriteNumber("from", span.Start);
        json.WriteNumber("to", span.End);
    }

    private static string Write(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }
}
