namespace WireText.Cli.Tests.Storage;

/// <summary>A result is never written over what it came from, by whatever name.</summary>
public sealed class OwnSourceTests : IDisposable
{
    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    public static TheoryData<string> Writers =>
        ["draw --effort quick --format svg", "response --format csv", "export --spice"];

    [Theory]
    [MemberData(nameof(Writers))]
    public void Target_TheWiringThroughALinkedFolder_IsRefused(string command)
    {
        folder.Put("real/a.wiring", Sample.Right);
        Directory.CreateSymbolicLink(folder["link"], folder["real"]);

        AssertRefused(command, "real/a.wiring", "link/a.wiring", "is the wiring itself");
        AssertRefused(command, "link/a.wiring", "real/a.wiring", "is the wiring itself");
    }

    [Theory]
    [MemberData(nameof(Writers))]
    public void Target_TheWiringThroughALink_IsRefused(string command)
    {
        folder.Put("a.wiring", Sample.Right);
        File.CreateSymbolicLink(folder["b.svg"], "a.wiring");

        AssertRefused(command, "a.wiring", "b.svg", "is the wiring itself");
    }

    [SkippableTheory]
    [MemberData(nameof(Writers))]
    public void Target_AnotherNameOfTheSameFile_IsRefused(string command)
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "hard links are told by the numbers that Linux gives");
        folder.Put("a.wiring", Sample.Right);
        Assert.Equal(0, shell.Run("ln a.wiring b.svg", folder).Code);

        AssertRefused(command, "a.wiring", "b.svg", "is the wiring itself");
    }

    [Theory]
    [MemberData(nameof(Writers))]
    public void Target_AnIncludedFile_IsRefused(string command)
    {
        folder.Put("part.wiring", "# parts of the shop\n");
        folder.Put("a.wiring", "include \"part.wiring\"\n" + Sample.Right);

        AssertRefused(command, "a.wiring", "part.wiring", "is included by the wiring");
    }

    [Theory]
    [MemberData(nameof(Writers))]
    public void Target_TheSettings_IsRefused(string command)
    {
        folder.Put("wiretext.toml", "[checks]\n");
        folder.Put("a.wiring", Sample.Right);

        AssertRefused(command, "a.wiring", "wiretext.toml", "holds the settings");
    }

    [Fact]
    public void Target_AnotherFile_IsWritten()
    {
        var file = folder.Put("a.wiring", Sample.Right);
        folder.Put("b.svg", "old");
        File.CreateSymbolicLink(folder["c.svg"], "b.svg");

        var ran = Ran.Of("draw", file, "--effort", "quick", "-o", folder["c.svg"]);

        Assert.Equal(0, ran.Code);
        Assert.Contains("<svg", folder.Text("b.svg"), StringComparison.Ordinal);
        Assert.Equal("b.svg", new FileInfo(folder["c.svg"]).LinkTarget);
    }

    private void AssertRefused(string command, string file, string target, string why)
    {
        var before = folder.Names.ToDictionary(name => name, name => folder.Text(name));

        var ran = Ran.Of([.. command.Split(' '), folder[file], "-o", folder[target]]);

        Assert.Equal(2, ran.Code);
        Assert.Contains($"'{folder[target]}' {why}", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, folder.Names.ToDictionary(name => name, name => folder.Text(name)));
    }
}
