using WireText.Text;

namespace WireText.Tests;

/// <summary>A check of a long text takes work in proportion to it, whatever the text has many of.</summary>
public class CheckGrowthTests
{
    private const string Whole = """
        pickup neck single-coil
        pot vol 250k audio
        jack out mono
        wire neck.hot to vol.3 white
        wire neck.ground to vol.case black
        wire vol.1 to vol.case bare
        wire vol.2 to out.tip white
        wire vol.case to out.sleeve black

        """;

    [Fact]
    public void Check_AllowLinesThatDoNotFitWhatIsFound_WorkGrowsWithTheText() =>
        AssertIsLinear(100, i => $"resistor r{i} 10k\nallow part-unused at vol \"reason {i}\"\n");

    [Fact]
    public void Check_PartsOfModelsOfTheFile_WorkGrowsWithTheText() =>
        AssertIsLinear(
            200,
            i => $"define tag t{i}\n    body round 20\n    lugs 1 -5,0 2 5,0\n    joined 1+2\ntag x{i} t{i}\n"
        );

    [Fact]
    public void Check_PotsWithoutWires_WorkGrowsWithTheText() => AssertIsLinear(200, i => $"pot q{i} 250k audio\n");

    private static void AssertIsLinear(int count, Func<int, string> line) =>
        Growth.AssertIsLinear(
            count,
            many => Whole + string.Concat(Enumerable.Range(0, many).Select(line)),
            text => _ = Compilation.Of(new SourceText("many.wiring", text), NoSources.Instance).Report
        );
}
