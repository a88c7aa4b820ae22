using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>What goes with all that is handed out: one version, and the list of what is inside.</summary>
public sealed partial class ReleaseTests : IDisposable
{
    private const string Commit = "0123456789abcdef0123456789abcdef01234567";

    private static readonly string Version = XDocument
        .Load(Repository.PathOf("Directory.Build.props"))
        .Descendants("Version")
        .Single()
        .Value;

    private readonly TestFolder folder = new();

    public static TheoryData<string> Projects => ["WireText", "WireText.Cli", "WireText.Playground", "WireText.Raster"];

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("docs/start.md")]
    [InlineData("docs/library.md")]
    [InlineData("docs/tool.md")]
    [InlineData("docs/release.md")]
    public void File_ThatAPageNames_HasTheVersion(string page) =>
        Every.Item(
            FileName().Matches(File.ReadAllText(Repository.PathOf(page))).Select(name => name.Groups["version"].Value),
            version => Assert.Equal(Version, version)
        );

    [Fact]
    public void Changelog_BeginsWithTheVersion() =>
        Assert.Equal(
            Version,
            VersionHeading().Match(File.ReadAllText(Repository.PathOf("docs", "changelog.md"))).Groups["version"].Value
        );

    /// <summary>As SPDX 2.3 wants a document: clauses 6 (document), 7 (packages), 11 (relationships) and annex D (expressions).</summary>
    [SkippableFact]
    public void Bill_OfWhatIsInside_IsAsSpdxWantsIt()
    {
        var bill = Bill();

        Assert.Equal("SPDX-2.3", (string?)bill["spdxVersion"]);
        Assert.Equal("CC0-1.0", (string?)bill["dataLicense"]);
        Assert.Equal("SPDXRef-DOCUMENT", (string?)bill["SPDXID"]);
        Assert.True(Uri.TryCreate((string?)bill["documentNamespace"], UriKind.Absolute, out var name));
        Assert.Empty(name.Fragment);
        Assert.Equal("2001-09-09T01:46:40Z", (string?)bill["creationInfo"]!["created"]);
        var packages = Every.Of(bill["packages"]!.AsArray().Select(one => one!.AsObject()));
        var ids = packages.Select(one => (string)one["SPDXID"]!).ToList();
        Assert.Equal(ids.Count, ids.Distinct(StringComparer.Ordinal).Count());
        Every.Item(ids, id => Assert.Matches("^SPDXRef-[A-Za-z0-9.-]+$", id));
        Every.Item(
            packages,
            one =>
            {
                Assert.NotEmpty((string)one["name"]!);
                Assert.Equal("NOASSERTION", (string?)one["downloadLocation"]);
                Assert.False((bool)one["filesAnalyzed"]!);
                Assert.Matches("^[A-Za-z0-9.-]+( (AND|OR|WITH) [A-Za-z0-9.-]+)*$", (string?)one["licenseDeclared"]);
            }
        );
        Every.Item(
            bill["relationships"]!.AsArray().Select(one => one!.AsObject()),
            one =>
            {
                Assert.Contains((string)one["spdxElementId"]!, ids.Append("SPDXRef-DOCUMENT"));
                Assert.Contains((string)one["relatedSpdxElement"]!, ids);
                Assert.Contains(
                    (string)one["relationshipType"]!,
                    new[] { "DESCRIBES", "GENERATED_FROM", "DEPENDS_ON", "BUILD_TOOL_OF" }
                );
            }
        );
    }

    /// <summary>No package of a lock file is missing in the list for programs, nor in that for people with what is shipped.</summary>
    [SkippableTheory]
    [MemberData(nameof(Projects))]
    public void Package_OfALockFile_IsInTheBill(string project)
    {
        var bill = Bill();
        var listed = bill["packages"]!
            .AsArray()
            .Select(one => $"{one!["name"]} {one["versionInfo"]}")
            .ToHashSet(StringComparer.Ordinal);
        var locked = JsonNode.Parse(File.ReadAllText(Repository.PathOf("src", project, "packages.lock.json")))![
            "dependencies"
        ]!
            .AsObject()
            .SelectMany(target => target.Value!.AsObject())
            .Where(one => (string?)one.Value!["type"] != "Project")
            .Select(one => $"{one.Key} {one.Value!["resolved"]}");

        Every.Item(locked, one => Assert.Contains(one, listed));
        // So say the manifest of the one, read apart from the script, and the name table of the other.
        Assert.Matches(@"\| Svg\.Custom \| [^|]+ \| MS-PL \| the program \|", folder.Text("INSIDE.md"));
        Assert.Matches(@"\| Inter \| [^|]+ \| OFL-1\.1 \| the program \|", folder.Text("INSIDE.md"));
    }

    private JsonObject Bill()
    {
        Skip.If(
            Programs.Find("node") is null,
            "node is not installed: install it to have the list of what is inside tested"
        );
        using var shell = new Shell();
        folder.Put("program", "a file to hand out");
        var script = Repository.PathOf(".ci", "inside.mjs");
        var ran = shell.Run($"node '{script}' . {Commit} 1000000000", folder);
        Assert.True(ran.Code == 0, ran.Output + ran.Error);
        return JsonNode.Parse(folder.Text($"wiretext-{Version}.spdx.json"))!.AsObject();
    }

    [GeneratedRegex(@"[Ww]ire[Tt]ext(\.(Core|Cli)\.|-)(?<version>\d+\.\d+\.\d+)", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex FileName();

    [GeneratedRegex("^## (?<version>.*)$", RegexOptions.ExplicitCapture | RegexOptions.Multiline, 2000)]
    private static partial Regex VersionHeading();
}
