using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Checks.Repairs;

/// <summary>A wire left off, and the wire that is told to be soldered. Which it is: read off the right circuit by hand.</summary>
public class MissingWireTests
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

    /// <summary>A throw without a wire may as well have it on the lug beside: no line is printed for it.</summary>
    [Fact]
    public void Check_AThrowWithoutAWire_NamesNone()
    {
        var text = File.ReadAllText(Repository.PathOf("docs", "slips", "two.wiring"))
            .Replace("sel.B1", "sel.A1", StringComparison.Ordinal);

        var finding = Compilation
            .Of(new SourceText("two.wiring", text), NoSources.Instance)
            .Findings.Single(one => one.Id == "unconnected-lug");

        Assert.StartsWith("solder 'sel.B1' to a lug", finding.Help, StringComparison.Ordinal);
    }

    /// <summary>Each net is a check of the whole circuit: past the bound none is tried.</summary>
    [Theory]
    [InlineData(false, "solder it: wire ")]
    [InlineData(true, "solder 'out.sleeve' to a lug")]
    public void Check_ALargeCircuit_NamesNonePastTheBound(bool isPast, string help)
    {
        var most = (int)Bounds.All.Single(bound => bound.Counted == "nets tried for a missing wire").Most;
        var text = File.ReadAllText(Repository.PathOf("docs", "slips", "one.wiring"))
            .Replace("wire    vol.case       to out.sleeve  black", "", StringComparison.Ordinal);
        var strip = isPast ? StripOf(most) : "";

        var finding = Compilation
            .Of(new SourceText("one.wiring", text + strip), NoSources.Instance)
            .Findings.First(one => one.Id == "unconnected-lug");

        Assert.StartsWith(help, finding.Help, StringComparison.Ordinal);
    }

    /// <summary>A tag strip with a resistor from each lug to the next, from the hot to ground: nothing is found of it.</summary>
    private static string StripOf(int lugs) =>
        "\ndefine tag strip\n    body box 190,10\n    lugs "
        + string.Join(' ', Enumerable.Range(1, lugs).Select(i => $"{i} {(2 * i) - 90},0"))
        + "\ntag row strip\n"
        + string.Concat(Enumerable.Range(1, lugs - 1).Select(i => $"resistor r{i} 1M from row.{i} to row.{i + 1}\n"))
        + $"wire row.1 to vol.3 white\nwire row.{lugs} to vol.case black\n";
}
