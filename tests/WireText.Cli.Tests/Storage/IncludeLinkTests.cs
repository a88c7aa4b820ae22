namespace WireText.Cli.Tests.Storage;

/// <summary>An include reads below its own folder and the parts folders, wherever links lead: what a finding shows of a file goes into logs.</summary>
public sealed class IncludeLinkTests : IDisposable
{
    private const string Secret = "hunter2";

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Each line makes links in the folder of the wiring, as a change to it could, and names a file by them.</summary>
    [Theory]
    [InlineData("passwd", "passwd -> ../outside/passwd")]
    [InlineData("etc/passwd", "etc -> ../outside")]
    [InlineData("etc/passwd", "etc -> {root}/outside")]
    [InlineData("a/b/passwd", "a/b -> ../../outside")]
    [InlineData("up/outside/passwd", "up -> ..")]
    [InlineData("one/passwd", "two -> ../outside", "one -> two")]
    [InlineData("one/two/passwd", "one -> deep", "deep/two -> ../../outside")]
    [InlineData("etc/deep/passwd", "etc -> ../outside")]
    [InlineData("etc/link", "etc -> ../outside")]
    [InlineData("etc/../etc/passwd", "etc -> ../outside")]
    [InlineData("a/passwd", "a -> ../guitars/b", "b -> ../outside")]
    public void Include_ThroughLinksThatLeaveTheFolder_IsRefused(string path, params string[] links)
    {
        PutSecrets();
        Link("guitars", links);

        var ran = Ran.Of("check", folder.Put("guitars/a.wiring", $"include \"{path}\"\n" + Sample.Right));

        AssertRefused(ran);
    }

    [Theory]
    [InlineData("etc/passwd", "etc -> ../outside")]
    [InlineData("one/passwd", "two -> ../outside", "one -> two")]
    public void Include_ThroughLinksThatLeaveAPartsFolder_IsRefused(string path, params string[] links)
    {
        PutSecrets();
        Link("parts", links);
        var file = folder.Put("guitars/a.wiring", $"include \"{path}\"\n" + Sample.Right);

        AssertRefused(Ran.Of("check", file, "--parts", folder["parts"]));
    }

    [Theory]
    [InlineData("own/part.wiring", "own -> parts")]
    [InlineData("own/part.wiring", "own -> {root}/guitars/parts")]
    [InlineData("part.wiring", "part.wiring -> parts/part.wiring")]
    [InlineData("own/again/part.wiring", "own -> parts", "parts/again -> .")]
    public void Include_ThroughLinksThatStayInTheFolder_IsRead(string path, params string[] links)
    {
        folder.Put("guitars/parts/part.wiring", "define resistor drawer \"found\"\n    body bad 8,3\n");
        Link("guitars", links);

        var ran = Ran.Of("check", folder.Put("guitars/a.wiring", $"include \"{path}\"\n" + Sample.Right));

        Assert.DoesNotContain("[cannot-include]", ran.Output, StringComparison.Ordinal);
        Assert.Contains("parts/part.wiring:2:", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Include_BesideAFileThatIsNamedThroughALink_IsRead()
    {
        folder.Put("real/part.wiring", "define resistor drawer \"found\"\n    body bad 8,3\n");
        folder.Put("real/a.wiring", "include \"part.wiring\"\n" + Sample.Right);
        Directory.CreateSymbolicLink(folder["link"], folder["real"]);

        var ran = Ran.Of("check", folder["link/a.wiring"]);

        Assert.Contains("link/part.wiring:2:", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Include_LinksInACircle_IsRefused()
    {
        Link("guitars", "one -> two", "two -> one");

        AssertRefused(Ran.Of("check", folder.Put("guitars/a.wiring", "include \"one/part.wiring\"\n" + Sample.Right)));
    }

    private static void AssertRefused(Ran ran)
    {
        Assert.Equal(1, ran.Code);
        Assert.Contains("[cannot-include]", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(Secret, ran.Output + ran.Error, StringComparison.Ordinal);
    }

    private void PutSecrets()
    {
        folder.Put("outside/passwd", $"root {Secret}\n");
        folder.Put("outside/deep/passwd", $"root {Secret}\n");
        File.CreateSymbolicLink(folder["outside/link"], folder["outside/passwd"]);
    }

    private void Link(string within, params string[] links)
    {
        foreach (var link in links)
        {
            var (name, target) = link.Split(" -> ") is [var left, var right] ? (left, right) : (link, link);
            var path = folder[$"{within}/{name}"];
            Directory.CreateDirectory(Path.GetDirectoryName(path) ?? path);
            File.CreateSymbolicLink(path, target.Replace("{root}", folder.Root, StringComparison.Ordinal));
        }
    }
}
