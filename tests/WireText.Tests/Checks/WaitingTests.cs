using System.Collections.Immutable;
using WireText.Checks;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>What is a note, allowed or not wanted hides nothing, and what waits for a mistake is named.</summary>
public class WaitingTests
{
    /// <summary>A switch with a centre that is dead, and a volume whose lug 1 has no ground.</summary>
    private const string DeadCentre = """
        pickup neck single-coil
        pickup bridge single-coil
        switch sel spdt-on-off-on
        pot vol 250k linear
        jack out mono
        neck.hot ~ sel.A1; bridge.hot ~ sel.A2; sel.A0 ~ vol.3; vol.2 ~ out.tip
        neck.ground ~ bridge.ground ~ vol.case ~ out.sleeve
        """;

    [Fact]
    public void WhatAMistakeMayExplain_IsNamedAsWaiting()
    {
        var report = Checked.Report(Bench.CompileText(Bench.Expand(DeadCentre)));

        Assert.Equal(["dead-position"], report.Findings.Select(finding => finding.Id));
        Assert.Equal(["volume-not-silent"], report.Waiting.ToArray());
    }

    [Fact]
    public void AnAllowedFinding_HidesNothing()
    {
        var report = Checked.Report(
            Bench.CompileText(Bench.Expand(DeadCentre) + "allow dead-position at sel \"meant\"\n")
        );

        Assert.Equal(["volume-not-silent"], report.Findings.Select(finding => finding.Id));
        Assert.Empty(report.Waiting);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(Severity.Note)]
    public void AFindingThatIsOffOrANote_HidesNothing(Severity? weight)
    {
        var circuit = Bench.CompileText(Bench.Expand(DeadCentre));
        var settings = new CheckSettings(ImmutableDictionary<string, Severity?>.Empty.Add("dead-position", weight));

        var report = Checker.Examine(
            circuit,
            WireText.Electrical.Studies.Study.Of(circuit),
            new CheckRequest(CheckList.Usual, settings)
        );

        Assert.Contains(report.Findings, finding => finding.Id == "volume-not-silent");
        Assert.Empty(report.Waiting);
    }
}
