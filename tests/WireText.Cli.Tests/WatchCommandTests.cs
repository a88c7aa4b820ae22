using System.Globalization;
using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>How watching begins and ends.</summary>
public sealed partial class WatchCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Watch_ThatIsToldToEnd_EndsRight()
    {
        var watching = Watching.Of(folder.Put("a.wiring", Sample.Right));

        Assert.Equal(0, watching.End());
        Assert.Empty(watching.Opened);
        Assert.Equal(
            $"wiretext: watching {folder["a.wiring"]}; open the address in a browser on this machine; Ctrl-C ends it\n",
            watching.Complaint
        );
        Assert.ThrowsAny<HttpRequestException>(() =>
        {
            using var client = new HttpClient();
            client.GetStringAsync(new Uri(watching.Address)).GetAwaiter().GetResult();
        });
    }

    /// <summary>A page that is open does not keep the program.</summary>
    [Fact]
    public void Watch_WithAPageOpen_EndsRight()
    {
        using var watching = Watching.Of(folder.Put("a.wiring", Sample.Right));
        using var reader = new EventReader(watching);
        Assert.Equal("picture", reader.Next().Kind);

        Assert.Equal(0, watching.End());
    }

    [Fact]
    public void Open_OpensTheAddressInTheBrowser()
    {
        using var watching = Watching.Of(folder.Put("a.wiring", Sample.Right), "--open");

        Assert.True(SpinWait.SpinUntil(() => watching.Opened.Count > 0, Watching.Longest));
        Assert.Equal([watching.Address], watching.Opened);
    }

    [Fact]
    public void Open_WithoutABrowser_SaysSoAndGoesOn()
    {
        using var watching = Watching.WithoutBrowser(folder.Put("a.wiring", Sample.Right), "--open");

        Assert.True(
            SpinWait.SpinUntil(
                () => watching.Complaint.EndsWith("here; open the address yourself\n", StringComparison.Ordinal),
                Watching.Longest
            )
        );
        using var reader = new EventReader(watching);
        Assert.Equal("picture", reader.Next().Kind);
    }

    /// <summary>The command that the page on it shows, run where it says.</summary>
    [Fact]
    public void CommandOfThePage_ShowsTheExample()
    {
        var words = Command()
            .Match(File.ReadAllText(Repository.PathOf("docs", "watch.md")))
            .Groups["args"]
            .Value.Split(' ');
        using var watching = Watching.In(Repository.Root, words);
        using var reader = new EventReader(watching);

        Assert.Equal(words[^1], reader.Next().Told.GetProperty("file").GetString());
    }

    /// <summary>The keys that the page on it lists are those that are told, and no others.</summary>
    [Fact]
    public void PageOnWatching_ListsTheKeysOfTheEvents()
    {
        var page = File.ReadAllText(Repository.PathOf("docs", "watch.md"));
        using var watching = Watching.Of(folder.Put("a.wiring", Sample.Doubtful));
        using var reader = new EventReader(watching);
        foreach (var kind in new[] { "picture", "figures" })
        {
            var row = page.Split('\n').Single(line => line.StartsWith($"| `{kind}` |", StringComparison.Ordinal));
            var told = reader.Next(kind, _ => true);

            Every.Item(told.EnumerateObject(), key => Assert.Contains($"`{key.Name}`", row, StringComparison.Ordinal));
            if (kind == "picture")
            {
                Every.Item(
                    told.GetProperty("findings")[0].EnumerateObject(),
                    key => Assert.Contains($"`{key.Name}`", row, StringComparison.Ordinal)
                );
            }
        }
    }

    [Theory]
    [InlineData("-", "standard input cannot be watched: name a file")]
    [InlineData("none.wiring", "there is no such file or folder")]
    public void Watch_OfWhatIsNoFile_SaysWhy(string file, string words)
    {
        var ran = Ran.Of("watch", file);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
    }

    /// <summary>The signal of the keys, sent to the program as it is run: also where who runs the tests was told to ignore it, as in the background of a shell.</summary>
    [SkippableTheory]
    [InlineData("INT")]
    [InlineData("TERM")]
    public void CtrlC_EndsTheProgramRight(string signal)
    {
        folder.Put("a.wiring", Sample.Right);
        using var shell = new Shell();
        using var process = shell.Start("exec env --default-signal=INT wiretext watch a.wiring", folder.Root);
        try
        {
            Assert.StartsWith("http://127.0.0.1:", process.StandardOutput.ReadLine(), StringComparison.Ordinal);
            Assert.StartsWith(
                "wiretext: watching a.wiring;",
                process.StandardError.ReadLine(),
                StringComparison.Ordinal
            );

            shell.Run(string.Create(CultureInfo.InvariantCulture, $"kill -{signal} {process.Id}"), folder);

            Assert.True(process.WaitForExit(Watching.Longest), "it did not end");
            Assert.Equal((0, ""), (process.ExitCode, process.StandardError.ReadToEnd()));
        }
        finally
        {
            // One that lives on would hold up the whole run.
            process.Kill();
        }
    }

    [GeneratedRegex("^wiretext watch (?<args>.*)$", RegexOptions.Multiline, 2000)]
    private static partial Regex Command();
}
