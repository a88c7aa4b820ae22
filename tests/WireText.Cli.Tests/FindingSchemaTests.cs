using System.Text.Json.Nodes;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>What <c>check --format json</c> writes keeps to the published schema, and the schema says no to what does not.</summary>
public sealed class FindingSchemaTests : IDisposable
{
    private static readonly string Schema = File.ReadAllText(Repository.PathOf("docs", "findings.schema.json"));

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Each example alone, so that a failure names it, and closed: a key that is written must be described.</summary>
    [Fact]
    public void Json_OfEveryExample_KeepsToTheSchemaAndItsKeysAreAllDescribed()
    {
        var schema = SchemaCheck.Closed(Schema);
        foreach (var file in Shown.Examples)
        {
            schema.AssertValid(Ran.Of("check", "--format", "json", file).Output, file);
        }
    }

    /// <summary>Second places, subjects of each kind, no help, a remark, another file, standard input: each is in what is held to it.</summary>
    [Fact]
    public void Json_OfOddCases_KeepsToTheSchema()
    {
        folder.Put("guitars/part.wiring", "define resistor bench-1 \"x\"\n    body box 8,3\n");
        var twice = folder.Put("guitars/a.wiring", "include \"part.wiring\"\ncircuit \"a\"\ncircuit \"b\"\nlift x\n");

        var several = Ran.Of(["check", "--format", "json", twice, .. Shown.Examples]).Output;
        var piped = Ran.Of(new TestHost("jack out\nlift out.tip\n"), "check", "--format", "json", "-").Output;

        var schema = SchemaCheck.Closed(Schema);
        schema.AssertValid(several, "several files");
        schema.AssertValid(piped, "standard input");
        var findings = FindingsOf(several).Concat(FindingsOf(piped)).ToList();
        Assert.Contains(findings, one => one["related"]!.AsArray().Count > 0);
        Assert.Contains(findings, one => one["help"] is null);
        Assert.Contains(findings, one => ((string)one["file"]!).EndsWith("part.wiring", StringComparison.Ordinal));
        Assert.Equal(
            ["lug", "part", "position"],
            findings
                .SelectMany(one => one["subjects"]!.AsArray())
                .Select(subject => (string)subject!["kind"]!)
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
        Assert.Superset(
            new HashSet<string> { "error", "right", "warning" },
            findings.Select(one => (string)one["severity"]!).ToHashSet(StringComparer.Ordinal)
        );
    }

    /// <summary>A schema that lets everything pass would hold nothing.</summary>
    [Theory]
    [InlineData("line", "0")]
    [InlineData("column", "1.5")]
    [InlineData("severity", "\"fatal\"")]
    [InlineData("message", "\"it ends in a full stop.\"")]
    [InlineData("id", "\"E0101\"")]
    [InlineData("help", "3")]
    [InlineData("subjects", "[{\"kind\":\"wire\",\"name\":\"x\"}]")]
    [InlineData("related", "[{\"message\":\"no place\"}]")]
    [InlineData("file", null)]
    public void Schema_FindingWithAWrongKey_SaysNo(string key, string? value)
    {
        var json = JsonNode.Parse(Ran.Of("check", "--format", "json", folder.Put("a.wiring", Sample.Wrong)).Output)!;
        var finding = FindingsOf(json).Single().AsObject();
        finding.Remove(key);
        if (value is not null)
        {
            finding[key] = JsonNode.Parse(value);
        }

        new SchemaCheck(Schema).AssertInvalid(json);
    }

    [Fact]
    public void Schema_KeyThatIsNew_IsPassedOver()
    {
        var json = JsonNode.Parse(Ran.Of("check", "--format", "json", folder.Put("a.wiring", Sample.Wrong)).Output)!;
        FindingsOf(json).Single()["later"] = 1;

        new SchemaCheck(Schema).AssertValid(json.ToJsonString(), "a key of a later program");
    }

    private static IEnumerable<JsonNode> FindingsOf(string json) => FindingsOf(JsonNode.Parse(json)!);

    private static IEnumerable<JsonNode> FindingsOf(JsonNode json) =>
        json["files"]!.AsArray().SelectMany(file => file!["findings"]!.AsArray()).Select(finding => finding!);
}
