using System.Text.Json;
using WireText.Editing;

namespace WireText.Cli.Answering;

/// <summary>An outline as the <c>DocumentSymbol</c>s of LSP 3.17.</summary>
internal static class OutlineJson
{
    public static void Write(Utf8JsonWriter json, Compilation compiled)
    {
        json.WriteStartArray();
        foreach (var item in Outline.Of(compiled.Tree))
        {
            json.WriteStartObject();
            json.WriteString("name", item.Name);
            json.WriteString("detail", item.Detail);
            json.WriteNumber("kind", SymbolKindOf(item.Kind));
            ProtocolJson.WriteRange(json, "range", compiled.Source, item.Whole);
            ProtocolJson.WriteRange(json, "selectionRange", compiled.Source, item.At);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The nearest of the kinds that the protocol has, which are those of programs.</summary>
    private static int SymbolKindOf(OutlineKind kind) =>
        kind switch
        {
            OutlineKind.Heading => 15,
            OutlineKind.File => 1,
            OutlineKind.Part => 13,
            OutlineKind.Wire => 25,
            OutlineKind.Control => 10,
            OutlineKind.Place => 18,
            OutlineKind.Claim => 17,
            OutlineKind.Definition => 5,
            _ => 24,
        };
}
