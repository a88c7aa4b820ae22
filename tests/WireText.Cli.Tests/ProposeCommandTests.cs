using System.Text.Json.Nodes;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class ProposeCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    private static string Wish => Repository.PathOf("examples", "propose", "wish.wiring");

    private static string TooLittle => Repository.PathOf("examples", "propose", "too-little.wiring");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Propose_AWish_SaysTheWiresAndThatFewerCannotDo()
    {
        var ran = Ran.Of("propose", Wish);

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith("wire ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("\nproven: no harness has fewer", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Propose_WhatCannotBe_Exits1()
    {
        var ran = Ran.Of("propose", TooLittle);

        Assert.Equal(1, ran.Code);
        Assert.StartsWith("impossible: ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("would do: ", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("jack out mono\n", "nothing is to be found")]
    [InlineData("switch sel spdt\nfind sel\n", "no output jack")]
    [InlineData("switch sel spdt\njack out mono\nfind sel\n", "nothing is claimed")]
    public void Propose_WhereNothingCanBeLookedFor_Exits2(string text, string why)
    {
        var ran = Ran.Of("propose", folder.Put("a.wiring", text));

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Propose_Write_PutsTheWiresInPlaceOfFind()
    {
        var file = folder.Put("guitar.wiring", File.ReadAllText(Wish));

        Assert.Equal(0, Ran.Of("propose", file, "--write").Code);

        Assert.DoesNotContain("\nfind ", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Equal(0, Ran.Of("check", file, "--strict").Code);
        Assert.Equal(0, Ran.Of("format", file, "--check").Code);
        Assert.Equal(2, Ran.Of("propose", file).Code);
    }

    [Fact]
    public void Propose_WriteWhereNothingIsFound_LeavesTheFile()
    {
        var file = folder.Put("guitar.wiring", File.ReadAllText(TooLittle));

        Assert.Equal(1, Ran.Of("propose", file, "--write").Code);

        Assert.Equal(File.ReadAllText(TooLittle), File.ReadAllText(file));
    }

    [Fact]
    public void Propose_StandardInput_IsNotWritten() => Assert.Equal(2, Ran.Of("propose", "-", "--write").Code);

    [Fact]
    public void Propose_AsJson_CanBeRead()
    {
        var found = JsonNode.Parse(Ran.Of("propose", Wish, "--format", "json").Output)!;
        var impossible = JsonNode.Parse(Ran.Of("propose", TooLittle, "--format", "json").Output)!;

        Assert.Equal(("found", 7, 7), ((string?)found["outcome"], (int)found["joints"]!, (int)found["atLeast"]!));
        Assert.Equal(5, found["lines"]!.AsArray().Count);
        Assert.Equal("impossible", (string?)impossible["outcome"]);
        Assert.NotEmpty(impossible["excluding"]!.AsArray());
        Assert.NotEmpty(impossible["wouldDo"]!.AsArray());
    }

    [Fact]
    public void Propose_MostJoints_LooksForNoMore()
    {
        Assert.Equal(1, Ran.Of("propose", Wish, "--most-joints", "6").Code);
        Assert.Equal(2, Ran.Of("propose", Wish, "--most-joints", "0").Code);
    }

    /// <summary>What a mod leaves open is found on the wires of its base, and written into the mod.</summary>
    [Fact]
    public void Propose_AModWithAWish_FindsItsWires()
    {
        folder.Put("stock.wiring", Sample.ToBeFound.Replace("find    sel\n", "", StringComparison.Ordinal));
        var mod = folder.Put("mod.wiring", "base \"stock.wiring\"\nfind sel\n");

        Assert.Equal(0, Ran.Of("propose", mod, "--write").Code);

        Assert.StartsWith(
            "base \"stock.wiring\"\n# wires that were found\nwire ",
            File.ReadAllText(mod),
            StringComparison.Ordinal
        );
        Assert.Equal(0, Ran.Of("check", mod, "--strict").Code);
    }

    /// <summary>A mod that drops the switch drops the wish with it; one that stands on the file keeps it.</summary>
    [Fact]
    public void Flatten_OfAModOnAWish_KeepsFindWhereTheSwitchStays()
    {
        folder.Put("stock.wiring", Sample.ToBeFound);
        var keeps = folder.Put("keeps.wiring", "base \"stock.wiring\"\nmetal plate\nwire plate to out.sleeve black\n");
        var drops = folder.Put(
            "drops.wiring",
            "base \"stock.wiring\"\ndrop expect sel=1\ndrop expect sel=2\ndrop sel\nwire neck.hot to out.tip white\n"
        );

        Assert.Contains("find", Ran.Of("flatten", keeps).Output, StringComparison.Ordinal);
        Assert.DoesNotContain("find", Ran.Of("flatten", drops).Output, StringComparison.Ordinal);
    }
}
