using System.Text.Json;
using WireText.Editing;

namespace WireText.Cli.Answering;

/// <summary>The answers about the text of one document.</summary>
internal static class TextAnswers
{
    public static void AddTo(Dictionary<string, Request> requests, OpenDocuments documents)
    {
        Add(
            "textDocument/formatting",
            (document, _) => json => ProtocolJson.WriteEdits(json, Formatting.EditsOf(document.Compiled.Tree))
        );
        Add("textDocument/documentSymbol", (document, _) => json => OutlineJson.Write(json, document.Compiled));
        Add("textDocument/foldingRange", (document, _) => json => WriteFolds(json, document.Compiled));

        void Add(string method, Func<OpenDocument, JsonElement, Answer> answer) =>
            requests[method] = documents.Asked(answer);
    }

    private static void WriteFolds(Utf8JsonWriter json, Compilation compiled)
    {
        json.WriteStartArray();
        foreach (var fold in Folds.Of(compiled.Tree))
        {
            json.WriteStartObject();
            json.WriteNumber("startLine", fold.First - 1);
            json.WriteNumber("endLine", fold.Last - 1);
            if (fold.IsComment)
            {
                json.WriteString("kind", "comment");
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
