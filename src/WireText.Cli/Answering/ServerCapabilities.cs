using System.Text.Json;
using WireText.Cli.Hosting;

namespace WireText.Cli.Answering;

/// <summary>What the program can be asked for: the answer to <c>initialize</c>.</summary>
internal static class ServerCapabilities
{
    /// <summary>Each change is sent as the whole text: a text that was changed twice is never put together wrongly.</summary>
    private const int WholeText = 1;

    public static void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteStartObject("capabilities");
        json.WriteString("positionEncoding", "utf-16");
        json.WriteStartObject("textDocumentSync");
        json.WriteBoolean("openClose", true);
        json.WriteNumber("change", WholeText);
        json.WriteBoolean("save", true);
        json.WriteEndObject();
        json.WriteBoolean("documentFormattingProvider", true);
        json.WriteBoolean("documentSymbolProvider", true);
        json.WriteBoolean("foldingRangeProvider", true);
        json.WriteStartObject("completionProvider");
        WriteStrings(json, "triggerCharacters", [".", "=", ":"]);
        json.WriteEndObject();
        json.WriteBoolean("hoverProvider", true);
        json.WriteStartObject("codeActionProvider");
        WriteStrings(json, "codeActionKinds", [FixJson.QuickFixKind]);
        json.WriteEndObject();
        json.WriteStartObject("semanticTokensProvider");
        json.WriteStartObject("legend");
        WriteStrings(json, "tokenTypes", TokenJson.Types);
        WriteStrings(json, "tokenModifiers", TokenJson.Modifiers);
        json.WriteEndObject();
        json.WriteBoolean("full", true);
        json.WriteEndObject();
        json.WriteBoolean("inlayHintProvider", true);
        json.WriteStartObject("codeLensProvider");
        json.WriteEndObject();
        json.WriteStartObject("executeCommandProvider");
        WriteStrings(json, "commands", LensCommands.Names);
        json.WriteEndObject();
        json.WriteBoolean("definitionProvider", true);
        json.WriteBoolean("referencesProvider", true);
        json.WriteBoolean("documentHighlightProvider", true);
        json.WriteStartObject("renameProvider");
        json.WriteBoolean("prepareProvider", true);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteStartObject("serverInfo");
        json.WriteString("name", "wiretext");
        json.WriteString("version", ProgramVersion.Text);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteStrings(Utf8JsonWriter json, string name, IEnumerable<string> strings)
    {
        json.WriteStartArray(name);
        foreach (var one in strings)
        {
            json.WriteStringValue(one);
        }

        json.WriteEndArray();
    }

    /// <summary>The registration of the files that others may change.</summary>
    public static void WriteWatchers(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteStartArray("registrations");
        json.WriteStartObject();
        json.WriteString("id", "files");
        json.WriteString("method", "workspace/didChangeWatchedFiles");
        json.WriteStartObject("registerOptions");
        json.WriteStartArray("watchers");
        json.WriteStartObject();
        json.WriteString("globPattern", "**/*.wiring");
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
