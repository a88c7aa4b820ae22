namespace WireText.Cli.Tests.Storage;

/// <summary>A folder stands for the wiring files in it, each once, and one that cannot be looked into does not hide the others.</summary>
public sealed class FolderWalkTests : IDisposable
{
    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    [Theory]
    [InlineData("again")]
    [InlineData("again", "twice")]
    public void Folder_WithLinksToItself_GivesEachFileOnce(params string[] links)
    {
        folder.Put("shop/a.wiring", Sample.Wrong);
        foreach (var link in links)
        {
            Directory.CreateSymbolicLink(folder[$"shop/{link}"], ".");
        }

        Assert.EndsWith("\n1 error\n", Ran.Of("check", folder["shop"]).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_WithALinkToAnotherFolder_IsNotLeft()
    {
        folder.Put("outside/secret.wiring", "hunter2\n");
        folder.Put("shop/a.wiring", Sample.Right);
        Directory.CreateSymbolicLink(folder["shop/link"], "../outside");

        var ran = Ran.Of("check", folder["shop"]);

        Assert.Equal(0, ran.Code);
        Assert.DoesNotContain("hunter2", ran.Output + ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_ThatIsALinkItself_IsLookedInto()
    {
        folder.Put("shop/a.wiring", Sample.Wrong);
        Directory.CreateSymbolicLink(folder["link"], "shop");

        Assert.Contains("link/a.wiring:4:", Ran.Of("check", folder["link"]).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_WithALinkToAFileElsewhere_ShowsNothingOfIt()
    {
        folder.Put("outside/secret", "hunter2\n");
        folder.Put("shop/b.wiring", Sample.Wrong);
        File.CreateSymbolicLink(folder["shop/a.wiring"], "../outside/secret");

        var ran = Ran.Of("check", folder["shop"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("shop/a.wiring': it is a link that leads out of", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("hunter2", ran.Output + ran.Error, StringComparison.Ordinal);
        Assert.Contains("shop/b.wiring:4:", ran.Output, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void Folder_WithOneThatMayNotBeLookedInto_IsCheckedWithoutIt()
    {
        folder.Put("shop/a.wiring", Sample.Wrong);
        folder.Put("shop/closed/b.wiring", Sample.Wrong);

        var ran = shell.Run(
            $"chmod 000 shop/closed; {AsOneWhoMayNotReadAll()} wiretext check shop; code=$?; chmod 700 shop/closed; exit $code",
            folder
        );

        Assert.Equal(2, ran.Code);
        Assert.Equal("wiretext: cannot read 'shop/closed': it may not be looked into\n", ran.Error);
        Assert.Contains("shop/a.wiring:4:", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_WithoutAnyWiringFile_DoesNotHideTheOthers()
    {
        Directory.CreateDirectory(folder["empty"]);

        var ran = Ran.Of("check", folder["empty"], folder.Put("a.wiring", Sample.Wrong));

        Assert.Equal(2, ran.Code);
        Assert.Contains("there is no .wiring file in it", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("\n1 error\n", ran.Output, StringComparison.Ordinal);
    }

    /// <summary>The one who may do everything gives up the right to read what is closed.</summary>
    private string AsOneWhoMayNotReadAll() =>
        shell.Run("id -u", folder).Output == "0\n"
            ? "setpriv --bounding-set=-dac_override,-dac_read_search --inh-caps=-dac_override,-dac_read_search"
            : "";
}
