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
        Assert.Contains("parts in\n  button mute momentary\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("  dark: 100n film → 22n paper-in-oil", ran.Output, StringComparison.Ordinal);
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
