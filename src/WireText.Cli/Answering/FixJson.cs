using System.Text.Json;
using WireText.Editing;

namespace WireText.Cli.Answering;

/// <summary>Edits that mend what is found as the <c>CodeAction</c>s of LSP 3.17.</summary>
internal static class FixJson
{
    /// <summary>The kind of an action for one finding.</summary>
    public const string QuickFixKind = "quickfix";

    public static Answer Answer(OpenDocument document, JsonElement parameters)
    {
        var compiled = document.Compiled;
        var stretch = ProtocolJson.SpanIn(compiled.Source, parameters.GetProperty("range"));
        var fixes = IsAskedFor(parameters) ? QuickFixes.In(compiled, stretch) : [];
        return json =>
        {
            json.WriteStartArray();
            foreach (var fix in fixes)
            {
                json.WriteStartObject();
                json.WriteString("title", fix.Title);
                json.WriteString("kind", QuickFixKind);
                json.WriteBoolean("isPreferred", fix.IsCertain);
                json.WriteStartArray("diagnostics");
                DiagnosticJson.Write(json, fix.Finding, document, OtherFiles.NamedIn(compiled));
                json.WriteEndArray();
                json.WriteStartObject("edit");
                ProtocolJson.WriteChanges(json, fix.Edits, document);
                json.WriteEndObject();
                json.WriteEndObject();
            }

            json.WriteEndArray();
        };
    }

    /// <summary>An editor may ask for some kinds alone, each with those that it is the start of.</summary>
    private static bool IsAskedFor(JsonElement parameters) =>
        ProtocolJson.Find(parameters, "context", "only") is not { ValueKind: JsonValueKind.Array } only
        || only.EnumerateArray().Any(kind => kind.GetString() is "" or QuickFixKind);
}
