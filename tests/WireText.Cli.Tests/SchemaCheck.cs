using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace WireText.Cli.Tests;

/// <summary>Holds JSON to a JSON Schema, and says where it does not keep to it.</summary>
internal sealed class SchemaCheck
{
    private static readonly EvaluationOptions Options = new()
    {
        OutputFormat = OutputFormat.List,
        RequireFormatValidation = true,
    };

    private readonly JsonSchema schema;

    /// <param name="text">The schema; a registry of its own lets several have the same id.</param>
    public SchemaCheck(string text) =>
        schema = JsonSchema.FromText(text, new BuildOptions { SchemaRegistry = new SchemaRegistry() });

    /// <summary>The schema with every key forbidden that it does not name.</summary>
    public static SchemaCheck Closed(string text)
    {
        var root = JsonNode.Parse(text)!;
        Close(root);
        return new SchemaCheck(root.ToJsonString());
    }

    public void AssertValid(string json, string what)
    {
        using var document = JsonDocument.Parse(json);
        var problems = Problems(document.RootElement);
        Assert.True(problems.Count == 0, $"{what}:\n{string.Join('\n', problems)}");
    }

    public void AssertInvalid(JsonNode json)
    {
        using var document = JsonDocument.Parse(json.ToJsonString());
        Assert.NotEmpty(Problems(document.RootElement));
    }

    private List<string> Problems(JsonElement json)
    {
        var result = schema.Evaluate(json, Options);
        return result.IsValid
            ? []
            :
            [
                .. (result.Details ?? [])
                    .Where(detail => detail.Errors is not null)
                    .SelectMany(detail => detail.Errors!.Values.Select(error => $"{detail.InstanceLocation}: {error}")),
                "not valid",
            ];
    }

    private static void Close(JsonNode? node)
    {
        if (node is JsonObject one)
        {
            if (one.ContainsKey("properties"))
            {
                one["additionalProperties"] = false;
            }

            foreach (var child in one.Select(pair => pair.Value).ToList())
            {
                Close(child);
            }
        }
    }
}
