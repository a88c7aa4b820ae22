namespace WireText.Cli.Tests.Storage;

/// <summary>A name of bytes that are no UTF-8 has no way into the program: that is said, and its text may come another way.</summary>
public sealed class OddNameTests : IDisposable
{
    private const string MakesOne = "cp a.wiring \"$(printf 'shop/b\\377.wiring')\"";

    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public OddNameTests()
    {
        folder.Put("a.wiring", Sample.Right);
        folder.Put("shop/c.wiring", Sample.Wrong);
    }

    public void Dispose()
    {
        if (OperatingSystem.IsLinux())
        {
            // The class library cannot name the file, and so cannot delete it.
            shell.Run("rm -r shop", folder);
        }

        shell.Dispose();
        folder.Dispose();
    }

    [SkippableTheory]
    [InlineData("check \"$(printf 'shop/b\\377.wiring')\"")]
    [InlineData("draw \"$(printf 'shop/b\\377.wiring')\"")]
    [InlineData("check shop")]
    public void File_WhoseNameIsNoUtf8_IsToldAsThat(string command)
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "other systems have no such names");

        var ran = shell.Run($"{MakesOne} && wiretext {command}", folder);

        Assert.Equal(2, ran.Code);
        Assert.Equal(
            "wiretext: cannot read 'shop/b\uFFFD.wiring': a name that is not UTF-8 cannot be opened; rename it, or give the text as standard input\n",
            ran.Error
        );
        Assert.Equal(command == "check shop", ran.Output.Contains("shop/c.wiring:4:", StringComparison.Ordinal));
    }

    [SkippableFact]
    public void File_WhoseNameIsNoUtf8_IsReadFromStandardInput()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "other systems have no such names");

        var ran = shell.Run($"{MakesOne} && wiretext check - < \"$(printf 'shop/b\\377.wiring')\"", folder);

        Assert.Equal((0, "nothing found\n"), (ran.Code, ran.Output.Split('\n')[^2] + "\n"));
    }
}
