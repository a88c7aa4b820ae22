using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Tests.Electrical;

namespace WireText.Tests.Checks.Repairs;

/// <summary>Edits as the lines that say them, for every kind of line that joins lugs.</summary>
public class LineEditTests
{
    private const string Text = """
        pickup neck  humbucker-4
        pickup mid   single-coil
        switch sel   lever-3way
        pot    vol   500k audio
        cap    dark  22n  "in a  sleeve # 2"   from vol.2 to vol.case   # the tone
        splice link  neck.n-finish   neck.s-finish sleeved "under # the cover"
        jack   out   mono
        positions sel   a b  c
        wire   neck.n-start  to sel.A1 to sel.A2  to sel.A3   red   length=12cm # three throws
        cable  mid.hot to sel.B1 white  braid  mid.ground to vol.case
        wire   neck.s-start  to vol.case green
        wire   sel.a0        to vol.3 blue

        """;

    [Fact]
    public void RunOverALug_Moved_StaysOneLine() =>
        Holds(
            new MoveEnd(Place("neck.n-start--sel.A1", "sel.A1--sel.A2"), Lug("vol.3")),
            "wire neck.n-start to sel.A1 to sel.A2 to sel.A3 red length=12cm",
            "wire neck.n-start to vol.3 to sel.A2 to sel.A3 red length=12cm"
        );

    [Fact]
    public void OneStretchOfARun_MovedAway_BreaksItInTwo() =>
        Holds(
            new MoveEnd(Place("sel.A1--sel.A2"), Lug("vol.3")),
            "wire neck.n-start to sel.A1 to sel.A2 to sel.A3 red length=12cm",
            "wire neck.n-start to sel.A1 to vol.3 red length=12cm",
            "wire sel.A2 to sel.A3 red length=12cm"
        );

    [Fact]
    public void StretchInARun_TakenOut_LeavesBothSides() =>
        Holds(
            new RemoveWire(Wire("sel.A1--sel.A2")),
            "wire neck.n-start to sel.A1 to sel.A2 to sel.A3 red length=12cm",
            "wire neck.n-start to sel.A1 red length=12cm",
            "wire sel.A2 to sel.A3 red length=12cm"
        );

    [Fact]
    public void WholeLine_TakenOut_IsRemoved() =>
        Holds(new RemoveWire(Wire("neck.s-start--vol.case")), "wire neck.s-start to vol.case green");

    [Fact]
    public void CoreOfACable_Moved_KeepsItsBraid() =>
        Holds(
            new MoveEnd(Place("mid.hot--sel.B1"), Lug("sel.B2")),
            "cable mid.hot to sel.B1 white braid mid.ground to vol.case",
            "cable mid.hot to sel.B2 white braid mid.ground to vol.case"
        );

    [Fact]
    public void CoreAndBraid_Exchanged_AreBothOnTheLine() =>
        Holds(
            new ExchangeEnds(
                new LugOnLine([new WireEnd(Wire("mid.hot--sel.B1"), IsFrom: true)]),
                new LugOnLine([new WireEnd(Wire("mid.ground--vol.case"), IsFrom: true)])
            ),
            "cable mid.hot to sel.B1 white braid mid.ground to vol.case",
            "cable mid.ground to sel.B1 white braid mid.hot to vol.case"
        );

    /// <summary>Blanks and marks in quotes are the author's.</summary>
    [Fact]
    public void PartOnItsLeads_Moved_KeepsItsRemark() =>
        Holds(
            new MoveEnd(
                Place(Circuit.Wires.Single(w => w.Kind == WireKind.PartLead && w.To == Lug("vol.2")).Id),
                Lug("vol.1")
            ),
            "cap dark 22n \"in a  sleeve # 2\" from vol.2 to vol.case",
            "cap dark 22n \"in a  sleeve # 2\" from vol.1 to vol.case"
        );

    [Fact]
    public void LeadOfASplice_Exchanged_ChangesBothLines()
    {
        var edit = new ExchangeEnds(
            new LugOnLine([new WireEnd(Wire("neck.s-finish--link"), IsFrom: true)]),
            new LugOnLine([new WireEnd(Wire("neck.s-start--vol.case"), IsFrom: true)])
        );

        var lines = LineEdit.Of(Circuit, edit);

        Assert.Equal(
            [
                "splice link neck.n-finish neck.s-start sleeved \"under # the cover\"",
                "wire neck.s-finish to vol.case green",
            ],
            lines.SelectMany(line => line.New)
        );
    }

    [Fact]
    public void Positions_ListedTheOtherWayRound() =>
        Holds(new RenamePositions(0, [2, 1, 0]), "positions sel a b c", "positions sel c b a");

    [Fact]
    public void WireAdded_IsBlackToGroundAndWhiteElsewhere()
    {
        Assert.Equal(
            [new LineEdit(null, ["wire sel.B0 to vol.3 white"])],
            LineEdit.Of(Circuit, new AddWire(Lug("sel.B0"), Lug("vol.3"))),
            (a, b) => a.Old == b.Old && a.New.SequenceEqual(b.New)
        );
        Assert.Contains(
            "wire vol.case to out.sleeve black",
            LineEdit.Of(Circuit, new AddWire(Lug("vol.case"), Lug("out.sleeve")))[0].New
        );
    }

    private static Circuit Circuit { get; } = Bench.CompileText(Text);

    private static int Lug(string name) => Circuit.FindLug(name)!.Index;

    private static int Wire(string id) => Circuit.Wires.Single(wire => wire.Id == id).Index;

    /// <summary>The second end of a wire, with the first end of another that goes on from there.</summary>
    private static LugOnLine Place(params string[] ids) =>
        new([
            new WireEnd(Wire(ids[0]), IsFrom: false),
            .. ids.Skip(1).Select(id => new WireEnd(Wire(id), IsFrom: true)),
        ]);

    private static void Holds(CircuitEdit edit, string old, params string[] now)
    {
        var line = Assert.Single(LineEdit.Of(Circuit, edit));

        Assert.Equal(old, line.Old);
        Assert.Equal(now, line.New);
    }
}
