using System.Text.Json.Nodes;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class CompareCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    private static string Stock => Repository.PathOf("examples", "mods", "stock.wiring");

    private static string Mod => Repository.PathOf("examples", "mods", "mute-and-capacitor.wiring");

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("text", "the same circuit\n")]
    [InlineData("markdown", "The same circuit.\n")]
    public void Compare_AFileWithItself_IsTheSame(string format, string said)
    {
        var ran = Ran.Of("compare", Stock, Stock, "--format", format);

        Assert.Equal((0, said, ""), (ran.Code, ran.Output, ran.Error));
    }

    [Fact]
    public void Compare_AModWithItsBase_SaysWhatItDoes()
    {
        var ran = Ran.Of("compare", Stock, Mod);

        Assert.Equal(1, ran.Code);
        Assert.Contains("parts in\n  1. button mute momentary\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("  2. dark: 100n film → 22n paper-in-oil", ran.Output, StringComparison.Ordinal);
        Assert.Contains("\nmute=down\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_AsJson_CanBeRead()
    {
        var json = JsonNode.Parse(Ran.Of("compare", Stock, Mod, "--format", "json").Output)!;

        Assert.False((bool)json["same"]!);
        Assert.Equal("button mute momentary", (string?)json["parts"]!["added"]![0]);
        Assert.Equal(["added", "added"], json["wires"]!.AsArray().Select(wire => (string?)wire!["change"]));
    }

    [Fact]
    public void Draw_AgainstTheBase_CountsAsTheListDoes()
    {
        var target = folder["change.svg"];

        var ran = Ran.Of("draw", Mod, "--against", Stock, "--effort", "quick", "-o", target);

        Assert.Equal((0, $"{target} is written"), (ran.Code, ran.Error.Trim().Split('\n')[^1]));
        var svg = File.ReadAllText(target);
        Assert.Contains("What changes against stock.wiring", svg, StringComparison.Ordinal);
        Assert.Contains("1. in: button mute momentary", svg, StringComparison.Ordinal);
        Assert.Contains("3. added: mute.1 to out.tip white", svg, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--trace", "vol.3")]
    [InlineData("--views", "positions")]
    [InlineData("--measure", null)]
    public void Draw_AgainstWithAnotherView_IsRefused(string option, string? value)
    {
        string[] arguments = ["draw", Mod, "--against", Stock, option, .. value is null ? [] : new[] { value }];

        var ran = Ran.Of([.. arguments, "-o", folder["out.svg"]]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("--against shows what changes", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["out.svg"]));
    }

    [Fact]
    public void Draw_OverTheEarlierWiring_IsRefused()
    {
        var old = folder.Put("old.wiring", File.ReadAllText(Stock));

        var ran = Ran.Of("draw", Mod, "--against", old, "--format", "svg", "-o", old);

        Assert.Equal(2, ran.Code);
        Assert.Equal(File.ReadAllText(Stock), File.ReadAllText(old));
    }

    [Fact]
    public void Draw_AgainstWhatCannotBeRead_IsRefused()
    {
        var ran = Ran.Of("draw", Mod, "--against", folder.Put("bad.wiring", "wire a to b\n"), "-o", folder["out.svg"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("cannot be compared: mend what is found first", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_Mod_WritesOneThatMakesTheOther()
    {
        var whole = folder["whole.wiring"];
        Ran.Of("flatten", Mod, "-o", whole);
        folder.Put("stock.wiring", File.ReadAllText(Stock));

        var ran = Ran.Of("compare", folder["stock.wiring"], whole, "--mod");
        var written = folder.Put("mod.wiring", ran.Output);

        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Assert.StartsWith(
            "base \"stock.wiring\"\n\nreplace dark 22n paper-in-oil\n",
            ran.Output,
            StringComparison.Ordinal
        );
        Assert.Equal(0, Ran.Of("compare", written, whole).Code);
    }

    [Fact]
    public void Compare_WhatCannotBeRead_IsRefused()
    {
        var ran = Ran.Of("compare", Stock, folder.Put("bad.wiring", "wire a to b\n"));

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains("cannot be compared: mend what is found first", ran.Error, StringComparison.Ordinal);
    }
}
