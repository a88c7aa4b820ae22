using System.Text.Json;
using WireText.Editing;

namespace WireText.Cli.Answering;

/// <summary>Words that may follow as the <c>CompletionItem</c>s of LSP 3.17.</summary>
internal static class CompletionJson
{
    public static void Write(Utf8JsonWriter json, Compilation compiled, int offset)
    {
        json.WriteStartArray();
        foreach (var word in Completions.At(compiled, offset))
        {
            json.WriteStartObject();
            json.WriteString("label", word.Word);
            json.WriteNumber("kind", ItemKindOf(word.Kind));
            if (word.Detail.Length > 0)
            {
                json.WriteString("detail", word.Detail);
            }

            if (word.Paint is { } paint)
            {
                // An editor shows the colour beside a word of this kind.
                json.WriteString("documentation", paint);
            }

            json.WriteStartObject("textEdit");
            ProtocolJson.WriteRange(json, "range", compiled.Source, word.At);
            json.WriteString("newText", word.Word);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The nearest of the kinds that the protocol has, which are those of programs.</summary>
    private static int ItemKindOf(CompletionKind kind) =>
        kind switch
        {
            CompletionKind.Statement or CompletionKind.Word => 14,
            CompletionKind.Kind => 7,
            CompletionKind.Model => 22,
            CompletionKind.Part => 6,
            CompletionKind.Lug => 5,
            CompletionKind.Control => 10,
            CompletionKind.Position => 20,
            CompletionKind.Colour => 16,
            CompletionKind.Claim => 12,
            CompletionKind.Check => 21,
            _ => 13,
        };
}
