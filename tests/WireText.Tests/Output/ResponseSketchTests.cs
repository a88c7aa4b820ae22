using WireText.Circuits;
using WireText.Electrical.Responses;
using WireText.Output;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Output;

public class ResponseSketchTests
{
    private const string Pickup = """
        pickup neck single-coil dcr=6k l=2.4H c=100p
        jack out mono
        wire neck.hot to out.tip white
        wire neck.ground to out.sleeve black

        """;

    /// <summary>
    /// 2.4 H with 100 pF and a cable of 470 pF resonate at 1/(2π√(LC)) = 4303 Hz: log(4303/20)/log(1000) of 66 columns is 51.3.
    /// At 20 Hz 6 kΩ before 1 MΩ take 0.05 dB.
    /// </summary>
    [Fact]
    public void Sketch_OfAPickup_RisesToItsResonance()
    {
        var rows = RowsOf(Sketch(Pickup));

        Assert.InRange(rows[0].Curve.IndexOf('a'), 50, 51);
        Assert.InRange(rows[0].Curve.LastIndexOf('a'), 51, 52);
        Assert.Equal("0", rows.Single(row => row.Curve.StartsWith('a')).Level);
    }

    [Theory]
    [InlineData(Pickup, 1)]
    [InlineData(Pickup + "cap dark 22n from out.tip to out.sleeve\n", 1)]
    [InlineData(Pickup, 24)]
    public void Sketch_FitsOnATerminal(string text, int curves)
    {
        var lines = Sketch(text, curves).TrimEnd('\n').Split('\n');

        Assert.True(lines.Length <= 19 + curves, $"{lines.Length} lines");
        Every.Item(lines, line => Assert.True(line.Length <= 80, line));
        Assert.Equal(curves, lines.Count(line => line.Contains("peak", StringComparison.Ordinal)));
    }

    [Fact]
    public void Sketch_OfTwoCurves_HasALetterEach()
    {
        var rows = RowsOf(Sketch(Pickup, 2));

        Assert.Contains(rows, row => row.Curve.Contains('a', StringComparison.Ordinal));
        Assert.Contains(rows, row => row.Curve.Contains('b', StringComparison.Ordinal));
    }

    [Fact]
    public void Sketch_OfSilence_IsEmpty() => Assert.Empty(Sketch(Pickup + "wire out.tip to out.sleeve red\n"));

    /// <param name="curves">One as it is wired, the others with ever longer cables.</param>
    private static string Sketch(string text, int curves = 1)
    {
        var compiled = Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance);
        var study = compiled.Study ?? throw new InvalidOperationException("There is no study.");
        var changes = Enumerable
            .Range(1, curves - 1)
            .Select(i => CircuitChange.Read(study.Circuit, $"cable={i}n").Value)
            .OfType<CircuitChange>();
        return ResponseSketch.Draw(
            ResponseStudy.Of(study, [State.Rest(study.Circuit)], [], [.. changes])
                ?? throw new InvalidOperationException("There are too many curves.")
        );
    }

    private static List<(string Level, string Curve)> RowsOf(string sketch) =>
        [
            .. Every
                .Of(sketch.Split('\n').Where(line => line.Contains('|', StringComparison.Ordinal)))
                .Select(line => line.Split('|'))
                .Select(halves => (halves[0].Trim(), halves[1])),
        ];
}
