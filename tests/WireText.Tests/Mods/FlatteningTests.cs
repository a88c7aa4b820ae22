using WireText.Mods;
using WireText.Text;

namespace WireText.Tests.Mods;

/// <summary>A mod written out: the same circuit in one file, with the comments that still apply.</summary>
public class FlatteningTests
{
    private const string Mod = """
        base "stock.wiring"
        circuit "With a mute"
        # what the customer asked for
        button mute momentary   # by the jack
        replace dark 22n film
        lift neck.hot
        wire neck.hot to sel.A1 green
        wire mute.1 to out.tip red
        wire mute.2 to out.sleeve black
        drop plate

        """;

    [Fact]
    public void Flatten_AMod_IsTheSameCircuit()
    {
        var mod = new Stock().Compile(Mod);

        var flat = Compilation.Of(new SourceText("flat.wiring", TextOf(mod)), NoSources.Instance);

        Assert.Empty(flat.Findings.Where(one => one.Id.StartsWith("not-on", StringComparison.Ordinal)));
        Assert.Equal(Said(mod), Said(flat));
        Assert.Equal(mod.Circuit!.Title, flat.Circuit!.Title);
        Assert.Equal(mod.Circuit.Expectations.Length, flat.Circuit.Expectations.Length);
    }

    [Fact]
    public void Flatten_AMod_KeepsTheCommentsThatApply()
    {
        var text = TextOf(new Stock().Compile(Mod));

        Assert.Contains("# the one by the bridge", text, StringComparison.Ordinal);
        Assert.Contains("# what the customer asked for", text, StringComparison.Ordinal);
        Assert.Contains("# by the jack", text, StringComparison.Ordinal);
        Assert.DoesNotContain("base", text, StringComparison.Ordinal);
        Assert.DoesNotContain("plate", text, StringComparison.Ordinal);
    }

    /// <summary>What was found of a part that is dropped goes with it; the rest is kept, that of the base first.</summary>
    [Fact]
    public void Flatten_WhatWasFound_Stays()
    {
        var text = TextOf(
            new Stock().Compile(Mod + "found worked\nfound sel=1: reads 6.1k\nfound vol.3 to vol.case: reads 245k\n")
        );

        Assert.Contains("found   worked\n", text, StringComparison.Ordinal);
        Assert.Contains("found   sel=1:              reads 6.1k\n", text, StringComparison.Ordinal);
        Assert.Contains("found   vol.3 to vol.case:  reads 245k\n", text, StringComparison.Ordinal);
    }

    /// <summary>A comment over lines that all went speaks of nothing.</summary>
    [Fact]
    public void Flatten_LinesThatAllGo_TakeTheirCommentWithThem()
    {
        var text = TextOf(new Stock().Compile("base \"stock.wiring\"\ndrop vol\ndrop tone\ndrop plate\nlift vol.2\n"));

        Assert.DoesNotContain("# ground", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Flatten_AFileThatStandsAlone_IsItself() =>
        Assert.Equal(Stock.Text, TextOf(new Stock().Compile(Stock.Text)));

    /// <summary>What the base includes is looked for beside the base.</summary>
    [Fact]
    public void Flatten_ABaseInAFolder_KeepsWhatItIncludes()
    {
        var files = new Stock(
            (
                "old/stock.wiring",
                "include \"tags.wiring\"\nmetal plate\njack out mono\nwire out.sleeve to plate black\n"
            ),
            ("old/tags.wiring", "define tag two\n    body round 9\n    lugs 1 0,0 2 3,0\n    joined 1+2\n")
        );

        Assert.Contains(
            "include \"old/tags.wiring\"",
            TextOf(files.Compile("base \"old/stock.wiring\"\n")),
            StringComparison.Ordinal
        );
    }

    private static string TextOf(Compilation compiled) => Flattening.TextOf(compiled.Tree, compiled.Resolved);

    private static IEnumerable<string> Said(Compilation compiled) =>
        compiled
            .Circuit!.Wires.Select(wire => $"{wire.Id} {wire.Colour?.Name}")
            .Concat(compiled.Circuit.Parts.Select(part => $"{part.Kind} {part.Name} {part.ValueLabel}"))
            .Order(StringComparer.Ordinal);
}
