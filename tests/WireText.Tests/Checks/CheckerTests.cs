using WireText.Checks;
using WireText.Checks.Switching;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Testing;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks;

public class CheckerTests
{
    /// <summary>Two findings: a tone pot that nobody grounded, and a saddle.</summary>
    private const string TwoFloating = """
        metal saddle
        pickup neck single-coil
        pot tone 250k audio
        cap dark 22n from tone.1 to out.sleeve
        jack out
        neck.hot ~ out.tip; neck.ground ~ out.sleeve; tone.2 ~ out.tip
        """;

    [Fact]
    public void Run_WithoutAllowances_GivesFindingsInTheOrderOfTheText() =>
        Assert.Equal(["saddle", "tone.case"], Lugs(Checked.Findings(Circuit(TwoFloating))));

    [Theory]
    [InlineData("allow floating-ground at saddle \"plastic bridge\"", "tone.case")]
    [InlineData("allow floating-ground at tone.case \"plastic shaft\"", "saddle")]
    [InlineData("allow FLOATING-GROUND at Tone \"a part names all its lugs\"", "saddle")]
    public void Allow_AtALugOrPart_TakesOutThatFindingAlone(string line, string left) =>
        Assert.Equal([left], Lugs(Checked.Findings(Circuit($"{TwoFloating}\n{line}"))));

    [Fact]
    public void Allow_WithoutAPlace_TakesOutAllAndKeepsTheReason()
    {
        var report = Checked.Advised(Circuit($"{TwoFloating}\nallow floating-ground \"on the bench\""));

        Assert.Empty(report.Findings);
        Assert.Equal(["saddle", "tone.case"], Lugs(report.Allowed.Select(allowed => allowed.Finding)));
        Every.Item(report.Allowed, allowed => Assert.Equal("on the bench", allowed.Allowance.Reason));
    }

    [Theory]
    [InlineData("floating-gruond", "did you mean 'floating-ground'?")]
    [InlineData("nothing-like-it", "write the name that stands in brackets after the finding")]
    [InlineData("bad-value", "take this line out")]
    public void Allow_WhatNoCheckFinds_IsAnError(string id, string help)
    {
        var found = Checked
            .Findings(Circuit($"{TwoFloating}\nallow {id} \"why\""))
            .Where(finding => finding.Id == "unknown-check");

        Assert.Equal((Severity.Error, help), (found.Single().Severity, found.Single().Help));
    }

    [Theory]
    [InlineData("allow floating-ground at saddle \"plastic\"", "")]
    [InlineData("allow floating-ground \"plastic\"", "")]
    [InlineData("allow floating-ground at neck \"plastic\"", "no 'floating-ground' at 'neck'")]
    [InlineData("allow Wire-Twice \"plastic\"", "no 'wire-twice'")]
    [InlineData(
        "allow wire-twice \"a\"\nallow wire-twice at saddle \"b\"",
        "no 'wire-twice'|no 'wire-twice' at 'saddle'"
    )]
    [InlineData("allow floating-gruond \"no such check: said elsewhere\"", "")]
    public void Allow_WhatIsNotFound_IsAWarningAtTheLine(string lines, string said)
    {
        var found = Checked
            .Findings(Circuit($"{TwoFloating}\n{lines}"))
            .Where(finding => finding.Id == "allow-unused")
            .ToList();

        Assert.Equal(
            said.Split('|', StringSplitOptions.RemoveEmptyEntries),
            found.Select(finding => finding.Message.Split(": ")[1])
        );
        Assert.DoesNotContain(found, finding => finding.Severity != Severity.Warning);
        Assert.DoesNotContain(found, finding => !lines.Contains(finding.Location.Text, StringComparison.Ordinal));
    }

    /// <summary>A pickup whose hot lead is loose explains a refuted claim; where it is meant to be loose, it explains nothing.</summary>
    [Theory]
    [InlineData("", "unconnected-lug")]
    [InlineData("allow unconnected-lug at spare.hot \"not yet wired\"", "expect")]
    public void AllowedFinding_ExplainsNothingElsewhere(string line, string id)
    {
        var found = Checked.Findings(
            Circuit(
                $"""
                pickup neck single-coil dcr=6k
                pickup spare single-coil
                jack out
                neck.hot ~ out.tip; neck.ground ~ spare.ground ~ out.sleeve
                expect rest: reads 20k
                {line}
                """
            )
        );

        Assert.Equal(id, Assert.Single(found).Id);
    }

    [Fact]
    public void TwoLooseEnds_AreOneFindingThatJoinsThem()
    {
        var found = Checked.Findings(
            Circuit(
                """
                pickup neck single-coil
                pot vol 250k linear
                jack out
                neck.hot ~ vol.3; neck.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve
                """
            )
        );

        var loose = Assert.Single(found);
        Assert.Equal("lugs 'vol.2' and 'out.tip' are not connected", loose.Message);
        Assert.StartsWith("join the two loose ends: wire vol.2 to out.tip white", loose.Help, StringComparison.Ordinal);
    }

    /// <summary>A wire to the wrong lug leaves one loose and refutes a claim; the mend of the claim is that of both.</summary>
    [Fact]
    public void RefutedClaim_WhoseMendAFindingMarks_IsItsWitness()
    {
        var found = Checked.Findings(
            Circuit(
                """
                pickup neck single-coil
                pot vol 250k linear
                jack out
                neck.hot ~ vol.3; neck.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.3 ~ out.tip
                expect vol=0: silence
                expect vol=5: neck, reads 70k ±9%
                """
            )
        );

        var cause = Assert.Single(found);
        Assert.Equal("unconnected-lug", cause.Id);
        Assert.StartsWith("one edit makes every claim true", cause.Help, StringComparison.Ordinal);
        Assert.Contains(cause.Related, place => place.Message.StartsWith("refuted: ", StringComparison.Ordinal));
    }

    /// <summary>A volume wired backwards is told as that, claims or none; a refuted claim makes it an error.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("expect vol=0: silence")]
    [InlineData("expect vol=10: neck; expect vol=0: silence")]
    public void Claims_HideNoPlainFinding(string claims)
    {
        var found = Checked.Findings(
            Circuit(
                $"""
                pickup neck single-coil
                pot vol 250k linear
                jack out
                neck.hot ~ vol.1; neck.ground ~ vol.case; vol.3 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
                {claims}
                """
            )
        );

        Assert.Contains(found, finding => finding.Id is "backwards-control");
    }

    /// <summary>The wire is not said to be there twice while tip and sleeve are exchanged: mended, the line is needed.</summary>
    [Fact]
    public void Allow_WhatIsLeftOutAsAShadow_IsNotUnused()
    {
        const string shadowed = """
            pickup neck single-coil
            pot vol 250k audio
            jack out
            neck.hot ~ vol.3; neck.ground ~ vol.case; vol.1 ~ vol.case; vol.2 ~ out.tip; vol.case ~ out.sleeve
            out.tip ~ out.sleeve
            """;
        var all = CheckList.All.SelectMany(check => check.Find(Checked.Context(Circuit(shadowed)))).ToList();
        var standing = Checked.Findings(Circuit(shadowed)).Select(finding => finding.Id).ToList();
        var shadow = all.Select(finding => finding.Id).First(id => !standing.Contains(id));

        Assert.DoesNotContain(
            Checked.Findings(Circuit($"{shadowed}\nallow {shadow} \"why\"")),
            finding => finding.Id == "allow-unused"
        );
    }

    [Fact]
    public void Allow_WhoseCheckWasNotRun_IsNotUnused()
    {
        var circuit = Circuit($"{TwoFloating}\nallow wire-twice \"why\"");

        var without = Checked.Report(circuit, CheckList.All.RemoveAll(check => check.Description.Id == "wire-twice"));

        Assert.DoesNotContain(without.Findings, finding => finding.Id == "allow-unused");
        Assert.Contains(Checked.Report(circuit).Findings, finding => finding.Id == "allow-unused");
    }

    /// <summary>Without a jack nothing is heard, so nothing could be found.</summary>
    [Fact]
    public void Allow_InACircuitThatChecksCannotLookThrough_IsNotUnused() =>
        Assert.DoesNotContain(
            Checked.Findings(Circuit("pot vol 250k audio\nallow out-of-phase \"on the bench\"")),
            finding => finding.Id == "allow-unused"
        );

    [Fact]
    public void Silences_OfEachCheck_NameChecksThatComeLaterInTheList()
    {
        var order = CheckList.All.Select(check => check.Description.Id).ToList();

        foreach (var description in CheckList.All.Select(check => check.Description))
        {
            foreach (var silence in description.Silences.Where(silence => silence.Check is not null))
            {
                Assert.True(
                    order.IndexOf(silence.Check!) > order.IndexOf(description.Id),
                    $"{description.Id} silences {silence.Check}, which must come after it"
                );
            }
        }
    }

    [Fact]
    public void TipAndSleeveSwapped_WithASecondWire_LeavesTheWireAloneStanding()
    {
        var found = Checked.Findings(
            Circuit(
                """
                pickup neck single-coil
                pot vol 250k audio
                jack out
                neck.hot ~ vol.3; neck.ground ~ vol.case; vol.1 ~ vol.case; vol.2 ~ out.sleeve; vol.case ~ out.tip
                vol.1 ~ vol.case
                """
            )
        );

        Assert.Equal(
            ["tip-sleeve-swapped", "wire-twice"],
            found.Select(finding => finding.Id).Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData("jack out")]
    [InlineData("pot vol 250k audio")]
    [InlineData("pickup neck single-coil\nneck.hot ~ neck.ground")]
    [InlineData("jack out; out.tip ~ out.sleeve")]
    [InlineData("jack out; out.tip ~ out.tip")]
    [InlineData("jack a; jack b stereo; a.tip ~ b.ring; b.sleeve ~ a.tip")]
    [InlineData("switch s rotary-2x6; s.A0 ~ s.B0 ~ s.A1 ~ s.B6; jack out; out.tip ~ s.A2; out.sleeve ~ s.B2")]
    public void Run_OfACircuitThatIsHardlyOne_EndsWithoutAnError(string text) => Checked.Findings(Circuit(text));

    [Fact]
    public void Run_OfThousandsOfPartsAndContacts_Ends()
    {
        // A chain of pots, each with a floating case and a pull that bridges it: every situation counts.
        var lines = Enumerable
            .Range(0, 1_000)
            .Select(i => $"pot p{i} push-pull 250k audio; p{i}.3 ~ p{i}.A0; p{i}.2 ~ p{i}.A2; p{i}.2 ~ p{i + 1}.3");
        var text =
            $"pickup neck single-coil; jack out; pot p1000 250k audio; {string.Join("; ", lines)}; neck.hot ~ p0.3; neck.ground ~ out.sleeve; p1000.2 ~ out.tip";

        var found = Checked.Findings(Circuit(text));

        Assert.Contains(found, finding => finding.Id == "too-many-situations");
        Assert.Equal(1_001, found.Count(finding => finding.Id == "floating-ground"));
    }

    /// <summary>A pot across the signal is a track of two sections: with one pot past the bound no position is worked out, and it is said.</summary>
    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void Run_OfMorePotsThanAreWorkedOut_SaysSo(int beyond, bool isTold)
    {
        var most = Bounds.All.Single(bound => bound.Counted == "branches in the way of the signal").Most;
        var pots = Enumerable
            .Range(0, (int)(most / 2) - 1 + beyond)
            .Select(i => $"pot p{i} 250k linear; p{i}.3 ~ out.tip; p{i}.1 ~ out.sleeve");
        var text =
            $"pickup neck single-coil; jack out; {string.Join("; ", pots)}; neck.hot ~ out.tip; neck.ground ~ out.sleeve";

        var study = Study.Of(Circuit(text))!;

        Assert.Equal(isTold, study.Situations.TooManyLive is not null);
        Assert.Equal(isTold, study.Outcomes is null);
        Assert.Equal(
            isTold ? 1 : 0,
            new TooManySituations()
                .Find(new StudyContext(study.Circuit, study))
                .Count(finding => finding.Message.Contains("elements", StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void Run_OfMoreDialsThanAreTurned_SaysSo(int beyond, bool isTold)
    {
        var most = Bounds.All.Single(bound => bound.Counted == "dials whose work is told").Most;
        var pots = Enumerable
            .Range(0, (int)most + beyond)
            .Select(i => $"pot p{i} 1M linear; p{i}.3 ~ out.tip; p{i}.1 ~ out.sleeve; p{i}.case ~ out.sleeve");
        var text =
            $"pickup neck single-coil; jack out; {string.Join("; ", pots)}; neck.hot ~ out.tip; neck.ground ~ out.sleeve";

        var study = Study.Of(Circuit(text))!;

        Assert.Equal(!isTold, study.Roles!.IsComplete);
        Assert.Equal(isTold ? 1 : 0, new TooManySituations().Find(new StudyContext(study.Circuit, study)).Count());
    }

    private static IEnumerable<string> Lugs(IEnumerable<Finding> findings) =>
        findings.Select(finding => finding.Subjects[0].Name);

    private static Circuit Circuit(string text) => Bench.CompileText(Bench.Expand(text));
}
