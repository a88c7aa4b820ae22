using WireText.Checks.Intent;
using WireText.Circuits.Binding;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks.Intent;

/// <summary>What is expected at one jack of two.</summary>
public class JackClaimTests
{
    private const string TwoJacks = TwoJackCircuits.Direct;

    [Theory]
    [InlineData("main: sel=neck: neck")]
    [InlineData("main: sel=bridge: bridge")]
    [InlineData("second: sel=any: bridge")]
    [InlineData("MAIN: rest: neck")]
    [InlineData("sel=neck: neck")] // the first jack is meant
    [InlineData("second: sel=neck: bridge, reads 7.3k ±1%")] // the pot is not on it
    [InlineData("second: vol=0 sel=bridge: bridge")] // the pot shorts its own jack alone
    [InlineData("main: vol=0 sel=neck: silence")]
    [InlineData("second: vol=0 sel=neck: bridge")]
    public void Claim_TrueOfItsJack_Holds(string line) => Assert.Empty(Refuted($"expect {line}"));

    [Theory]
    [InlineData("second: sel=neck: neck", "'neck' is expected at 'second' at sel=neck, but there is: bridge")]
    [InlineData("main: sel=neck: bridge", "'bridge' is expected at 'main' at sel=neck, but there is: neck")]
    [InlineData("sel=neck: bridge", "'bridge' is expected at 'main' at sel=neck, but there is: neck")]
    [InlineData("second: rest: silence", "'silence' is expected at 'second' at rest, but there is: bridge")]
    public void Claim_FalseAtItsJack_IsRefutedThere(string line, string message) =>
        Assert.Equal([message], Refuted($"expect {line}").Select(finding => finding.Message));

    [Fact]
    public void Claims_OfTwoJacks_ExcludeNothing() =>
        Assert.Empty(
            new ExpectConflict().Find(
                Checked.Context(
                    Bench.CompileText(
                        Bench.Expand(TwoJacks + "; expect main: sel=neck: neck; expect second: sel=neck: bridge")
                    )
                )
            )
        );

    [Fact]
    public void Claims_OfOneJack_ExcludeEachOtherAsEver() =>
        Assert.Single(
            new ExpectConflict().Find(
                Checked.Context(
                    Bench.CompileText(
                        Bench.Expand(TwoJacks + "; expect main: sel=neck: neck; expect sel=neck: silence")
                    )
                )
            )
        );

    [Theory]
    [InlineData("secnd", "did you mean 'second'? the jacks are main and second")]
    [InlineData("aux", "the jacks are main and second")]
    [InlineData("vol", "the jacks are main and second")]
    public void Claim_OfAnUnknownJack_SaysWhichThereAre(string jack, string help)
    {
        var text = Bench.Expand(TwoJacks) + $"expect {jack}: rest: neck\n";

        var found = Binder.Bind(WiringParser.Parse(new SourceText("test.wiring", text)), NoSources.Instance).Findings;

        var finding = Assert.Single(found);
        Assert.Equal(("unknown-part", $"no output jack is named '{jack}'"), (finding.Id, finding.Message));
        Assert.Equal(help, finding.Help);
        Assert.Equal(jack, finding.Location.Text);
    }

    [Theory]
    [InlineData(TwoJackCircuits.Apart)]
    [InlineData(TwoJackCircuits.Direct)]
    public void Lines_OfTwoJacks_NameThemAndAreConfirmed(string circuit)
    {
        var text = Bench.Expand(circuit);
        var lines = ExpectLines
            .Write(Study.Of(Bench.CompileText(text))!)
            .Split('\n', StringSplitOptions.RemoveEmptyEntries);

        var pinned = Bench.CompileText(text + string.Join('\n', lines) + "\n");
        var study = Study.Of(pinned)!;

        Assert.Contains(lines, line => line.StartsWith("expect  main: ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("expect  second: ", StringComparison.Ordinal));
        Assert.Equal(lines.Length, pinned.Expectations.Length);
        Every.Item(pinned.Expectations, line => Assert.True(study.JudgeOf(line).Holds(line, mayNameTraces: false)));
    }

    private static IEnumerable<Finding> Refuted(string lines) =>
        Checked
            .Report(Bench.CompileText(Bench.Expand($"{TwoJacks}; {lines}")), [new Expect()])
            .Findings.Where(finding => finding.Id == Expect.Id);
}
