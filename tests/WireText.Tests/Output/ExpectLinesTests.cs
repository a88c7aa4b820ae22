using WireText.Checks.Intent;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Checks;
using WireText.Tests.Electrical;

namespace WireText.Tests.Output;

public class ExpectLinesTests
{
    public static TheoryData<string> Examples => Rows.Of(Repository.Examples);

    public static TheoryData<int> Numbers => Rows.Of(Enumerable.Range(1, RightVerdicts.Count));

    /// <summary>What pins present behaviour holds of it: pasted, it is read and proven.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Lines_PastedBelowAnExample_AllHold(string path) => AssertHold(File.ReadAllText(path));

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Lines_PastedBelowAWorkedCircuit_AllHold(int number) => AssertHold(RightVerdicts.TextWith(number, ""));

    [Fact]
    public void Lines_OfTheSmallestGuitar_PinRestAndWhatItsVolumeDoes()
    {
        var lines = LinesOf(File.ReadAllText(Repository.PathOf("examples", "1-one-pickup.wiring"))).Split('\n');

        Assert.StartsWith("expect  rest:  bridge, reads 6.9k, resonates ", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("expect  vol=5:  bridge, ", lines[1], StringComparison.Ordinal);
        Assert.Equal("expect  vol=0:  silence, reads 0R", lines[2]);
    }

    private static void AssertHold(string text)
    {
        var lines = LinesOf(text);
        var circuit = Bench.CompileText(text + "\n" + lines);

        Assert.NotEmpty(lines);
        var before = Bench.CompileText(text).Expectations.Length;
        Assert.Equal(before + lines.Count(c => c == '\n'), circuit.Expectations.Length);
        Assert.Empty(Checked.Report(circuit, [new Expect()]).Findings.Select(f => f.Message));
    }

    private static string LinesOf(string text)
    {
        return ExpectLines.Write(Study.Of(new Bench(Bench.CompileText(text)).Network));
    }
}
