using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing.Faces;

/// <summary>A tone capacitor lies on the back of its pot, one lead on a lug, the other on the case: common practice.</summary>
public class CaseSeatTests
{
    private const string Tone = """
        circuit "tone"
        pickup neck single-coil
        pot    tone 250k audio
        jack   out  mono
        wire   neck.hot    to tone.1 to out.tip white
        wire   neck.ground to tone.case to out.sleeve black

        """;

    private const string Capacitor = "cap dark 47n film from tone.2 to tone.case\n";

    [Theory]
    [InlineData(Capacitor)]
    [InlineData("cap dark 47n film from tone.case to tone.2\n")]
    [InlineData("cap dark 47n film from tone.3 to tone.case\n")]
    [InlineData(Capacitor + "place tone at 100,80 turned 90\n")]
    [InlineData(Capacitor + "place tone at 100,80 turned 180\n")]
    public void Capacitor_BetweenALugAndTheCase_LiesOnThePot(string text)
    {
        var drawn = Draw(Tone + text);
        var (pot, cap) = (PartOf(drawn, "tone"), PartOf(drawn, "dark"));
        var body = Assert.IsType<Outline.Rectangle>(cap.Part.Body[0]).Box;

        Every.Item(
            new[] { new Point(body.X, body.Y), new Point(body.Right, body.Bottom) },
            corner => Assert.True(Apart(cap.OnPage(corner), pot.At) < 12, $"{corner} is off the case")
        );
        Assert.Empty(drawn.Layout!.Unrouted);
        Assert.Empty(Drawings.MeasureOf(drawn).Faults);
    }

    [Theory]
    [InlineData("push-pull 250k audio", 0)]
    [InlineData("mini 250k audio", 0)]
    [InlineData("no-load 250k audio", 1)]
    public void Capacitor_OnAPotWithoutRoomForIt_StandsBesideIt(string model, int seated) =>
        Assert.Equal(
            seated,
            SeatsIn(Tone.Replace("tone 250k audio", $"tone {model}", StringComparison.Ordinal) + Capacitor)
        );

    // On its case the pot carries the black wires, those of the plates and the capacitor's lead.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(3, 1)]
    [InlineData(4, 0)]
    [InlineData(8, 0)]
    public void Capacitor_OnAPotWithManyJoints_LeavesThemTheirRoom(int plates, int seated)
    {
        var more = Enumerable.Range(1, plates).Select(i => $"metal plate{i}\nwire plate{i} to tone.case black\n");
        var text = Tone + Capacitor + string.Concat(more);

        Assert.Equal(seated, SeatsIn(text));
        Assert.Empty(Drawings.MeasureOf(Draw(text)).Faults);
    }

    [Fact]
    public void SecondCapacitor_OnThePot_FindsAPlaceBesideIt() =>
        Assert.Equal(1, SeatsIn(Tone + Capacitor + "cap other 10n film from tone.2 to tone.case\n"));

    [Fact]
    public void Capacitor_ThatTheTextPlaces_IsWhereItSays()
    {
        var drawn = Draw(Tone + Capacitor + "place tone at 100,80\nplace dark at 160,120\n");

        Assert.Equal(new Point(160, 120), PartOf(drawn, "dark").At);
    }

    [Fact]
    public void Capacitor_WrittenBeforeItsPot_IsPaintedOnIt()
    {
        var picture = Drawings.PictureOf(Capacitor + Tone.Replace("circuit \"tone\"\n", "", StringComparison.Ordinal));
        var parts = picture
            .Items.OfType<PictureGroup>()
            .Where(group => group.Class == "part")
            .Select(group => group.Shows.First(shown => shown.Name == "part").Value)
            .ToList();

        Assert.True(parts.IndexOf("dark") > parts.IndexOf("tone"), string.Join(", ", parts));
    }

    [Fact]
    public void Capacitor_OnThePot_HasItsNameAndValueOnItsBody()
    {
        var drawn = Draw(Tone + Capacitor);

        Assert.Null(PartOf(drawn, "dark").Label);
        Assert.Contains(">dark<", drawn.Svg, StringComparison.Ordinal);
        Assert.Contains(">47n 473<", drawn.Svg, StringComparison.Ordinal);
    }

    /// <summary>The name stays on the part whatever its mark is: beside a pot nobody could tell whose it is. 100 nF is 104 (IEC 60062).</summary>
    [Theory]
    [InlineData("47n", ">47n 473<")]
    [InlineData("100n", ">100n<")]
    [InlineData("220n", ">220n<")]
    public void Capacitor_OnThePot_HasItsNameAndValueOnIt(string value, string shown)
    {
        var drawn = Draw(Tone + Capacitor.Replace("47n", value, StringComparison.Ordinal));

        Assert.Null(PartOf(drawn, "dark").Label);
        Assert.Contains(">dark<", drawn.Svg, StringComparison.Ordinal);
        Assert.Contains(shown, drawn.Svg, StringComparison.Ordinal);
    }

    private static Drawn Draw(string text) =>
        Drawn.Of(new SourceText("test.wiring", text), new DrawOptions(LayoutEffort.Full, Theme.Light, "test.wiring"));

    private static int SeatsIn(string text) =>
        FaceBuilder.BuildFaces(Drawings.CircuitOf(text)).Count(face => face.Layout.Seat is not null);

    private static PlacedPart PartOf(Drawn drawn, string name) =>
        drawn.Layout!.Parts.Single(part => part.Part.Id == name);

    private static double Apart(Point a, Point b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));
}
