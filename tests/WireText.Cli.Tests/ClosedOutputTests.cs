namespace WireText.Cli.Tests;

/// <summary>What goes wrong outside of any command ends with one line and exit code 2, never with a stack trace.</summary>
public sealed class ClosedOutputTests : IDisposable
{
    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    [SkippableTheory]
    [InlineData("--version")]
    [InlineData("--help")]
    [InlineData("check a.wiring")]
    [InlineData("positions a.wiring")]
    [InlineData("draw --effort quick a.wiring -o -")]
    [InlineData("arrange a.wiring")]
    [InlineData("parts")]
    [InlineData("explain floating-ground")]
    [InlineData("format - < a.wiring")]
    [InlineData("response a.wiring")]
    [InlineData("export --spice a.wiring")]
    public void StandardOutput_ThatIsClosed_IsToldInOneLine(string command)
    {
        folder.Put("a.wiring", Sample.Right);

        var ran = shell.Run($"wiretext {command} >&-", folder);

        Assert.Equal(2, ran.Code);
        Assert.EndsWith("wiretext: cannot write the output: it is closed\n", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void WorkingFolder_ThatIsGone_IsToldAsThat()
    {
        folder.Put("a.wiring", Sample.Right);

        var relative = shell.Run("mkdir gone && cd gone && rmdir ../gone && wiretext check a.wiring", folder);
        var whole = shell.Run($"mkdir gone && cd gone && rmdir ../gone && wiretext check {folder["a.wiring"]}", folder);

        Assert.Equal(2, relative.Code);
        Assert.EndsWith(
            "wiretext: the folder in which the program was started is gone\n",
            relative.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(0, whole.Code);
    }

    [Fact]
    public void Fault_OfTheProgram_IsOneLine()
    {
        using var host = new TestHost
        {
            IsTerminal = true,
            Trouble = new InvalidOperationException("nobody thought of this"),
        };

        var ran = Ran.Of(host, "check", folder.Put("a.wiring", Sample.Wrong));

        Assert.Equal(2, ran.Code);
        Assert.Equal(
            "wiretext: this is a fault of the program itself: InvalidOperationException: nobody thought of this\n",
            ran.Error
        );
    }

    /// <summary>As when the program is copied out of its folder: the runtime tells it so, wrapped in what could not begin.</summary>
    [Fact]
    public void Library_ThatIsMissing_IsToldWithHowToMend()
    {
        using var host = new TestHost
        {
            IsTerminal = true,
            Trouble = new TypeInitializationException(
                "Drawing",
                new DllNotFoundException(
                    "Unable to load shared library 'libdraw' or one of its dependencies. In order to help"
                )
            ),
        };

        var ran = Ran.Of(host, "check", folder.Put("a.wiring", Sample.Wrong));

        Assert.Equal(2, ran.Code);
        Assert.Equal(
            "wiretext: a library of the program is missing: keep all files that came with it in one folder "
                + "(Unable to load shared library 'libdraw' or one of its dependencies)\n",
            ran.Error
        );
    }
}
