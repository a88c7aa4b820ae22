using System.Diagnostics;
using System.Runtime.Versioning;

namespace WireText.Cli.Tests.Storage;

/// <summary>A file is replaced at once, or stays; nothing that somebody saved meanwhile is lost, and nothing is left behind.</summary>
public sealed class ReplacementTests : IDisposable
{
    private const string Saved = "# saved by somebody else meanwhile\n";

    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    [Fact]
    public void Format_FileThatWasSavedMeanwhile_IsLeft()
    {
        // So much to complain of that it is told before the file is written.
        var bad = string.Concat(Enumerable.Range(0, 12).Select(i => $"wire {new string('x', 100)} {i}\n"));

        AssertLeft("format", "jack out mono   # ragged\npickup neck single-coil\n" + bad);
    }

    [Theory]
    [InlineData("check --fix")]
    [InlineData("arrange --write")]
    public void Change_OfAFileThatWasSavedMeanwhile_IsLeft(string command)
    {
        folder.Put("wiretext.toml", "[checks]\n");

        AssertLeft(command, Sample.Wrong);
    }

    /// <summary>Who knows the number of the process could once lay a link where the new file was going to be.</summary>
    [Fact]
    public void NewFile_WhereALinkWasLaid_IsNotWrittenThroughIt()
    {
        var file = folder.Put("a.wiring", Sample.Right);
        folder.Put("victim", "precious");
        foreach (var name in new[] { "a.svg.tmp", $"a.svg.{Environment.ProcessId}.tmp", ".wiretext-" })
        {
            File.CreateSymbolicLink(folder[name], folder["victim"]);
        }

        Assert.Equal(0, Ran.Of("draw", "--effort", "quick", file, "-o", folder["a.svg"]).Code);

        Assert.Equal("precious", folder.Text("victim"));
        Assert.Equal(6, folder.Names.Count());
    }

    [SkippableFact]
    [UnsupportedOSPlatform("windows")]
    public void Replaced_FileWithRightsOfItsOwn_KeepsThem()
    {
        Skip.If(OperatingSystem.IsWindows(), "rights are those of POSIX");
        foreach (
            var rights in new[]
            {
                UnixFileMode.UserRead | UnixFileMode.UserWrite,
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite,
            }
        )
        {
            var file = folder.Put("a.wiring", "jack out mono   # ragged\npickup neck single-coil\n");
            File.SetUnixFileMode(file, rights);

            Assert.Equal(0, Ran.Of("format", file).Code);

            Assert.Equal(rights, File.GetUnixFileMode(file));
        }
    }

    [Fact]
    public void Target_WithTheLongestName_IsWritten()
    {
        var file = folder.Put("a.wiring", Sample.Right);
        var name = new string('n', 251) + ".svg";

        Assert.Equal(0, Ran.Of("draw", "--effort", "quick", file, "-o", folder[name]).Code);

        Assert.Equal(["a.wiring", name], folder.Names);
    }

    [Fact]
    public void Target_InAFolderThatIsGone_IsToldAsThat()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", "--effort", "quick", file, "-o", folder["gone/a.svg"]);

        Assert.Equal(2, ran.Code);
        Assert.Equal(
            $"wiretext: cannot write '{folder["gone/a.svg"]}': there is no folder '{folder["gone"]}'",
            ran.Error.TrimEnd('\n').Split('\n')[^1]
        );
    }

    /// <summary>A file so large that the program is met while it writes; its old or its new text is there afterwards, and nothing else.</summary>
    [SkippableTheory]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    [InlineData("HUP", 129)]
    public void Program_StoppedWhileItWrites_LeavesNothingBehind(string signal, int code)
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "the signals are sent by a shell of POSIX");
        const int LongestTries = 20;
        var line = "#" + new string('-', 4000);
        var (old, formatted) = (Repeated(line + " \n"), Repeated(line + "\n"));
        for (var i = 0; i < LongestTries; i++)
        {
            folder.Put("a.wiring", old);
            // Whoever runs the tests in the background has these signals ignored, and so would the program.
            using var program = shell.Start(
                "exec env --default-signal=INT,TERM,HUP wiretext format a.wiring",
                folder.Root
            );
            while (!program.HasExited && folder.Names.Count() == 1)
            {
                Thread.Yield();
            }

            using (Process.Start("kill", [$"-{signal}", $"{program.Id}"]))
            {
                program.WaitForExit();
            }

            Assert.Equal(["a.wiring"], folder.Names);
            Assert.True(folder.Text("a.wiring") == old || folder.Text("a.wiring") == formatted, "it is half of either");
            if (program.ExitCode == code)
            {
                return;
            }
        }

        Assert.Fail("the program was always done before the signal came");

        static string Repeated(string text) => string.Concat(Enumerable.Repeat(text, 3900));
    }

    private void AssertLeft(string command, string text)
    {
        var file = folder.Put("a.wiring", text);
        using var host = new TestHost { Meanwhile = () => File.AppendAllText(file, Saved) };

        var ran = Ran.Of(host, [.. command.Split(' '), file]);

        Assert.Equal(2, ran.Code);
        Assert.Contains(
            $"cannot write '{file}': somebody has changed it meanwhile; run it again",
            ran.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(text + Saved, folder.Text("a.wiring"));
        Assert.DoesNotContain(folder.Names, name => name.StartsWith(".wiretext", StringComparison.Ordinal));
    }
}
