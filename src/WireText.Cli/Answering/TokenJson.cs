using System.Collections.Immutable;
using System.Text.Json;
using WireText.Editing;

namespace WireText.Cli.Answering;

/// <summary>What each word is as the semantic tokens of LSP 3.17: five numbers a word, its place told from the one before.</summary>
internal static class TokenJson
{
    /// <summary>The types in the order of <see cref="WordKind"/>, by names that the protocol has and every theme colours.</summary>
    public static ImmutableArray<string> Types { get; } =
    [
        "keyword",
        "type",
        "class",
        "variable",
        "property",
        "enumMember",
        "parameter",
        "number",
        "string",
        "comment",
        "macro",
        "function",
    ];

    public static ImmutableArray<string> Modifiers { get; } = ["declaration"];

    public static void Write(Utf8JsonWriter json, Compilation compiled)
    {
        json.WriteStartObject();
        json.WriteStartArray("data");
        var (lineBefore, columnBefore) = (1, 1);
        foreach (var token in WordTokens.Of(compiled))
        {
            var (line, column) = compiled.Source.PositionOf(token.At.Start);
            json.WriteNumberValue(line - lineBefore);
            json.WriteNumberValue(line == lineBefore ? column - columnBefore : column - 1);
            json.WriteNumberValue(token.At.Length);
            json.WriteNumberValue((int)token.Kind);
            json.WriteNumberValue(token.IsDeclaration ? 1 : 0);
            (lineBefore, columnBefore) = (line, column);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
