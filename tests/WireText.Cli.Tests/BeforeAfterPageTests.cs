using System.Diagnostics;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The page of drawings before and after a change, for reviewers. It needs bash, and git with this repository's history.</summary>
public class BeforeAfterPageTests
{
    [SkippableFact]
    public void Page_AgainstTheLastCommit_NamesEveryDrawing()
    {
        using var folder = new TestFolder();

        var (code, _, error) = Run("HEAD", folder["page.html"]);
        Skip.If(error.Contains("no revision", StringComparison.Ordinal), "This is no git repository with a commit.");

        Assert.Equal((0, ""), (code, error));
        var page = folder.Text("page.html");
        foreach (var example in Repository.Examples)
        {
            Assert.Contains(
                $"examples/{Path.GetFileNameWithoutExtension(example)}.svg",
                page,
                StringComparison.Ordinal
            );
        }
    }

    [SkippableFact]
    public void Page_AgainstWhatIsNoRevision_IsRefused()
    {
        using var folder = new TestFolder();

        var (code, _, error) = Run("no-such-revision", folder["page.html"]);

        Assert.Equal(2, code);
        Assert.Contains("'no-such-revision' is no revision", error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["page.html"]));
    }

    private static (int Code, string Output, string Error) Run(params string[] arguments)
    {
        Skip.IfNot(OperatingSystem.IsLinux() && File.Exists("/bin/bash"), "There is no bash.");
        Skip.IfNot(File.Exists("/usr/bin/git"), "There is no git.");
        var start = new ProcessStartInfo("/bin/bash", [Repository.PathOf("tests", "before-after.sh"), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output.Result, error);
    }
}
