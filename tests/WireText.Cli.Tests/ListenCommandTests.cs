using System.Text;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class ListenCommandTests : IDisposable
{
    private static readonly string Example = Repository.PathOf("examples", "2-two-pickups-mute.wiring");

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Listen_Views_WritesAFileAndTellsItsOrder()
    {
        var target = folder["a.wav"];

        var ran = Ran.Of("listen", Example, "-o", target, "--views", "positions");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith($"{target} is written: 23.5 s, ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("a model, not a recording of an instrument", ran.Output, StringComparison.Ordinal);

        // Four passages of 5.5 s and three gaps of half a second, 2 bytes a sample, behind a header of 44.
        Assert.Equal(44 + (2 * 48_000 * 47 / 2), File.ReadAllBytes(target).Length);
        Assert.Equal(["a.wav"], folder.Names);
    }

    [Fact]
    public void Listen_ToStandardOutput_TellsOnStandardError()
    {
        var ran = Ran.Of(new TestHost(Sample.Right), "listen", "-", "-o", "-");

        Assert.Equal(0, ran.Code);
        Assert.Equal("RIFF", Encoding.ASCII.GetString(ran.OutputBytes, 0, 4));
        Assert.StartsWith("- is written: 5.5 s", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Listen_ValuesOfTheTextAndOfTheLine_AreToldWithoutAStar()
    {
        var pickup = "c=100p wind=cw magnet=north at=160mm aperture=14mm";
        var text =
            Sample.Right.Replace("c=100p", pickup, StringComparison.Ordinal) + "load scale=640mm strings=guitar\n";

        var ran = Ran.Of(new TestHost(text), "listen", "-", "-o", folder["a.wav"], "--pluck", "100mm");

        Assert.Equal(0, ran.Code);
        Assert.Contains("scale 640 mm, plucked 100 mm from the bridge\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("from the bridge: neck 160 mm over 14 mm\n", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("*", ran.Output, StringComparison.Ordinal);
    }

    /// <summary>What is still assumed is named by where it is written, whatever else is said.</summary>
    [Theory]
    [InlineData("at=160mm", "aperture= on a pickup's line gives it")]
    [InlineData("aperture=14mm", "at= on a pickup's line gives it")]
    [InlineData("", "at= on a pickup's line, aperture= there give it")]
    public void Listen_OfWhatIsAssumed_SaysWhereItIsWritten(string said, string told)
    {
        var text =
            Sample.Right.Replace("c=100p", $"c=100p {said}", StringComparison.Ordinal)
            + "load scale=640mm strings=guitar\n";

        var ran = Ran.Of(new TestHost(text), "listen", "-", "-o", folder["a.wav"], "--pluck", "100mm");

        Assert.EndsWith($"that is assumed: {told}\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Listen_ToARecording_KeepsItsRateAndLength()
    {
        var strings = Ran.Of("listen", Example, "-o", folder["in.wav"], "--rate", "44100", "--bits", "24");
        var ran = Ran.Of("listen", Example, "-o", folder["out.wav"], "--input", folder["in.wav"], "--bits", "24");

        Assert.Equal((0, 0), (strings.Code, ran.Code));
        Assert.Contains("44100 samples a second of 24 bits", ran.Output, StringComparison.Ordinal);
        Assert.Equal(new FileInfo(folder["in.wav"]).Length, new FileInfo(folder["out.wav"]).Length);
        Assert.NotEqual(File.ReadAllBytes(folder["in.wav"]), File.ReadAllBytes(folder["out.wav"]));
    }

    [Fact]
    public void Listen_OverItsOwnRecording_IsRefused()
    {
        Ran.Of("listen", Example, "-o", folder["in.wav"]);
        var before = File.ReadAllBytes(folder["in.wav"]);

        var ran = Ran.Of("listen", Example, "-o", folder["in.wav"], "--input", folder["in.wav"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("is the recording itself; name another file with -o", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(folder["in.wav"]));
    }

    [Theory]
    [InlineData("--at", "sel=nekc", "'sel' has no position 'nekc'; did you mean 'neck'?")]
    [InlineData("--sweep", "tnoe", "no control is called 'tnoe'; did you mean 'tone'?")]
    [InlineData("--what-if", "drak=22n", "nothing called 'drak' has a value; did you mean 'dark'?")]
    [InlineData("--peak", "3", "--peak takes a level from -60 to 0 dB, such as -12")]
    [InlineData("--peak", "loud", "--peak takes a level from -60 to 0 dB, such as -12")]
    [InlineData("--pluck", "130", "--pluck 130: ")]
    [InlineData("--pluck", "600mm", "strings are plucked at less than 577.3 mm from the bridge")]
    [InlineData("--sweep", "tone=0..10:25", "a sweep has 2 to 24 settings")]
    [InlineData("--input", "none.wav", "cannot read 'none.wav': there is no such file")]
    public void Listen_WrongOption_Exits2AndWritesNothing(string option, string value, string message)
    {
        var host = new TestHost { WorkingFolder = folder.Root };

        var ran = Ran.Of(host, "listen", Example, "-o", folder["a.wav"], option, value);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(message, ran.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Names);
    }

    [Theory]
    [InlineData("--views is every position; leave it or --at out", "--views", "positions", "--at", "sel=neck")]
    [InlineData("more than 24 passages", "--sweep", "sel", "--sweep", "tone=0..10:24")]
    [InlineData("more than 125 s at 96000 samples a second", "--sweep", "tone=0..10:24", "--rate", "96000")]
    public void Listen_TooMuchAtOnce_Exits2(string message, params string[] options)
    {
        var ran = Ran.Of(["listen", Example, "-o", folder["a.wav"], .. options]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(message, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Listen_WithoutATarget_SaysThatOneIsNeeded() =>
        Assert.Contains("--output", Ran.Of("listen", Example).Error, StringComparison.Ordinal);

    [Fact]
    public void Listen_WhatIsNoRecording_SaysWhy()
    {
        var input = folder.Put("in.wav", "not a sound");

        var ran = Ran.Of("listen", Example, "-o", folder["a.wav"], "--input", input);

        Assert.Equal(2, ran.Code);
        Assert.Contains($"cannot read '{input}': it is no WAV file", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Listen_APickupBehindTheNut_SaysWhereToMend()
    {
        var text = Sample.Right.Replace("c=100p", "c=100p at=700mm", StringComparison.Ordinal);

        var ran = Ran.Of(new TestHost(text), "listen", "-", "-o", folder["a.wav"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("'neck' lies 700 mm from the bridge", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Listen_CircuitThatIsSilent_IsSaidAndWritten()
    {
        var ran = Ran.Of("listen", Example, "-o", folder["a.wav"], "--at", "mute=down");

        Assert.Equal(0, ran.Code);
        Assert.Contains("all silence", ran.Output, StringComparison.Ordinal);
        Assert.Equal(0, File.ReadAllBytes(folder["a.wav"])[44..].Max());
    }
}
