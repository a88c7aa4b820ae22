using System.Diagnostics;
using WireText.Testing;

namespace WireText.Page.Tests;

/// <summary>The tests of the scripts by themselves, which run on Node.</summary>
public class ViewerTests
{
    [SkippableTheory]
    [InlineData("viewer.test.mjs")]
    [InlineData("live.test.mjs")]
    [InlineData("playground.test.mjs")]
    public void Script_PassesItsTestsOnNode(string tests)
    {
        var node = Programs.Find("node");
        Skip.If(node is null, "node is not installed: install it to have the scripts tested by themselves");
        var start = new ProcessStartInfo(node!, ["--test", Repository.PathOf("tests", "WireText.Page.Tests", tests)])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        Assert.True(process.ExitCode == 0, output + error.GetAwaiter().GetResult());
        Assert.Contains("# pass ", output, StringComparison.Ordinal);
        Assert.DoesNotContain("# pass 0", output, StringComparison.Ordinal);
    }
}
