using System.Text.RegularExpressions;
using WireText.Comparing;
using WireText.Output;
using WireText.Syntax;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Tests.Checks.Mutants;
using WireText.Tests.Electrical;
using WireText.Tests.Judging;
using WireText.Tests.Mods;
using WireText.Text;

namespace WireText.Tests.Comparing;

/// <summary>How two circuits differ. What is to be told of each pair was read off their texts by hand.</summary>
public partial class CircuitComparisonTests
{
    /// <summary>Mutants of an example that are tried, spread over all of them.</summary>
    private const int MostMutants = 50;

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Compare_WithItsOtherForms_IsTheSame(string name)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", name));
        var formatted = Formatter.Format(WiringParser.Parse(new SourceText("a.wiring", text)));

        Assert.True(Compare(text, text).IsSame);
        Assert.True(Compare(text, formatted).IsSame);
        Assert.True(Compare(text, Reordered(text)).IsSame);
        Assert.True(Compare(text, Turned(text)).IsSame);
    }

    /// <summary>Every part under another name: its place among the wires tells which it is.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Compare_WithEveryPartRenamed_IsTheSame(string name)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", name));
        var circuit = Bench.CompileText(text);
        var renamed = text;
        foreach (var part in circuit.Parts)
        {
            renamed = Regex.Replace(
                renamed,
                $@"(?<![\w.-]){Regex.Escape(part.Name)}(?![\w-])",
                $"x{part.Index}y",
                RegexOptions.None,
                TimeSpan.FromSeconds(5)
            );
        }

        var comparison = Compare(WithoutStates(text), WithoutStates(renamed));

        Assert.True(comparison.IsSame, ComparisonText.Write(comparison, null));
        Every.Item(
            PositionComparison.Of(comparison)!.Rows,
            row => Assert.Equal(row.Before.WhatIsHeard(comparison.After), row.After.WhatIsHeard(comparison.After))
        );
    }

    /// <summary>No slip of the iron is passed over, and the mod that is written makes it.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Compare_WithEachMutant_TellsItAndWritesItsMod(string name)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", name));
        var right = Bench.CompileText(text);
        var stock = new Stock(("right.wiring", text));
        var under = stock.Compile("base \"right.wiring\"\n").Resolved.Base!;
        var judge = new Judge(right);
        var mutants = WireMutants.Of(right).Where(one => WireMutants.CanBeWritten(right, one)).ToList();
        foreach (var mutant in mutants.Where((_, i) => i % ((mutants.Count / MostMutants) + 1) == 0))
        {
            var now = Compilation.Of(
                new SourceText("now.wiring", WireMutants.Written(right, mutant, text)),
                NoSources.Instance
            );

            // Two ends exchanged may make the wires that were there.
            var isSame = CircuitComparison.Of(right, now.Circuit!).IsSame;
            Assert.True(!isSame || judge.Compare(now.Circuit!) == Verdict.Equal, WireMutants.NameOf(right, mutant));

            var mod = ModText.Of(under, now.Resolved);
            var made = stock.Compile(mod.WriteOn("right.wiring"));
            Assert.Empty(mod.Left);
            Assert.DoesNotContain(made.Findings, one => one.Id is "not-on-base" or "still-expected");
            Assert.True(CircuitComparison.Of(now.Circuit!, made.Circuit!).IsSame, mod.WriteOn("right.wiring"));
        }
    }

    [Fact]
    public void Compare_WithAnotherDateInTheTitleBlock_IsTheSame_AndTheModSaysIt()
    {
        var stock = new Stock(("job.wiring", "about job \"1\"\nabout date \"May\"\n" + Stock.Text));
        var under = stock.Compile("base \"job.wiring\"\n");
        var now = stock.Compile("base \"job.wiring\"\nabout date \"June\"\n");

        var mod = ModText.Of(under.Resolved.Base!, now.Resolved);

        Assert.True(CircuitComparison.Of(under.Circuit!, now.Circuit!).IsSame);
        Assert.Equal("about date \"June\"", Assert.Single(mod.Lines));
        Assert.Empty(mod.Left);
    }

    /// <summary>What is expected at one of two jacks goes by itself, and a jack takes along what is expected there.</summary>
    [Theory]
    [InlineData("expect main: sel=neck: neck\n", "drop expect main: sel=neck")]
    [InlineData("expect sel=neck: neck\n", "drop expect sel=neck")]
    [InlineData(
        "jack   main    mono\n| to main.tip| to main.sleeve|expect main: sel=neck: neck\n|expect MAIN: rest: neck\n",
        "drop expect main: sel=neck|drop expect MAIN: rest|drop main"
    )]
    public void Compare_WithTwoJacks_WritesAModThatBringsTheOtherBack(string taken, string lines)
    {
        var stock = new Stock(("two.wiring", Stock.WithTwoJacks));
        var under = stock.Compile("base \"two.wiring\"\n");
        var text = taken
            .Split('|')
            .Aggregate(Stock.WithTwoJacks, (whole, part) => whole.Replace(part, "", StringComparison.Ordinal));
        var now = Compilation.Of(new SourceText("now.wiring", text), NoSources.Instance);

        var mod = ModText.Of(under.Resolved.Base!, now.Resolved);
        var made = stock.Compile(mod.WriteOn("two.wiring"));

        Assert.Superset(lines.Split('|').ToHashSet(), mod.Lines.ToHashSet());
        Assert.Empty(mod.Left);
        Assert.DoesNotContain(made.Findings, one => one.Id is "not-on-base" or "still-expected");
        Assert.True(CircuitComparison.Of(now.Circuit!, made.Circuit!).IsSame, mod.WriteOn("two.wiring"));
        Assert.Equal(Stock.ExpectedIn(now), Stock.ExpectedIn(made));
    }

    /// <summary>A pot that was measured is not taken out; one of another value is.</summary>
    [Theory]
    [InlineData("pot vol ? audio", "pot vol 500k audio measured 481k", true)]
    [InlineData("pot vol 500k audio", "pot vol 500k audio measured 481k", true)]
    [InlineData("pot vol 250k..500k taper=?", "pot vol 300k audio", true)]
    [InlineData("pot vol 200k..300k audio", "pot vol 500k audio", false)]
    [InlineData("pot vol ? audio", "pot vol 500k linear", false)]
    [InlineData("pot vol 250k audio", "pot vol 500k audio", false)]
    public void Compare_APartThatWasMeasured_LeavesItWhereItIs(string was, string now, bool isLearnt)
    {
        const string Rest = "\njack out mono\nwire vol.2 to out.tip red\nwire vol.1 to out.sleeve black\n";
        var (before, after) = (Bench.CompileText(was + Rest), Bench.CompileText(now + Rest));

        Assert.Equal(isLearnt, Assert.Single(CircuitComparison.Of(before, after).Changed).IsLearnt);
        Assert.Equal(isLearnt, WireText.Building.WorkOrder.Between(before, after).Steps.IsEmpty);
    }

    [Fact]
    public void Compare_AStockGuitarWithItsMod_TellsWhatIsToBeDone()
    {
        var now = new Stock().Compile(
            """
            base "stock.wiring"
            button mute momentary
            replace dark 22n paper-in-oil
            lift neck.hot
            wire neck.hot to sel.A1 green
            lift plate
            wire plate to vol.case black
            wire mute.1 to out.tip red
            wire mute.2 to out.sleeve black

            """
        );

        var told = ComparisonText.Write(CircuitComparison.Of(Bench.CompileText(Stock.Text), now.Circuit!), null);

        Assert.Equal(
            """
            parts in
              1. button mute momentary

            parts changed
              2. dark: 47n film → 22n paper-in-oil

            wires moved
              3. plate to tone.case black → plate to vol.case black

            wires exchanged
              4. neck.hot to sel.A1 white → neck.hot to sel.A1 green

            wires added
              5. mute.1 to out.tip red
              6. mute.2 to out.sleeve black


            """.ReplaceLineEndings("\n"),
            told
        );
    }

    [Fact]
    public void Compare_OfAMute_TellsThePositionsThatItChanges()
    {
        var now = new Stock().Compile(
            "base \"stock.wiring\"\nbutton mute momentary\nwire mute.1 to out.tip red\nwire mute.2 to out.sleeve black\n"
        );
        var comparison = CircuitComparison.Of(Bench.CompileText(Stock.Text), now.Circuit!);

        var told = ComparisonText.Write(comparison, PositionComparison.Of(comparison));

        Assert.Contains("mute=down\n", told, StringComparison.Ordinal);
        Assert.Contains("→ silence: tip and sleeve are joined", told, StringComparison.Ordinal);
        Assert.Contains("3 of ", told, StringComparison.Ordinal);
    }

    /// <summary>A wire of the second jack is lifted: what the first lets be heard is as it was, and the second is silent.</summary>
    [Fact]
    public void Compare_OfTwoJacks_LooksFromBoth()
    {
        const string Two = """
            pickup neck single-coil
            pickup bridge single-coil
            jack left
            jack right
            wire neck.hot to left.tip white
            wire bridge.hot to right.tip white
            wire neck.ground to left.sleeve black
            wire bridge.ground to right.sleeve black
            wire left.sleeve to right.sleeve black

            """;
        var comparison = Compare(Two, Two.Replace("wire bridge.hot to right.tip white", "", StringComparison.Ordinal));

        var told = ComparisonText.Write(comparison, PositionComparison.Of(comparison));

        Assert.Contains(
            "at 'right': every position\n  heard  bridge → open: the jack floats",
            told,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("at 'left'", told, StringComparison.Ordinal);
        Assert.EndsWith("1 of 2 positions do what they did\n", told, StringComparison.Ordinal);
    }

    /// <summary>A position that is called after a part goes by the part's new name.</summary>
    [Theory]
    [InlineData("neck neck-bridge bridge", "front front-bridge bridge", true)]
    [InlineData("neck neck-bridge bridge", "neck neck-bridge bridge", true)]
    [InlineData("neck neck-bridge bridge", "neck both bridge", false)]
    public void Compare_PositionsCalledAfterARenamedPart_AreTheSame(string before, string after, bool isSame)
    {
        const string Two = """
            pickup neck single-coil
            pickup bridge single-coil
            switch sel lever-3way
            jack out
            wire neck.hot to sel.A1 white
            wire bridge.hot to sel.A3 white
            wire sel.A0 to out.tip white
            wire neck.ground to out.sleeve black
            wire bridge.ground to out.sleeve black

            """;
        var renamed = Two.Replace("neck", "front", StringComparison.Ordinal);

        Assert.Equal(isSame, Compare($"{Two}positions sel {before}\n", $"{renamed}positions sel {after}\n").IsSame);
    }

    /// <summary>Two of a kind: the one whose wires are the same is the same one.</summary>
    [Fact]
    public void Compare_OneOfTwoTwinsRenamed_IsTheSame()
    {
        const string Two = """
            pickup neck single-coil
            pickup bridge single-coil
            switch sel lever-3way
            jack out
            wire neck.hot to sel.A1 white
            wire bridge.hot to sel.A3 white
            wire sel.A0 to out.tip white
            wire neck.ground to out.sleeve black
            wire bridge.ground to out.sleeve black

            """;

        Assert.True(Compare(Two, Two.Replace("bridge", "rear", StringComparison.Ordinal)).IsSame);
    }

    private static CircuitComparison Compare(string before, string after) =>
        CircuitComparison.Of(Bench.CompileText(before), Bench.CompileText(after));

    /// <summary>Statements in the opposite order, each with its rows.</summary>
    private static string Reordered(string text)
    {
        var blocks = new List<string>();
        foreach (var line in text.Split('\n'))
        {
            if (line.StartsWith(' ') && blocks.Count > 0)
            {
                blocks[^1] += "\n" + line;
            }
            else
            {
                blocks.Add(line);
            }
        }

        blocks.Reverse();
        return string.Join('\n', blocks) + "\n";
    }

    /// <summary>Each wire told from its other end.</summary>
    private static string Turned(string text) =>
        SimpleWire().Replace(text, match => $"wire {match.Groups["b"]} to {match.Groups["a"]} ");

    private static string WithoutStates(string text) =>
        string.Join(
            '\n',
            text.Split('\n')
                .Where(line =>
                    !line.StartsWith("expect", StringComparison.Ordinal)
                    && !line.StartsWith("positions", StringComparison.Ordinal)
                )
        );

    [GeneratedRegex(@"^wire +(?<a>\S+) +to +(?<b>\S+) +(?!to )", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex SimpleWire();
}
