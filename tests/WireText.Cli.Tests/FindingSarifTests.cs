using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using WireText.Checks;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>
/// What <c>check --format sarif</c> writes, held to the standard: its schema, and what the schema cannot say. Numbers are
/// sections of OASIS, Static Analysis Results Interchange Format (SARIF) 2.1.0 plus errata 01.
/// </summary>
public sealed partial class FindingSarifTests : IDisposable
{
    private const string Allowed =
        Sample.Right + "metal   saddle\nallow floating-ground at saddle \"nylon {bridge} [see](it)\"\n";

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Sarif_OfEveryExample_KeepsToTheSchemaOfTheStandard()
    {
        var schema = new SchemaCheck(ReadSchema());
        foreach (var file in Shown.Examples)
        {
            schema.AssertValid(Ran.Of("check", "--format", "sarif", file).Output, file);
        }

        schema.AssertValid(Ran.Of(["check", "--format", "sarif", .. Shown.Examples, folder["none"]]).Output, "all");
        schema.AssertValid(Run(Allowed).ToJsonString(), "with an allowance");
        schema.AssertValid(
            Ran.Of(new TestHost("lift x\n"), "check", "--format", "sarif", "-").Output,
            "standard input"
        );
    }

    /// <summary>A schema that lets everything pass would hold nothing.</summary>
    [Theory]
    [InlineData("level", "\"fatal\"")]
    [InlineData("ruleIndex", "-2")]
    [InlineData("message", "{}")]
    [InlineData("later", "1")]
    public void Schema_OfTheStandard_SaysNoToAWrongKey(string key, string value)
    {
        var log = Run(Sample.Wrong);
        Results(log).Single()[key] = JsonNode.Parse(value);

        new SchemaCheck(ReadSchema()).AssertInvalid(log);
    }

    /// <summary>3.27.6 and 3.52: the index leads to the rule of that id. 3.19.23: no rule stands twice.</summary>
    [Fact]
    public void Rules_OfAllExamples_AreThoseOfTheResultsAndSayWhatThePagesSay()
    {
        var log = RunAll();
        var rules = log["runs"]![0]!["tool"]!["driver"]!["rules"]!.AsArray();

        Every.Item(
            Results(log),
            result => Assert.Equal((string?)result["ruleId"], (string?)rules[(int)result["ruleIndex"]!]!["id"])
        );
        Assert.Equal(
            Results(log)
                .Select(result => (string)result["ruleId"]!)
                .Concat(Waiting(log).Select(waiting => (string)waiting["associatedRule"]!["id"]!))
                .Distinct()
                .Order(StringComparer.Ordinal),
            rules.Select(rule => (string)rule!["id"]!).Order(StringComparer.Ordinal)
        );
        Every.Item(
            rules,
            rule =>
            {
                var description = FindingCatalogue.Find((string)rule!["id"]!)!;
                Assert.Equal(CheckPage.Write(description), (string?)rule["help"]!["markdown"]);
                Assert.Matches("^[A-Z][a-z]+([A-Z][a-z]+)*$", (string?)rule["name"]);
                Assert.EndsWith(".", (string?)rule["shortDescription"]!["text"], StringComparison.Ordinal);
            }
        );
    }

    /// <summary>3.27.10: what is no failure has the level none; a failure has none of that. 3.27.23: suppressions in all results or in none.</summary>
    [Fact]
    public void Results_OfAllExamplesAndARemark_HaveAKindALevelAndSuppressions()
    {
        var results = Results(RunAll()).Concat(Results(Run(Sample.Right + "lift out.tip\n"))).ToList();

        Assert.Contains(results, result => (string?)result["kind"] == "informational");
        Every.Item(
            results,
            result => Assert.Equal((string?)result["kind"] == "informational", (string?)result["level"] == "none")
        );
        Every.Item(results, result => Assert.NotNull(result["suppressions"]));
    }

    /// <summary>3.30.5 to 3.30.8, with columns in UTF-16 units: the sign in quotes counts as two.</summary>
    [Fact]
    public void Region_BehindALetterOfTwoUnits_IsThePlaceInTheText()
    {
        const string text =
            "circuit \"\U0001F3B8\"\ncap   dark  \"\U0001F3B8\" 22x from out.tip to out.sleeve\njack out\n";

        var log = Run(text);

        var region = Results(log).First()["locations"]![0]!["physicalLocation"]!["region"]!;
        var line = text.Split('\n')[(int)region["startLine"]! - 1];
        Assert.Equal("22x", line[((int)region["startColumn"]! - 1)..((int)region["endColumn"]! - 1)]);
        Assert.Equal((int)region["startLine"]!, (int)region["endLine"]!);
        Assert.Equal("utf16CodeUnits", (string?)log["runs"]![0]!["columnKind"]);
    }

    /// <summary>RFC 3986: unreserved characters stand as they are (2.3), others as percent and two capital digits (2.1); no colon in a first segment (4.2).</summary>
    [Theory]
    [InlineData("a.wiring", "a.wiring")]
    [InlineData("shop/no. 1~x_y/a-b.wiring", "shop/no.%201~x_y/a-b.wiring")]
    [InlineData("c:d.wiring", "c%3Ad.wiring")]
    [InlineData("50%#1?.wiring", "50%25%231%3F.wiring")]
    [InlineData("gehäuse.wiring", "geh%C3%A4use.wiring")]
    [InlineData("./x/../a.wiring", "a.wiring")]
    public void Uri_OfAFileBelowTheFolder_IsRelativeAndEncoded(string name, string uri)
    {
        Directory.CreateDirectory(folder["x"]);
        folder.Put(name, Sample.Wrong);

        var location = Results(Run(folder.Root, folder[name])).Single()["locations"]![0]!["physicalLocation"]![
            "artifactLocation"
        ]!;

        Assert.Equal(uri, (string?)location["uri"]);
        Assert.Equal("%SRCROOT%", (string?)location["uriBaseId"]);
    }

    /// <summary>3.10.2: three slashes, and the way up resolved.</summary>
    [Fact]
    public void Uri_OfAFileElsewhere_IsAbsolute()
    {
        var file = folder.Put("a b.wiring", Sample.Wrong);
        Directory.CreateDirectory(folder["guitars/old"]);

        var location = Results(Run(folder["guitars/old"], folder["guitars/old/../../a b.wiring"])).Single()[
            "locations"
        ]![0]!["physicalLocation"]!["artifactLocation"]!;

        Assert.Equal("file://" + file.Replace(" ", "%20", StringComparison.Ordinal), (string?)location["uri"]);
        Assert.Null(location["uriBaseId"]);
    }

    /// <summary>3.35: what the author allowed is there, with the reason and the place of the line.</summary>
    [Fact]
    public void AllowedFinding_IsAResultThatIsSuppressed()
    {
        var result = Assert.Single(Results(Run(Allowed)));

        var suppression = Assert.Single(result["suppressions"]!.AsArray())!;
        Assert.Equal("floating-ground", (string?)result["ruleId"]);
        Assert.Equal("inSource", (string?)suppression["kind"]);
        Assert.Equal("nylon {bridge} [see](it)", (string?)suppression["justification"]);
        Assert.Equal(
            Allowed.Split('\n').ToList().FindIndex(line => line.StartsWith("allow", StringComparison.Ordinal)) + 1,
            (int)suppression["location"]!["physicalLocation"]!["region"]!["startLine"]!
        );
    }

    /// <summary>3.11.5: braces are doubled, or they would be places for arguments. 3.11.6: what looks like a link is none.</summary>
    [Fact]
    public void Message_WithBracesAndBrackets_SaysThem()
    {
        var text = (string)
            Results(Run("jack out\nwire out.tip to out.sleeve [a](b){0}\n")).First()["message"]!["text"]!;

        Assert.DoesNotMatch(@"(?<!\{)\{(?!\{)", text);
        Assert.DoesNotContain("](", text, StringComparison.Ordinal);
        Assert.Contains("{{0}}", text, StringComparison.Ordinal);
    }

    /// <summary>3.20.14 and 3.20.21.</summary>
    [Fact]
    public void Sarif_FileThatIsNotThere_IsARunThatDidNotSucceed()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("check", "--format", "sarif", folder["none.wiring"], file);
        var invocation = JsonNode.Parse(ran.Output)!["runs"]![0]!["invocations"]![0]!;

        Assert.Equal(2, ran.Code);
        Assert.False((bool)invocation["executionSuccessful"]!);
        var notification = Assert.Single(invocation["toolExecutionNotifications"]!.AsArray())!;
        Assert.Contains("there is no such file", (string?)notification["message"]!["text"], StringComparison.Ordinal);
        Assert.True((bool)Run(Sample.Right)["runs"]![0]!["invocations"]![0]!["executionSuccessful"]!);
    }

    /// <summary>3.58.3 and 3.58.4: what waits for a mistake leads to its rule and to its file; the run did what it could.</summary>
    [Fact]
    public void CheckThatWaits_IsANotificationOfItsRuleAndFile()
    {
        var log = Run(Sample.Waiting);

        var waiting = Assert.Single(Waiting(log));
        var rule = waiting["associatedRule"]!;
        Assert.Equal("volume-not-silent", (string?)rule["id"]);
        Assert.Equal(
            "volume-not-silent",
            (string?)log["runs"]![0]!["tool"]!["driver"]!["rules"]![(int)rule["index"]!]!["id"]
        );
        Assert.Equal("a.wiring", (string?)waiting["locations"]![0]!["physicalLocation"]!["artifactLocation"]!["uri"]);
        Assert.True((bool)log["runs"]![0]!["invocations"]![0]!["executionSuccessful"]!);
        new SchemaCheck(ReadSchema()).AssertValid(log.ToJsonString(), "with a check that waits");
    }

    /// <summary>3.14.15: an artifact stands once, whatever the number of its results.</summary>
    [Fact]
    public void Artifacts_OfFilesGivenTwice_StandOnce()
    {
        var (right, wrong) = (folder.Put("r.wiring", Sample.Right), folder.Put("w.wiring", Sample.Wrong));

        var log = Run(folder.Root, right, wrong, wrong);

        Assert.Equal(
            ["r.wiring", "w.wiring"],
            log["runs"]![0]!["artifacts"]!.AsArray().Select(artifact => (string)artifact!["location"]!["uri"]!)
        );
    }

    /// <summary>Every last key that is written is a word of the page, and every key of the page is written.</summary>
    [Fact]
    public void Page_NamesEveryKeyThatIsWritten()
    {
        var written = new SortedSet<string>(StringComparer.Ordinal);
        Collect(RunAll(), written);
        Collect(Run(Allowed), written);
        Collect(Run(Sample.Waiting), written);
        Collect(JsonNode.Parse(Ran.Of("check", "--format", "sarif", folder["none.wiring"]).Output), written);

        var page = File.ReadAllLines(Repository.PathOf("docs", "findings-sarif.md"))
            .Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(line => line.Split('|'));
        var named = page.SelectMany(cells =>
                KeyPath().Matches(cells[1]).Concat(KeyPath().Matches(cells[2]).Where(m => m.Value[1] == '.'))
            )
            .SelectMany(match => match.Value.Trim('`').Split('.', '[', ']', '…'))
            .Where(key => key.Length > 0);

        Assert.Equal(string.Join(' ', written), string.Join(' ', named.Distinct().Order(StringComparer.Ordinal)));
    }

    private static void Collect(JsonNode? node, SortedSet<string> keys)
    {
        if (node is JsonObject one)
        {
            foreach (var (key, value) in one)
            {
                keys.Add(key);
                Collect(value, keys);
            }
        }
        else if (node is JsonArray many)
        {
            foreach (var item in many)
            {
                Collect(item, keys);
            }
        }
    }

    private static JsonNode RunAll() =>
        JsonNode.Parse(Ran.Of(["check", "--format", "sarif", .. Shown.Examples]).Output)!;

    private JsonNode Run(string wiring) => Run(folder.Root, folder.Put("a.wiring", wiring));

    private static JsonNode Run(string workingFolder, params string[] files) =>
        JsonNode.Parse(
            Ran.Of(new TestHost { WorkingFolder = workingFolder }, ["check", "--format", "sarif", .. files]).Output
        )!;

    private static IEnumerable<JsonNode> Results(JsonNode log) =>
        log["runs"]![0]!["results"]!.AsArray().Select(result => result!);

    /// <summary>Notifications that are no failure of the run.</summary>
    private static IEnumerable<JsonNode> Waiting(JsonNode log) =>
        log["runs"]![0]!["invocations"]![0]!["toolExecutionNotifications"]!
            .AsArray()
            .Select(notification => notification!)
            .Where(notification => (string?)notification["level"] == "note");

    private static string ReadSchema()
    {
        using var stream = typeof(FindingSarifTests).Assembly.GetManifestResourceStream("sarif-2.1.0.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    [GeneratedRegex(@"`[^`]+`", RegexOptions.None, 2000)]
    private static partial Regex KeyPath();
}
