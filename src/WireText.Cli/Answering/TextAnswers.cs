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
        Add("textDocument/completion", Complete);
        Add("textDocument/hover", Hover);
        Add("textDocument/codeAction", FixJson.Answer);
        Add("textDocument/semanticTokens/full", (document, _) => json => TokenJson.Write(json, document.Compiled));
        Add("textDocument/inlayHint", Hint);
        Add("textDocument/codeLens", LensCommands.Offer);
        requests["workspace/executeCommand"] = LensCommands.Asked(documents);

        void Add(string method, Func<OpenDocument, JsonElement, Answer> answer) =>
            requests[method] = documents.Asked(answer);
    }

    private static int OffsetIn(OpenDocument document, JsonElement parameters) =>
        ProtocolJson.OffsetIn(document.Compiled.Source, parameters.GetProperty("position"));

    private static Answer Complete(OpenDocument document, JsonElement parameters)
    {
        var offset = OffsetIn(document, parameters);
        return json => CompletionJson.Write(json, document.Compiled, offset);
    }

    private static Answer Hover(OpenDocument document, JsonElement parameters)
    {
        var hover = Hovers.At(document.Compiled, OffsetIn(document, parameters));
        return json =>
        {
            if (hover is null)
            {
                json.WriteNullValue();
                return;
            }

            json.WriteStartObject();
            json.WriteStartObject("contents");
            json.WriteString("kind", "markdown");
            json.WriteString("value", hover.Markdown);
            json.WriteEndObject();
            ProtocolJson.WriteRange(json, "range", document.Compiled.Source, hover.At);
            json.WriteEndObject();
        };
    }

    private static Answer Hint(OpenDocument document, JsonElement parameters)
    {
        var source = document.Compiled.Source;
        var hints = LineHints.In(document.Compiled, ProtocolJson.SpanIn(source, parameters.GetProperty("range")));
        return json =>
        {
            json.WriteStartArray();
            foreach (var hint in hints)
            {
                json.WriteStartObject();
                ProtocolJson.WritePosition(json, "position", source, hint.At);
                json.WriteString("label", hint.Words);
                json.WriteString("tooltip", hint.Meaning);
                json.WriteBoolean("paddingLeft", true);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        };
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
