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
}
