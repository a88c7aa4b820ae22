using System.Buffers.Binary;
using System.Text.Json;
using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>What <c>draw --frames</c> writes, and what it leaves alone.</summary>
public sealed partial class FramesTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Frames_OfAFile_AreWrittenWithTheirList()
    {
        var ran = Draw("video/new");

        var files = ListedIn("video/new");
        Assert.Equal(0, ran.Code);
        Assert.Equal(
            files.Append("frames.json").Order(StringComparer.Ordinal),
            folder
                .Names.Where(name => name != "a.wiring")
                .Select(name => Path.GetFileName(name))
                .Order(StringComparer.Ordinal)
        );
        Assert.Equal("step-01.png", files[0]);
        Every.Item(files, file => Assert.Equal((1920, 1080), SizeOf($"video/new/{file}")));
        Assert.Contains($"{files.Count} frames and frames.json are written", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Frames_OfAnotherSize_HaveIt()
    {
        Draw("tall", "--frame-size", "720x1280");

        Assert.Equal((720, 1280), SizeOf("tall/step-01.png"));
    }

    [Fact]
    public void Frames_DrawnTwice_HaveTheSameBytes()
    {
        Draw("one");
        Draw("two");

        Every.Item(
            ListedIn("one"),
            file => Assert.Equal(File.ReadAllBytes(folder[$"one/{file}"]), File.ReadAllBytes(folder[$"two/{file}"]))
        );
    }

    [Theory]
    [InlineData("step-01.png")]
    [InlineData("frames.json")]
    public void Frames_WhereSomebodyElsesFileIs_AreRefused(string name)
    {
        folder.Put($"video/{name}", "not ours");

        var ran = Draw("video");

        Assert.Equal(2, ran.Code);
        Assert.Contains("is there and of no earlier run", ran.Error, StringComparison.Ordinal);
        Assert.Equal("not ours", folder.Text($"video/{name}"));
        Assert.Equal(["a.wiring", Path.Combine("video", name)], folder.Names);
    }

    /// <summary>An earlier run's frames are written anew; those that are no more are told, and stay.</summary>
    [Fact]
    public void Frames_OverAnEarlierRun_TakeItsPlace()
    {
        Draw("video");
        folder.Put("video/mine.txt", "mine");
        var before = File.ReadAllBytes(folder["video/step-01.png"]);

        var ran = Ran.Of("draw", folder["a.wiring"], "--frames", folder["video"], "--frames-of", "positions");
        var again = Draw("video", "--theme", "dark");

        Assert.Equal(0, ran.Code);
        Assert.Contains("step-01.png is of an earlier run", ran.Error, StringComparison.Ordinal);

        // The list tells no more of the first run's frames: they are somebody's now.
        Assert.Equal(2, again.Code);
        Assert.Equal(before, File.ReadAllBytes(folder["video/step-01.png"]));
        Assert.Equal("mine", folder.Text("video/mine.txt"));
    }

    [Fact]
    public void Frames_DrawnAnew_ReplaceThoseOfBefore()
    {
        Draw("video");
        var before = File.ReadAllBytes(folder["video/step-01.png"]);

        var ran = Draw("video", "--theme", "dark");

        Assert.Equal(0, ran.Code);
        Assert.NotEqual(before, File.ReadAllBytes(folder["video/step-01.png"]));
    }

    [Fact]
    public void Frames_OfAMistake_AreRefusedWithItsFinding()
    {
        var ran = Ran.Of(
            "draw",
            Repository.PathOf("examples", "mistakes", "mute-opens-the-hot.wiring"),
            "--frames",
            folder["video"]
        );

        Assert.Equal(2, ran.Code);
        Assert.Contains("[mute-opens-hot]", ran.Error, StringComparison.Ordinal);
        Assert.Contains("mend what is found first", ran.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Names);
    }

    [Theory]
    [InlineData("--frames video --trace vol.3", "--trace has no meaning for --frames")]
    [InlineData("--frames video -o a.png", "--output has no meaning for --frames")]
    [InlineData("--frames video --width 100", "--width has no meaning for --frames")]
    [InlineData("--frames video --frame-size 12x12", "--frame-size 12x12: a size is a width and a height in pixels")]
    [InlineData("--frame-size 1280x720", "--frame-size is for --frames")]
    [InlineData("--frames-of positions", "--frames-of is for --frames")]
    public void Frames_WithWhatCannotBe_SayWhy(string options, string words)
    {
        var ran = Ran.Of(
            new TestHost { WorkingFolder = folder.Root },
            ["draw", folder.Put("a.wiring", Sample.Right), .. options.Split(' ')]
        );

        Assert.Equal(2, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Fact]
    public void Frames_WhereAFileIsTheFolder_AreRefused()
    {
        folder.Put("video", "a file");

        var ran = Draw("video");

        Assert.Equal(2, ran.Code);
        Assert.Contains("cannot write to", ran.Error, StringComparison.Ordinal);
        Assert.Equal("a file", folder.Text("video"));
    }

    [Fact]
    public void EveryCommandOfThePage_WritesItsFrames()
    {
        var page = File.ReadAllText(Repository.PathOf("docs", "frames.md"));
        var commands = Every.Of(
            Commands()
                .Matches(page)
                .SelectMany(m => m.Groups["text"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        );
        Every.Item(
            commands,
            command =>
            {
                string[] words = command.Split(' ')[1..];
                var target = words[Array.IndexOf(words, "--frames") + 1];
                words[Array.IndexOf(words, "--frames") + 1] = folder[target];

                var ran = Ran.Of(new TestHost { WorkingFolder = Repository.Root }, [.. words, "--effort", "quick"]);

                Assert.Equal(0, ran.Code);
                Every.Item(ListedIn(target), file => Assert.True(File.Exists(folder[$"{target}/{file}"])));
            }
        );
    }

    private Ran Draw(string target, params string[] more) =>
        Ran.Of(["draw", folder.Put("a.wiring", Sample.Right), "--frames", folder[target], .. more]);

    private IReadOnlyList<string> ListedIn(string target)
    {
        using var list = JsonDocument.Parse(folder.Text($"{target}/frames.json"));
        return Every.Of(
            list.RootElement.GetProperty("frames")
                .EnumerateArray()
                .Select(frame => frame.GetProperty("file").GetString()!)
        );
    }

    /// <summary>By the header of a PNG: ISO/IEC 15948, 11.2.2.</summary>
    private (int Width, int Height) SizeOf(string name)
    {
        var png = File.ReadAllBytes(folder[name]);
        return (
            BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)),
            BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20))
        );
    }

    [GeneratedRegex("```sh\n(?<text>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Commands();
}
