using System.IO.Compression;
using System.Text.Json;
using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The package for an editor: built, unpacked, and started.</summary>
public sealed partial class EditorPackageTests : IDisposable
{
    private static readonly string Source = Repository.PathOf("grammar", "vscode");

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [SkippableFact]
    public void Package_Unpacked_HasAllThatItNamesAndStartsTheServer()
    {
        Skip.If(
            Programs.Find("node") is null,
            "node is not installed: install it to have the editor package built and tested"
        );
        Skip.IfNot(
            Directory.Exists(Path.Combine(Source, "node_modules")),
            "what the editor package is built with is not installed: npm ci --prefix grammar/vscode"
        );
        using var shell = new Shell();
        var built = shell.Run($"node '{Path.Combine(Source, "build.mjs")}' a.vsix", folder);
        Assert.True(built.Code == 0, built.Output + built.Error);
        ZipFile.ExtractToDirectory(folder["a.vsix"], folder["a"]);

        var files = folder.Names.Where(name => name.StartsWith("a/", StringComparison.Ordinal)).ToList();
        var types = File.ReadAllText(folder["a/[Content_Types].xml"]);
        Every.Item(
            files.Select(Path.GetExtension).Where(ending => ending != ".xml"),
            ending => Assert.Contains($"Extension=\"{ending}\"", types, StringComparison.Ordinal)
        );
        Every.Item(
            NamedIn(File.ReadAllText(folder["a/extension/package.json"])),
            name => Assert.True(File.Exists(folder[$"a/extension/{name}"]), name)
        );
        Assert.Equal(
            File.ReadAllText(Repository.PathOf("grammar", "wiretext.tmLanguage.json")),
            File.ReadAllText(folder["a/extension/wiretext.tmLanguage.json"])
        );
        Assert.Contains(
            "\nvscode-languageclient\n",
            File.ReadAllText(folder["a/extension/NOTICES.txt"]),
            StringComparison.Ordinal
        );

        var test = Repository.PathOf("tests", "WireText.Cli.Tests", "Editor", "extension.test.mjs");
        var ran = shell.Run($"EXTENSION='{folder["a"]}' WIRETEXT=wiretext node --test '{test}'", folder);
        Assert.True(ran.Code == 0, ran.Output + ran.Error);
        Assert.Contains("# pass 2", ran.Output, StringComparison.Ordinal);
    }

    /// <summary>A snippet as it stands before anybody changes its words.</summary>
    [Fact]
    public void Snippet_OfAWholeCircuit_IsRight()
    {
        var ran = Ran.Of("check", "--strict", folder.Put("a.wiring", Snippet("guitar")));

        Assert.Equal(0, ran.Code);
        Assert.Empty(Ran.Of("format", folder.Put("a.wiring", Snippet("guitar"))).Error);
        Assert.Equal(Snippet("guitar"), folder.Text("a.wiring"));
    }

    [Fact]
    public void Snippet_OfADefinition_IsRight() =>
        Assert.Equal(0, Ran.Of("check", folder.Put("a.wiring", Snippet("define"))).Code);

    private static IEnumerable<string> NamedIn(string manifest)
    {
        using var json = JsonDocument.Parse(manifest);
        return [.. FilesIn(json.RootElement)];

        static IEnumerable<string> FilesIn(JsonElement value) =>
            value.ValueKind switch
            {
                JsonValueKind.Object => value.EnumerateObject().SelectMany(one => FilesIn(one.Value)),
                JsonValueKind.Array => value.EnumerateArray().SelectMany(FilesIn),
                JsonValueKind.String when value.GetString() is ['.', '/', .. var name] => [name],
                _ => [],
            };
    }

    private static string Snippet(string prefix)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(Source, "snippets.json")));
        var body = json
            .RootElement.EnumerateObject()
            .First(one => one.Value.GetProperty("prefix").GetString() == prefix)
            .Value.GetProperty("body");
        return Placeholder()
            .Replace(string.Concat(body.EnumerateArray().Select(line => line.GetString() + "\n")), "${word}");
    }

    [GeneratedRegex(@"\$\{\d+:(?<word>[^}]*)\}", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Placeholder();
}
