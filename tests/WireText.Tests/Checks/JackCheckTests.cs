using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Testing;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>What the checks say of circuits with two jacks: right ones, and ones with a slip at one of the two.</summary>
public class JackCheckTests
{
    private const string Apart = TwoJackCircuits.Apart;
    private const string Direct = TwoJackCircuits.Direct;

    public static TheoryData<string> Right => Rows.Of(TwoJackCircuits.All);

    [Theory]
    [MemberData(nameof(Right))]
    public void Check_ARightCircuitOfTwoJacks_FindsNothing(string circuit) =>
        Assert.Equal([], Mistakes(circuit).Select(Said));

    /// <param name="taken">A wire, a part or more of the right circuit.</param>
    /// <param name="given">What the slip makes of it.</param>
    [Theory]
    [InlineData(Apart, "vol-bridge.2 ~ second.tip", "", "unconnected-lug", "second.tip")]
    [InlineData(Apart, "vol-bridge.case ~ second.sleeve", "", "unconnected-lug", "second.sleeve")]
    [InlineData(Apart, "vol-neck.2 ~ main.tip", "", "unconnected-lug", "main.tip")]
    [InlineData(
        Apart,
        "vol-bridge.2 ~ second.tip; bridge.ground ~ vol-bridge.case; vol-bridge.1 ~ vol-bridge.case; vol-bridge.case ~ vol-neck.case; vol-neck.case ~ main.sleeve; vol-bridge.case ~ second.sleeve",
        "vol-bridge.2 ~ second.sleeve; bridge.ground ~ vol-bridge.case; vol-bridge.1 ~ vol-bridge.case; vol-bridge.case ~ vol-neck.case; vol-neck.case ~ main.sleeve; vol-bridge.case ~ second.tip",
        "tip-sleeve-swapped",
        "second.tip"
    )]
    [InlineData(
        Apart,
        "vol-bridge.2 ~ second.tip",
        "vol-bridge.2 ~ second.tip; second.tip ~ second.sleeve",
        "shorted-output",
        "'second'"
    )]
    [InlineData(Apart, "bridge.hot ~ vol-bridge.3", "bridge.hot ~ vol-neck.3", "no-sound", "'second'")]
    [InlineData(Apart, "neck.hot ~ vol-neck.3", "neck.hot ~ vol-bridge.3", "no-sound", "'main'")]
    [InlineData(Apart, "bridge.hot ~ vol-bridge.3", "bridge.hot ~ saddle", "coil-shorted", "'bridge'")]
    [InlineData(
        Apart,
        "bridge.hot ~ vol-bridge.3; vol-bridge.2 ~ second.tip; bridge.ground ~ vol-bridge.case; vol-bridge.1 ~ vol-bridge.case",
        "bridge.hot ~ vol-bridge.1; vol-bridge.2 ~ second.tip; bridge.ground ~ vol-bridge.case; vol-bridge.3 ~ vol-bridge.case",
        "backwards-control",
        "at 'second': 'vol-bridge' works backwards"
    )]
    [InlineData(
        TwoJackCircuits.Shared,
        "tuner.2 ~ second.tip; neck.ground ~ stage.case; stage.1 ~ stage.case; tuner.1 ~ tuner.case",
        "tuner.2 ~ second.tip; neck.ground ~ stage.case; stage.1 ~ stage.case",
        "volume-not-silent",
        "at 'second': 'tuner' does not silence at 0"
    )]
    [InlineData(
        TwoJackCircuits.MutedTogether,
        "hush.B2 ~ second.sleeve",
        "hush.B1 ~ second.sleeve",
        "mute-at-rest",
        "at 'second': 'hush' silences where it rests"
    )]
    [InlineData(
        TwoJackCircuits.Routed,
        "expect second: way=left: open",
        "",
        "dead-position",
        "at 'second': nothing is heard at way=left: the jack floats"
    )]
    [InlineData(
        TwoJackCircuits.Routed,
        "way.A2 ~ second.tip",
        "way.A2 ~ main.tip; second.tip ~ second.sleeve",
        "shorted-output",
        "'second'"
    )]
    public void Check_OneSlipAtAJack_IsFoundThere(string right, string taken, string given, string id, string word)
    {
        Assert.Contains(taken, right, StringComparison.Ordinal);
        var found = Mistakes(right.Replace(taken, given, StringComparison.Ordinal));

        Assert.True(
            found.Any(finding => finding.Id == id && finding.Message.Contains(word, StringComparison.Ordinal)),
            string.Join('\n', found.Select(Said).DefaultIfEmpty("nothing is found"))
        );
    }

    [Fact]
    public void Check_WhatIsSoAtBothJacks_IsToldOnceWithoutTheirNames()
    {
        var text = TwoJackCircuits.Shared + "; switch cut spdt; cut.A0 ~ stage.3; cut.A2 ~ stage.case";

        var shorted = Assert.Single(Mistakes(text), finding => finding.Id == "mute-upstream");

        Assert.StartsWith("'cut' shorts the signal before the volume", shorted.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_APickupThatTheSecondJackHears_IsNotLost() =>
        Assert.DoesNotContain(
            Mistakes(Apart),
            finding => finding.Id is "never-heard" or "not-judged" or "inert-control"
        );

    [Fact]
    public void Check_APickupThatNoJackHears_IsLost()
    {
        var text = Apart + "; pickup middle single-coil; middle.hot ~ vol-neck.case; middle.ground ~ saddle";

        Assert.Contains(
            Checked.Report(Bench.CompileText(Bench.Expand(text))).Findings,
            finding => finding.Message.Contains("middle", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Behaviour_ThatDiffersAtTheSecondJackAlone_IsNotEqual()
    {
        var circuit = CircuitOf(Direct);
        var moved = CircuitOf(Direct.Replace("sel.A2 ~ second.tip", "sel.A1 ~ second.tip", StringComparison.Ordinal));

        Assert.True(Behaviour.IsEqual(circuit, CircuitOf(Direct)));
        Assert.False(Behaviour.IsEqual(circuit, moved));
        Assert.True(
            Behaviour.IsEqual(
                circuit with
                {
                    Outputs = [circuit.Outputs[0]],
                },
                moved with
                {
                    Outputs = [moved.Outputs[0]],
                }
            )
        );
    }

    /// <summary>Other names for the positions would make the claim at the first jack true, and leave the wrong pickup at the second.</summary>
    [Fact]
    public void Repair_OfTwoClaims_MendsBothJacks()
    {
        var exchanged = Direct.Replace(
            "neck.hot ~ sel.A1; bridge.hot ~ sel.A2",
            "neck.hot ~ sel.A2; bridge.hot ~ sel.A1",
            StringComparison.Ordinal
        );

        var found = Mistakes(exchanged + "; expect main: sel=neck: neck; expect second: sel=any: bridge");

        var help = Assert.Single(found, finding => finding.Severity == Severity.Error).Help!;
        Assert.Contains("wire neck.hot to sel.A1", help, StringComparison.Ordinal);
        Assert.Contains("wire bridge.hot to sel.A2", help, StringComparison.Ordinal);
        Assert.DoesNotContain("positions sel", help, StringComparison.Ordinal);
    }

    [Fact]
    public void Fix_OfAClaimAtTheSecondJack_LeavesNothingAtEither()
    {
        var text =
            Bench.Expand(Direct.Replace("sel.A2 ~ second.tip", "sel.A1 ~ second.tip", StringComparison.Ordinal))
            + "expect second: sel=any: bridge\nexpect main: sel=neck: neck\nexpect main: sel=bridge: bridge\n";

        var mended = Mender.Mend(Compilation.Of(new SourceText("bench.wiring", text), NoSources.Instance));

        Assert.Contains(mended.Mended, finding => finding.Id == "expect");
        Assert.DoesNotContain(mended.Left.Findings, finding => finding.Severity >= Severity.Warning);
        Assert.Contains("wire sel.A2 to second.tip", mended.Source.Content, StringComparison.Ordinal);
    }

    private static Circuit CircuitOf(string text) => Bench.CompileText(Bench.Expand(text));

    private static List<Finding> Mistakes(string text) =>
        [.. Checked.Findings(CircuitOf(text)).Where(finding => finding.Severity >= Severity.Warning)];

    private static string Said(Finding finding) => $"{finding.Id}: {finding.Message}";
}
