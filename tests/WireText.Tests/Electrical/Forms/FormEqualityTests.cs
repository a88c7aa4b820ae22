using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Tests.Electrical.Forms;

public class FormEqualityTests
{
    [Theory]
    [InlineData(11, "", "neck parallel bridge", true)]
    [InlineData(11, "", "bridge parallel neck", true)]
    [InlineData(11, "", "reversed neck parallel reversed bridge", true)]
    [InlineData(11, "", "neck series bridge", false)]
    [InlineData(11, "", "reversed neck parallel bridge", false)]
    [InlineData(11, "", "neck", false)]
    [InlineData(12, "", "neck parallel reversed bridge", true)]
    [InlineData(12, "", "reversed neck parallel bridge", true)]
    [InlineData(12, "", "neck parallel bridge", false)]
    [InlineData(15, "cut=1", "hb", true)]
    [InlineData(15, "cut=1", "hb.n series hb.s", true)]
    [InlineData(15, "cut=1", "hb.n", false)]
    [InlineData(15, "cut=2", "hb.n", true)]
    [InlineData(17, "", "hb", true)]
    [InlineData(22, "", "hb parallel hx", false)]
    [InlineData(22, "", "(hb.s parallel hx.s) series (hx.n parallel hb.n)", true)]
    [InlineData(23, "", "a series b", false)]
    [InlineData(25, "", "neck", true)]
    [InlineData(25, "", "neck through lo", true)]
    [InlineData(25, "", "neck through vol", false)]
    [InlineData(31, "", "neck", true)]
    [InlineData(31, "", "neck series dummy", true)]
    [InlineData(31, "", "neck parallel dummy", false)]
    [InlineData(32, "mix=5", "neck through mix parallel bridge", true)]
    [InlineData(32, "mix=5", "neck parallel bridge", true)]
    [InlineData(32, "mix=0", "bridge", true)]
    [InlineData(32, "mix=0", "neck parallel bridge", false)]
    public void Claim_AboutACircuit_HoldsOrNot(int number, string settings, string claim, bool holds)
    {
        var bench = RightVerdicts.Of(number).At(settings);

        Assert.Equal(holds, FormEquality.Matches(bench.Form(), ClaimOf(bench.Circuit, claim)));
    }

    /// <summary>Parallel coils behind a dial lie beside a third pickup: one parallel group, in whatever way it is said.</summary>
    [Theory]
    [InlineData("neck.n parallel neck.s parallel bridge", true)]
    [InlineData("(neck.n parallel neck.s) parallel bridge", true)]
    [InlineData("neck.n through mix parallel neck.s through mix parallel bridge", true)]
    [InlineData("(neck.n parallel neck.s) through mix parallel bridge", true)]
    [InlineData("neck.n through mix parallel neck.s parallel bridge through mix", false)]
    [InlineData("neck parallel bridge", false)]
    [InlineData("neck.n parallel reversed neck.s parallel bridge", false)]
    public void Claim_AboutAParallelGroupBehindADial_HoldsOrNot(string claim, bool holds)
    {
        var bench = Bench
            .Of(
                """
                pickup neck humbucker-4; pickup bridge single-coil; pot mix 100k linear; jack out
                neck.n-start ~ neck.s-finish ~ mix.3; neck.n-finish ~ neck.s-start ~ out.sleeve; neck.shield ~ out.sleeve
                mix.2 ~ bridge.hot ~ out.tip; bridge.ground ~ mix.case ~ out.sleeve
                """
            )
            .At("mix=5");

        Assert.Equal(holds, FormEquality.Matches(bench.Form(), ClaimOf(bench.Circuit, claim)));
    }

    [Theory]
    [InlineData(12, "", "neck parallel reversed bridge")]
    [InlineData(15, "cut=2", "hb.n")]
    [InlineData(25, "", "neck through lo")]
    [InlineData(22, "", "(hb.n parallel hx.n) series (hb.s parallel hx.s)")]
    public void AsClaim_OfAForm_IsAClaimThatHolds(int number, string settings, string expected)
    {
        var bench = RightVerdicts.Of(number).At(settings);
        var claim = FormText.AsClaim(bench.Circuit, bench.Form());

        Assert.Equal(expected, claim);
        Assert.True(FormEquality.Matches(bench.Form(), ClaimOf(bench.Circuit, claim!)));
    }

    private static FormNode ClaimOf(Circuit circuit, string claim)
    {
        var tree = WiringParser.Parse(new SourceText("claim", $"expect rest: {claim}\n"));
        var coils = tree.Statements.OfType<ExpectSyntax>().Single().Claims.OfType<CoilsClaimSyntax>().Single();
        return ClaimReader.Read(circuit, coils.Coils);
    }
}
