using System.Text;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks.Intent;

/// <summary>A claim that nobody could look at in full never passes for one that holds.</summary>
public class ExpectNotJudgedTests
{
    [Fact]
    public void Claim_OverTooManySituations_IsSaidToBeNotJudged()
    {
        // Five switches of twelve positions, each of which can change the load: 12^5 = 248,832 situations.
        var finding = Assert.Single(Check(Rotaries(5), "others=any: neck"));

        Assert.Equal(("expect-not-judged", Severity.Warning), (finding.Id, finding.Severity));
        Assert.Equal(
            "'neck' is not judged: 's0', 's1', 's2', 's3' and 's4' at any position make more than 65,536 states",
            finding.Message
        );
        Assert.StartsWith("name fewer controls as any", finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("s0=1 s1=1 others=any: neck")]
    [InlineData("rest: neck")]
    public void Claim_WithFewerControlsAtAny_IsJudged(string line) => Assert.Empty(Check(Rotaries(5), line));

    [Fact]
    public void Claim_ThatIsWrongInOneNamedState_IsStillRefuted() =>
        Assert.Equal("expect", Assert.Single(Check(Rotaries(5), "rest: silence")).Id);

    [Fact]
    public void BatteryClaim_OverMoreThan4096States_IsNotJudgedUnlessOneRefutesIt()
    {
        // 12^4 = 20,736 states. Nothing switches the battery: it is always drawn from.
        var text = Rotaries(4) + Battery;

        var finding = Assert.Single(Check(text, "others=any: battery on"));

        Assert.Equal("expect-not-judged", finding.Id);
        Assert.Contains("more than 4,096 states", finding.Message, StringComparison.Ordinal);
        Assert.Equal("expect", Assert.Single(Check(text, "others=any: battery off")).Id);
        Assert.Empty(Check(text, "s0=1 s1=1 others=any: battery on"));
    }

    private const string Battery = """
        battery b 9V
        resistor r 10k from b.plus to b.minus

        """;

    private static string Rotaries(int count)
    {
        var text = new StringBuilder();
        text.Append("pickup neck single-coil; jack out; neck.hot ~ out.tip; neck.ground ~ out.sleeve\n");
        for (var i = 0; i < count; i++)
        {
            text.Append(
                System.Globalization.CultureInfo.InvariantCulture,
                $"switch s{i} rotary-1x12; cap c{i} 10p from s{i}.A1 to out.sleeve; s{i}.A0 ~ out.tip\n"
            );
        }

        return text.ToString();
    }

    private static List<Finding> Check(string text, string line) =>
        [
            .. Checked
                .Report(Bench.Of(text + "expect " + line + "\n").Circuit)
                .Findings.Where(finding => finding.Id.StartsWith("expect", StringComparison.Ordinal)),
        ];
}
