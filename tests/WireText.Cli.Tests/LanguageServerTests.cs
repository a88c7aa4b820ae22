using System.Diagnostics;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The language server, driven by the reference implementation of its protocol on Node.</summary>
public class LanguageServerTests
{
    private static readonly string Folder = Repository.PathOf("tests", "WireText.Cli.Tests", "Editor");

    [SkippableTheory]
    [InlineData("server.test.mjs")]
    [InlineData("names.test.mjs")]
    [InlineData("words.test.mjs")]
    public void Server_AnswersAnEditor(string tests)
    {
        var node = Programs.Find("node");
        Skip.If(
            node is null,
            "node is not installed: install it to have the language server tested by an editor's client"
        );
        Skip.IfNot(
            Directory.Exists(Path.Combine(Folder, "node_modules")),
            "the editor's client is not installed: npm ci --prefix tests/WireText.Cli.Tests/Editor"
        );
        var start = new ProcessStartInfo(node!, ["--test", Path.Combine(Folder, tests)])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Folder,
        };
        start.Environment["WIRETEXT"] = $"dotnet\n{typeof(CliProgram).Assembly.Location}";
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        Assert.True(process.ExitCode == 0, output + error.GetAwaiter().GetResult());
        Assert.DoesNotContain("# pass 0", output, StringComparison.Ordinal);
        Assert.Contains("# fail 0", output, StringComparison.Ordinal);
    }
}
