using WireText.Circuits;
using WireText.Text;

namespace WireText.Tests.Circuits;

public class SurroundingsTests
{
    [Fact]
    public void Load_WithEveryKey_IsRead()
    {
        var result = Check("load cable=700p input=500k mains=60 temperature=15..30");

        Assert.Empty(result.Findings.Where(finding => finding.Severity == Severity.Error));
        Assert.Equal(new Surroundings(700e-12, 500e3, 60, 15, 30), result.Circuit!.Surroundings);
    }

    [Fact]
    public void Load_LeftOut_IsTheUsual() => Assert.Equal(Surroundings.Usual, Check("").Circuit!.Surroundings);

    [Fact]
    public void Load_WithOneTemperature_IsThatDay()
    {
        var day = Check("load temperature=35").Circuit!.Surroundings;

        Assert.Equal((35, 35), (day.CoolestCelsius, day.WarmestCelsius));
    }

    [Fact]
    public void Load_WithScaleAndStrings_IsRead()
    {
        var load = Check("load scale=864mm strings=bass").Circuit!.Surroundings;

        Assert.Equal(Surroundings.Usual with { ScaleMetres = 0.864, Strings = StringSet.Bass }, load);
    }

    [Theory]
    [InlineData("load cable=470", "bad-value")]
    [InlineData("load scale=648", "bad-value")]
    [InlineData("load strings=harp", "bad-value")]
    [InlineData("load mains=55", "bad-value")]
    [InlineData("load temperature=hot", "bad-value")]
    [InlineData("load temperature=30..15", "bad-value")]
    [InlineData("load cabel=470p", "unknown-key")]
    public void Load_WithSomethingWrong_SaysSo(string line, string id)
    {
        var found = Assert.Single(Check(line).Findings, finding => finding.Severity == Severity.Error);

        Assert.Equal(id, found.Id);
        Assert.NotNull(found.Help);
    }

    private static Compilation Check(string line) =>
        Compilation.Of(
            new SourceText(
                "load.wiring",
                $"pickup p single-coil\njack out\nwire p.hot to out.tip white\nwire p.ground to out.sleeve black\n{line}\n"
            ),
            NoSources.Instance
        );
}
