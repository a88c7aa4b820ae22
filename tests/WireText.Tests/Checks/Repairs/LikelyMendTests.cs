using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Checks.Repairs;

/// <summary>A slip, and the mend that is told of it. Which it is: read off the right circuit by hand.</summary>
public class LikelyMendTests
{
    [Theory]
    [InlineData("one.wiring", "out.sleeve", "wire out.sleeve to ")]
    [InlineData("battery.wiring", "pre.common", "wire pre.common to ")]
    public void Check_AWireLeftOff_NamesTheOneThatIsMissing(string file, string lug, string line)
    {
        var text = File.ReadAllText(Repository.PathOf("docs", "slips", file));
        var without = string.Join(
            '\n',
            text.Split('\n')
                .Where(one =>
                    !one.StartsWith("wire", StringComparison.Ordinal)
                    || !one.Split(' ').Contains(lug, StringComparer.Ordinal)
                )
        );

        var finding = Assert.Single(
            Compilation
                .Of(new SourceText(file, without), NoSources.Instance)
                .Findings.Where(one => one.Severity >= Severity.Warning)
        );

        Assert.Equal("unconnected-lug", finding.Id);
        Assert.StartsWith("solder it: " + line, finding.Help, StringComparison.Ordinal);
    }

    /// <summary>The wire of an empty lug may be on the lug beside: it is moved, and no second one is told.</summary>
    [Theory]
    [InlineData(
        "two.wiring",
        "to sel.B1",
        "to sel.A1",
        "solder the wire from 'bridge.hot' to 'sel.B1', not to 'sel.A1'"
    )]
    [InlineData("one.wiring", "from tone.2", "from tone.1", "hang 'dark' on 'tone.2', not on 'tone.1'")]
    [InlineData(
        "five.wiring",
        "wire sel.A0 to vol.3",
        "wire sel.B0 to vol.3",
        "solder the wire from 'vol.3' to 'sel.A0', not to 'sel.B0'"
    )]
    public void Check_AWireOnTheLugBeside_NamesTheLugItBelongsOn(string file, string right, string wrong, string help)
    {
        var finding = FirstOf(file, Tidied(file).Replace(right, wrong, StringComparison.Ordinal));

        Assert.StartsWith(help, finding.Help, StringComparison.Ordinal);
        Assert.Equal([help], finding.Suggestions.Select(one => one.Words));
    }

    /// <summary>A bridge of solder is taken off; no wire is added to a circuit with one too many.</summary>
    [Fact]
    public void Check_ABridgeOfSolder_TellsToTakeItOut()
    {
        var finding = FirstOf("one.wiring", Tidied("one.wiring") + "wire tone.2 to tone.case bare\n");

        Assert.Equal("part-shorted", finding.Id);
        Assert.Equal("take out the wire from 'tone.2' to 'tone.case'", finding.Help);
    }

    /// <summary>Where the wires alone cannot tell which is meant, all are told, and the reader chooses.</summary>
    [Fact]
    public void Check_TwoHotsExchanged_TellsBothWays()
    {
        var text = Tidied("two.wiring")
            .Replace("neck.hot to sel.A1", "neck.hot to sel.B1", StringComparison.Ordinal)
            .Replace("bridge.hot to sel.B1", "bridge.hot to sel.A1", StringComparison.Ordinal);

        var finding = FirstOf("two.wiring", text);

        Assert.Equal(
            ["exchange the names 'neck' and 'bridge' of 'sel'", "exchange the wires on 'sel.B1' and 'sel.A1'"],
            finding.Suggestions.Select(one => one.Words)
        );
        Assert.StartsWith("do one of these, the likeliest first: 1. ", finding.Help, StringComparison.Ordinal);
        Assert.Empty(finding.Edits);
        Every.Item(finding.Suggestions, one => Assert.Empty(MistakesOf("two.wiring", TextEdit.Apply(text, one.Edits))));
    }

    /// <summary>Two slips that have nothing to do with each other: no one edit mends both, and none is told.</summary>
    [Fact]
    public void Check_TwoSlips_TellNoEdit()
    {
        var text = Tidied("five.wiring")
            .Replace("middle.hot to sel.A2", "middle.hot to sel.A0", StringComparison.Ordinal)
            .Replace("wire bridge.ground to tone.case black", "", StringComparison.Ordinal);

        Every.Item(MistakesOf("five.wiring", text), finding => Assert.Empty(finding.Suggestions));
    }

    /// <summary>Each trial is a check of the whole circuit: past the bound none is told.</summary>
    [Theory]
    [InlineData(1, "solder it: wire ")]
    [InlineData(400, "solder 'out.sleeve' to a lug")]
    public void Check_ALargeCircuit_TellsNonePastTheBound(int lugs, string help)
    {
        var most = Bounds.All.Single(bound => bound.Counted == "lugs looked at for a likely mend").Most;
        var text = Tidied("one.wiring").Replace("wire vol.case to out.sleeve black", "", StringComparison.Ordinal);

        var finding = FirstOf("one.wiring", text + (lugs > 1 ? StripOf(lugs) : ""));

        Assert.Equal(lugs > 1, lugs * (long)lugs > most);
        Assert.StartsWith(help, finding.Help, StringComparison.Ordinal);
    }

    private static Finding FirstOf(string file, string text) => MistakesOf(file, text)[0];

    private static List<Finding> MistakesOf(string file, string text) =>
        [
            .. Compilation
                .Of(new SourceText(file, text), NoSources.Instance)
                .Findings.Where(one => one.Severity >= Severity.Warning),
        ];

    /// <summary>A right circuit of ours with single blanks.</summary>
    private static string Tidied(string file) =>
        string.Concat(
            File.ReadLines(Repository.PathOf("docs", "slips", file))
                .Select(line => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries)) + "\n")
        );

    /// <summary>A tag strip with a resistor from each lug to the next, from the hot to ground: nothing is found of it.</summary>
    private static string StripOf(int lugs) =>
        "\ndefine tag strip\n    body box 190,10\n    lugs "
        + string.Join(' ', Enumerable.Range(1, lugs).Select(i => $"{i} {(2 * i) - 90},0"))
        + "\ntag row strip\n"
        + string.Concat(Enumerable.Range(1, lugs - 1).Select(i => $"resistor r{i} 1M from row.{i} to row.{i + 1}\n"))
        + $"wire row.1 to vol.3 white\nwire row.{lugs} to vol.case black\n";
}
