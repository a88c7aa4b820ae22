using System.Net.Sockets;

namespace WireText.Cli.Tests.Storage;

/// <summary>What is no regular file is told by its kind, not by its name, and never waited for.</summary>
public sealed class SpecialFileTests : IDisposable
{
    private const string MakesPipes = "only Linux tells a pipe from a file";

    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    [SkippableTheory]
    [InlineData("check")]
    [InlineData("check --fix")]
    [InlineData("format")]
    [InlineData("draw")]
    [InlineData("arrange --write")]
    [InlineData("positions")]
    public void File_ThatIsAPipe_IsRefused(string command)
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);

        var ran = shell.Run($"mkfifo a.wiring && wiretext {command} a.wiring", folder);

        Assert.Equal(2, ran.Code);
        Assert.StartsWith("wiretext: cannot read 'a.wiring': it is a pipe", ran.Error, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void File_ThatAPipeLinksTo_IsRefused()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);

        var ran = shell.Run("mkfifo pipe && ln -s pipe a.wiring && wiretext check a.wiring", folder);

        Assert.Equal(2, ran.Code);
        Assert.Contains("it is a pipe", ran.Error, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void File_ThatIsASocket_IsRefused()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(folder["a.wiring"]));
        var file = folder.Put("b.wiring", Sample.Right);

        var read = Ran.Of("check", folder["a.wiring"]);
        var written = Ran.Of("export", "--spice", file, "-o", folder["a.wiring"]);

        Assert.Equal((2, 2), (read.Code, written.Code));
        Assert.Equal($"wiretext: cannot read '{folder["a.wiring"]}': it is a socket\n", read.Error);
        Assert.Equal($"wiretext: cannot write '{folder["a.wiring"]}': it is a socket\n", written.Error);
    }

    /// <summary>One that is named on the command line may be a terminal; one that gives without end is left.</summary>
    [SkippableFact]
    public void File_ThatIsADeviceWithoutEnd_IsLeft()
    {
        Skip.IfNot(File.Exists("/dev/zero"), "this system has no device that gives without end");

        var ran = Ran.Of("check", "/dev/zero");

        Assert.Equal(2, ran.Code);
        Assert.Equal("wiretext: cannot read '/dev/zero': it is larger than 16 MiB\n", ran.Error);
    }

    [SkippableFact]
    public void FolderMember_ThatLeadsToADevice_IsTold()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);
        folder.Put("shop/b.wiring", Sample.Wrong);
        File.CreateSymbolicLink(folder["shop/a.wiring"], "/dev/zero");

        var ran = Ran.Of("check", folder["shop"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("shop/a.wiring': it is a link that leads out of", ran.Error, StringComparison.Ordinal);
        Assert.Contains("shop/b.wiring:4:", ran.Output, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void Include_OfAPipe_IsAFinding()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);
        folder.Put("a.wiring", "include \"part.wiring\"\n" + Sample.Right);

        var ran = shell.Run("mkfifo part.wiring && wiretext check a.wiring", folder);

        Assert.Equal(1, ran.Code);
        Assert.Contains("it is a pipe", ran.Output, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void FolderMember_ThatIsAPipe_IsToldAndTheOthersAreChecked()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);
        folder.Put("shop/b.wiring", Sample.Wrong);

        var ran = shell.Run("mkfifo shop/a.wiring && wiretext check shop", folder);

        Assert.Equal(2, ran.Code);
        Assert.Equal("wiretext: cannot read 'shop/a.wiring': it is a pipe\n", ran.Error);
        Assert.Contains("shop/b.wiring:4:", ran.Output, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void Settings_ThatAreAPipe_AreRefused()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);
        folder.Put("a.wiring", Sample.Right);

        var ran = shell.Run("mkfifo wiretext.toml && wiretext check a.wiring", folder);

        Assert.Equal(2, ran.Code);
        Assert.Contains("wiretext.toml': it is a pipe", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>The shell has opened it: a program writes to it already, and the end comes.</summary>
    [SkippableFact]
    public void File_ThatTheShellHasOpened_IsRead()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);
        folder.Put("a.wiring", Sample.Wrong);

        var piped = shell.Run("cat a.wiring | wiretext check /dev/stdin", folder);
        var redirected = shell.Run("wiretext check /dev/fd/3 3< a.wiring", folder);
        var substituted = shell.Run("bash -c 'wiretext check <(cat a.wiring)'", folder);

        Assert.Equal((1, 1, 1), (piped.Code, redirected.Code, substituted.Code));
        Assert.Contains("blakc", piped.Output, StringComparison.Ordinal);
        Assert.Contains("blakc", redirected.Output, StringComparison.Ordinal);
        Assert.Contains("blakc", substituted.Output, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void Target_ThatIsAPipe_IsWrittenToAndStaysOne()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);
        folder.Put("a.wiring", Sample.Right);

        var ran = shell.Run(
            "mkfifo a.svg && (cat a.svg > read.svg &) && wiretext draw --effort quick a.wiring -o a.svg && test -p a.svg",
            folder
        );
        var file = shell.Run("wiretext draw --effort quick a.wiring -o b.svg", folder);

        Assert.Equal((0, 0), (ran.Code, file.Code));
        Assert.Equal(folder.Text("b.svg"), folder.Text("read.svg"));
    }

    [SkippableFact]
    public void Target_ThatIsADevice_IsWrittenToAndStaysOne()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);
        var file = folder.Put("a.wiring", Sample.Right);
        File.CreateSymbolicLink(folder["null.svg"], "/dev/null");

        var ran = Ran.Of("draw", "--effort", "quick", file, "-o", folder["null.svg"]);

        Assert.Equal(0, ran.Code);
        Assert.Equal("/dev/null", new FileInfo(folder["null.svg"]).LinkTarget);
        Assert.Equal(0, shell.Run("test -c /dev/null", folder).Code);
    }

    [SkippableFact]
    public void Target_StandardOutputByItsName_IsNotReplaced()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), MakesPipes);
        folder.Put("a.wiring", Sample.Right);

        var ran = shell.Run(
            "echo before > all && wiretext export --spice a.wiring -o /dev/stdout >> all && head -n 1 all",
            folder
        );

        Assert.Equal((0, "before\n"), (ran.Code, ran.Output));
        Assert.Contains(".end", folder.Text("all"), StringComparison.Ordinal);
    }

    /// <summary>A regular file is one in a folder of devices too: it is replaced whole, not written into.</summary>
    [SkippableFact]
    public void Format_OfAFileBelowDev_LeavesNoOldTail()
    {
        Skip.IfNot(Directory.Exists("/dev/shm"), "this system keeps no files below /dev");
        var file = $"/dev/shm/wiretext-{Path.GetRandomFileName()}.wiring";
        var text = Sample.Right + "pot       vol          standard            250k              audio            \n";
        try
        {
            File.WriteAllText(file, text);
            Ran.Of("format", file);
            var beside = Ran.Of("format", folder.Put("a.wiring", text));

            Assert.Equal(0, beside.Code);
            Assert.Equal(folder.Text("a.wiring"), File.ReadAllText(file));
        }
        finally
        {
            File.Delete(file);
        }
    }
}
