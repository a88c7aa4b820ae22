using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The language server, driven by clients that others wrote: the reference implementation of its protocol on Node, and an editor.</summary>
public sealed class LanguageServerTests : IDisposable
{
    private static readonly string Scripts = Repository.PathOf("tests", "WireText.Cli.Tests", "Editor");

    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        folder.Dispose();
        shell.Dispose();
    }

    [SkippableTheory]
    [InlineData("server.test.mjs")]
    [InlineData("names.test.mjs")]
    [InlineData("words.test.mjs")]
    public void Server_AnswersAnEditor(string tests)
    {
        Skip.If(
            Programs.Find("node") is null,
            "node is not installed: install it to have the language server tested by an editor's client"
        );
        Skip.IfNot(
            Directory.Exists(Path.Combine(Scripts, "node_modules")),
            "the editor's client is not installed: npm ci --prefix tests/WireText.Cli.Tests/Editor"
        );

        var ran = shell.Run($"WIRETEXT=wiretext node --test '{Path.Combine(Scripts, tests)}'", folder);

        Assert.True(ran.Code == 0, ran.Output + ran.Error);
        Assert.DoesNotContain("# pass 0", ran.Output, StringComparison.Ordinal);
        Assert.Contains("# fail 0", ran.Output, StringComparison.Ordinal);
    }

    /// <summary>A client that shares no code with the one above, in an editor that is set up as the page says.</summary>
    [SkippableFact]
    public void Server_AnswersNeovim()
    {
        Skip.If(
            Programs.Find("nvim") is null,
            "nvim is not installed: install it to have the language server tested by a second client"
        );
        folder.Put(
            "a.wiring",
            """
            # 🎸
            jack out mono
            wire neck.hott to out.tip white
            pickup neck single-coil
            wire neck.ground to out.sleeve black

            """
        );
        var page = File.ReadAllText(Repository.PathOf("docs", "language-server.md"));
        folder.Put("init.lua", page.Split("```lua\n")[1].Split("```")[0]);

        var ran = shell.Run(
            $"nvim --headless -u init.lua -i NONE -n -S '{Path.Combine(Scripts, "neovim.lua")}' 2>&1",
            folder
        );

        var told = ran.Output.ReplaceLineEndings("\n");
        Assert.True(ran.Code == 0, told);
        Assert.Contains("3:11 no lug 'hott' on 'neck'", told, StringComparison.Ordinal);
        Assert.Contains("\nhot ground\n", told, StringComparison.Ordinal);
        Assert.Contains("one net with out.tip", told, StringComparison.Ordinal);
        Assert.Contains("wire    neck.hot  to out.tip  white", told, StringComparison.Ordinal);
    }
}
