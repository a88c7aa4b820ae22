using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Testing;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks.Repairs;

/// <summary>Small circuits with one thing wrong that only the author's claims tell.</summary>
public class RepairSearchTests
{
    /// <summary>A neck and a bridge on a lever, right but for what a test changes.</summary>
    private const string Lever = """
        pickup neck   single-coil wind=ccw magnet=south
        pickup bridge single-coil wind=cw  magnet=north
        switch sel    lever-3way
        pot    vol    250k audio
        jack   out    mono
        positions sel bridge both neck   # from the bridge to the neck
        wire   bridge.hot    to sel.A1 to sel.A2  yellow   # pole A
        wire   neck.hot      to sel.B3 to sel.B2  white
        wire   sel.A0        to sel.B0 to vol.3   red
        wire   vol.2         to out.tip           blue
        wire   neck.ground   to vol.case          black
        wire   bridge.ground to vol.case          black
        wire   vol.1         to vol.case          bare
        wire   vol.case      to out.sleeve        black
        expect sel=bridge: bridge
        expect sel=both:   neck parallel bridge, hum-cancelling
        expect sel=neck:   neck

        """;

    [Fact]
    public void RightCircuit_HasNoFindingAndNoSearch()
    {
        Assert.DoesNotContain(Check(Lever).Findings, finding => finding.Severity > Severity.Right);
        Assert.Null(Search(Bench.CompileText(Lever)).Run());
    }

    [Fact]
    public void PositionsInTheWrongOrder_AreExchanged()
    {
        var help = HelpFor("bridge both neck", "neck both bridge");

        Assert.StartsWith(
            """
            one of these edits makes every claim true:
            1. exchange the names 'neck' and 'bridge' of 'sel'
                 replace  positions sel neck both bridge  (line 6)
                 with     positions sel bridge both neck
            2. 
            """,
            help,
            StringComparison.Ordinal
        );
    }

    /// <summary>Five positions listed from the wrong end: no two of them exchanged mend it.</summary>
    [Fact]
    public void PositionsFromTheWrongEnd_AreListedTheOtherWayRound()
    {
        var text = File.ReadAllText(Repository.PathOf("examples", "4-three-pickups-5way.wiring"));
        var wrong = text.Replace(
            "bridge bridge-middle middle middle-neck neck",
            "neck middle-neck middle bridge-middle bridge",
            StringComparison.Ordinal
        );

        Assert.Contains(
            """
            list the positions of 'sel' in the opposite order
            """,
            HelpFor(wrong),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void WireOnTheWrongThrow_IsMovedBackUnlessTwoNamesAreMeant()
    {
        Assert.Equal(
            """
            one of these edits makes every claim true:
            1. exchange the names 'both' and 'neck' of 'sel'
                 replace  positions sel bridge both neck  (line 6)
                 with     positions sel bridge neck both
            2. solder the wire from 'sel.A1' to 'sel.A2', not to 'sel.A3'
                 replace  wire bridge.hot to sel.A1 to sel.A3 yellow  (line 7)
                 with     wire bridge.hot to sel.A1 to sel.A2 yellow
            or if this is what it is meant to do, write: neck
            """,
            HelpFor("sel.A1 to sel.A2", "sel.A1 to sel.A3")
        );
    }

    /// <summary>A slip at a lug in the middle of a run moves two ends of wire, and is one word on its line.</summary>
    [Fact]
    public void RunOverTheWrongLug_IsTakenOverTheRightOne()
    {
        Assert.Contains(
            """
            take the run of wire over 'sel.A1', not over 'sel.A3'
                 replace  wire bridge.hot to sel.A3 to sel.A2 yellow  (line 7)
                 with     wire bridge.hot to sel.A1 to sel.A2 yellow
            """.ReplaceLineEndings("\n").Replace("     ", "  ", StringComparison.Ordinal),
            HelpFor("sel.A1 to sel.A2", "sel.A3 to sel.A2").Replace("     ", "  ", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
    }

    /// <summary>Either pickup turned round brings both in phase; which of the two was meant, no claim says.</summary>
    [Fact]
    public void PickupTurnedRound_HasTheLeadsOfEitherExchanged()
    {
        var wrong = Lever
            .Replace("bridge.hot    to sel", "bridge.ground to sel", StringComparison.Ordinal)
            .Replace("bridge.ground to vol", "bridge.hot    to vol", StringComparison.Ordinal);

        Assert.Equal(
            """
            one of these edits makes every claim true:
            1. exchange the leads 'neck.hot' and 'neck.ground'
                 replace  wire neck.hot to sel.B3 to sel.B2 white  (line 8)
                 with     wire neck.ground to sel.B3 to sel.B2 white
                 replace  wire neck.ground to vol.case black  (line 11)
                 with     wire neck.hot to vol.case black
            2. exchange the leads 'bridge.ground' and 'bridge.hot'
                 replace  wire bridge.ground to sel.A1 to sel.A2 yellow  (line 7)
                 with     wire bridge.hot to sel.A1 to sel.A2 yellow
                 replace  wire bridge.hot to vol.case black  (line 12)
                 with     wire bridge.ground to vol.case black
            or if this is what it is meant to do, write: neck parallel reversed bridge
            """,
            HelpFor(wrong)
        );
    }

    [Fact]
    public void MissingWire_IsAdded()
    {
        Assert.Equal(
            """
            one edit makes every claim true: add a wire from 'sel.A1' to 'sel.A2'
              add      wire sel.A1 to sel.A2 white  (below line 14)
            or if this is what it is meant to do, write: neck
            """,
            HelpFor("bridge.hot    to sel.A1 to sel.A2", "bridge.hot    to sel.A1")
        );
    }

    [Fact]
    public void WireTooMany_IsTakenOut()
    {
        Assert.Contains(
            "take out the wire from 'sel.A1' to 'sel.B3'",
            HelpFor(Lever + "wire sel.A1 to sel.B3 grey\n"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void TwoMistakesApart_HaveNoRepair()
    {
        var wrong = Lever
            .Replace("sel.A1 to sel.A2", "sel.A1 to sel.A3", StringComparison.Ordinal)
            .Replace("sel.B3 to sel.B2", "sel.B3 to sel.B1", StringComparison.Ordinal);

        Assert.Equal(
            "mend first what is found at line 3, or if this is what it is meant to do, write: neck parallel bridge",
            HelpFor(wrong)
        );
    }

    /// <summary>A ground lead on the hot: the error that stands has the wire to move, and the claims are its witnesses.</summary>
    [Fact]
    public void GroundLeadOnTheHot_IsToldWithTheWireToMove()
    {
        var wrong = Lever.Replace("neck.ground   to vol.case", "neck.ground   to vol.3   ", StringComparison.Ordinal);

        var found = Check(wrong).Findings.Where(finding => finding.Severity == Severity.Error).ToList();

        Assert.Contains(
            found.SelectMany(finding => PrintedRepair.ReadAll(finding.Help ?? "")),
            repair => repair.Lines.Exists(line => line.New.Contains("wire neck.ground to vol.case black"))
        );
    }

    /// <summary>A warning elsewhere keeps nobody from looking for the wire, and stays.</summary>
    [Fact]
    public void MistakeBesideAWarning_HasItsRepair()
    {
        var wrong =
            Lever.Replace("sel.A1 to sel.A2", "sel.A1 to sel.A3", StringComparison.Ordinal) + "pot spare 250k linear\n";

        var found = Check(wrong).Findings;

        Assert.Contains(found, finding => finding.Id == "part-unused");
        Assert.Contains(found, finding => PrintedRepair.ReadAll(finding.Help ?? "").Count > 0);
    }

    /// <summary>The rest was named, so it goes with its name; what is not named in a claim rests there.</summary>
    [Fact]
    public void RestByName_MovesWithTheName()
    {
        var text = Lever.Replace("bridge both neck ", "neck both bridge ", StringComparison.Ordinal);
        var wrong = text + "rest sel=neck\nexpect rest: neck\n";
        var repairs = PrintedRepair.ReadAll(HelpFor(wrong));

        Assert.DoesNotContain(Check(repairs[0].ApplyTo(wrong)).Findings, finding => finding.Severity > Severity.Right);
    }

    [Fact]
    public void ExpectationAllowed_IsNotSearchedFor()
    {
        var wrong = Lever.Replace("sel.A1 to sel.A2", "sel.A1 to sel.A3", StringComparison.Ordinal);
        var report = Checked.Advised(Bench.CompileText(wrong + "allow expect \"to be seen on the bench\"\n"));

        Assert.Equal(
            "mend the wires, or if this is what it is meant to do, write: neck",
            Assert.Single(report.Allowed).Finding.Help
        );
    }

    /// <summary>No one wire of a hundred channels makes two of them be heard in series and no other.</summary>
    [Theory]
    [InlineData(600)]
    [InlineData(1_200)]
    public void Search_OfAGrownCircuit_EndsAtItsBound(int wires)
    {
        var circuit = Bench.CompileText(GrownWiring.Of(wires) + "expect rest: p1 series p2\n");

        var result = Search(circuit).Run();

        Assert.NotNull(result);
        Assert.False(result.IsComplete);
        Assert.Empty(result.Repairs);
        Assert.InRange(result.Tested, 100, RepairSearch.Bound);
    }

    [Fact]
    public void Search_ThatFindsManyAnswers_StopsAfterOneTooMany()
    {
        var wrong = Lever.Replace("sel.A1 to sel.A2", "sel.A1 to sel.A3", StringComparison.Ordinal);
        var claimless =
            wrong.Split("expect")[0].Replace("bridge both neck ", "1 2 3 ", StringComparison.Ordinal)
            + "expect sel=2: neck parallel bridge\n";

        var result = Search(Bench.CompileText(claimless)).Run();

        Assert.Equal(RepairSearch.MostShown + 1, result?.Repairs.Length);
        Assert.StartsWith("no single wire explains it: mend the wires", HelpFor(claimless), StringComparison.Ordinal);
    }

    private static RepairSearch Search(Circuit circuit) => new(circuit, Study.Of(circuit)!, [], (_, _) => true);

    private static string HelpFor(string right, string wrong)
    {
        Assert.Contains(right, Lever, StringComparison.Ordinal);
        return HelpFor(Lever.Replace(right, wrong, StringComparison.Ordinal));
    }

    private static string HelpFor(string text) =>
        Assert.Single(Check(text).Findings, finding => finding.Id == "expect").Help!;

    private static Compilation Check(string text) =>
        Compilation.Of(new SourceText("lever.wiring", text), NoSources.Instance);
}
