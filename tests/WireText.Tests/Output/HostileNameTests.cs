using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Text;

namespace WireText.Tests.Output;

/// <summary>A name that is nothing but a name in wiring may be a formula in a sheet or a link on a page.</summary>
public class HostileNameTests
{
    [Theory]
    [InlineData("@SUM", "'@SUM")]
    [InlineData("+cmd|x", "'+cmd|x")]
    [InlineData("-dB", "'-dB")]
    [InlineData("-1dB", "'-1dB")]
    [InlineData("-3", "-3")]
    [InlineData("+1.5", "+1.5")]
    [InlineData("-", "-")]
    [InlineData("warm@5", "warm@5")]
    public void Csv_OfAPosition_IsNoFormula(string position, string cell)
    {
        var rows = PositionData.WriteCsv(StudyOf(position).Positions).Split('\n');

        Assert.StartsWith($"{cell},neck,", rows[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[text]", "\\[text]")]
    [InlineData("www.wiring.example", "www\\.wiring.example")]
    [InlineData("me@wiring.example", "me\\@wiring.example")]
    [InlineData("`code`", "\\`code\\`")]
    [InlineData("a|b", "a\\|b")]
    public void Markdown_OfAPosition_IsNoLink(string position, string cell)
    {
        var rows = PositionText.WriteMarkdown(StudyOf(position).Positions).Split('\n');

        Assert.StartsWith($"| {cell} | neck |", rows[2], StringComparison.Ordinal);
    }

    private static Study StudyOf(string position)
    {
        var compiled = Compilation.Of(
            new SourceText(
                "a.wiring",
                $"""
                pickup neck single-coil
                switch sel spdt
                jack out mono
                wire neck.hot to sel.A0 white
                wire sel.A1 to out.tip red
                wire neck.ground to out.sleeve black
                positions sel {position} other
                """
            ),
            NoSources.Instance
        );
        return compiled.Study ?? throw new InvalidOperationException("There is no study.");
    }
}
