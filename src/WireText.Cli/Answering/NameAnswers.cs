using System.Collections.Immutable;
using System.Text.Json;
using WireText.Editing;
using WireText.Text;

namespace WireText.Cli.Answering;

/// <summary>The answers about a name: where it is given, where it is used, and another one for it.</summary>
internal static class NameAnswers
{
    public static void AddTo(Dictionary<string, Request> requests, OpenDocuments documents)
    {
        requests["textDocument/definition"] = documents.Asked(Define);
        requests["textDocument/documentHighlight"] = documents.Asked(Highlight);
        requests["textDocument/prepareRename"] = documents.Asked(Prepare);
        requests["textDocument/references"] = AcrossFiles(documents, Refer);
        requests["textDocument/rename"] = AcrossFiles(documents, Rename);
    }

    private static Request AcrossFiles(
        OpenDocuments documents,
        Func<OpenDocument, JsonElement, Func<NameUse, ImmutableArray<NameTable>>, Answer> answer
    ) =>
        parameters =>
        {
            OpenDocument[] open = [.. documents.All];
            var document = documents.At(parameters.GetProperty("textDocument").GetProperty("uri").GetString() ?? "");
            return cancellation =>
                answer(
                    document with
                    {
                        Compiled = document.Compiled.Until(cancellation),
                    },
                    parameters,
                    use =>
                        [
                            .. documents.TablesNaming(
                                open,
                                use.DeclaredAt is { } declared && DocumentAddress.PathOf(document.Address) is not null
                                    ? Path.GetFullPath(declared.Source.Path)
                                    : DocumentAddress.PathOf(document.Address),
                                cancellation
                            ),
                        ]
                );
        };

    private static int OffsetIn(OpenDocument document, JsonElement parameters) =>
        ProtocolJson.OffsetIn(document.Compiled.Source, parameters.GetProperty("position"));

    private static NameUse? UseIn(OpenDocument document, JsonElement parameters) =>
        NameTable.Of(document.Compiled).At(OffsetIn(document, parameters));

    private static Answer Define(OpenDocument document, JsonElement parameters)
    {
        var declared = NameTable.Of(document.Compiled).DeclarationAt(OffsetIn(document, parameters));
        return json =>
        {
            if (declared is { } at)
            {
                ProtocolJson.WriteLocation(json, at, document);
            }
            else
            {
                json.WriteNullValue();
            }
        };
    }

    private static Answer Refer(
        OpenDocument document,
        JsonElement parameters,
        Func<NameUse, ImmutableArray<NameTable>> tables
    )
    {
        var withDeclaration =
            ProtocolJson.Find(parameters, "context", "includeDeclaration") is not { ValueKind: JsonValueKind.False };
        var use = UseIn(document, parameters);
        var places = use is null
            ? []
            : NewName.Places(use, tables(use)).Where(at => withDeclaration || !IsSame(at, use.DeclaredAt));
        return json =>
        {
            json.WriteStartArray();
            foreach (var place in places)
            {
                ProtocolJson.WriteLocation(json, place, document);
            }

            json.WriteEndArray();
        };
    }

    private static bool IsSame(SourceLocation at, SourceLocation? other) =>
        other is { } place && at.Source.Path == place.Source.Path && at.Span == place.Span;

    private static Answer Highlight(OpenDocument document, JsonElement parameters)
    {
        var table = NameTable.Of(document.Compiled);
        var use = table.At(OffsetIn(document, parameters));
        return json =>
        {
            json.WriteStartArray();
            foreach (var other in table.Own.Where(other => use is not null && other.Key == use.Key))
            {
                json.WriteStartObject();
                ProtocolJson.WriteRange(json, "range", document.Compiled.Source, other.At.Span);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        };
    }

    private static Answer Prepare(OpenDocument document, JsonElement parameters)
    {
        var use = UseIn(document, parameters) ?? throw new RpcFault(RpcFault.RequestFailed, "there is no name here");
        return NewName.WhyFixed(use) is { } problem
            ? throw new RpcFault(RpcFault.RequestFailed, problem)
            : json =>
            {
                json.WriteStartObject();
                ProtocolJson.WriteRange(json, "range", document.Compiled.Source, use.At.Span);
                json.WriteString("placeholder", use.At.Text);
                json.WriteEndObject();
            };
    }

    private static Answer Rename(
        OpenDocument document,
        JsonElement parameters,
        Func<NameUse, ImmutableArray<NameTable>> tables
    )
    {
        var use = UseIn(document, parameters) ?? throw new RpcFault(RpcFault.RequestFailed, "there is no name here");
        var name = parameters.GetProperty("newName").GetString() ?? "";
        var renamed = NewName.WhyFixed(use) is { } problem
            ? new NewName([], problem)
            : NewName.Of(use, name, tables(use));
        return renamed.Problem is { } why
            ? throw new RpcFault(RpcFault.RequestFailed, why)
            : json =>
            {
                json.WriteStartObject();
                ProtocolJson.WriteChanges(json, renamed.Edits, document);
                json.WriteEndObject();
            };
    }
}
