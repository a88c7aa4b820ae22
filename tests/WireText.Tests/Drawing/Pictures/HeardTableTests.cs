using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Text;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>What is heard in every position, told under the drawing beside what each position joins.</summary>
public class HeardTableTests
{
    private const string Selector = """
        circuit "one control"
        pickup  neck single-coil 6k wind=cw magnet=north
        pickup  bridge single-coil 7k wind=ccw magnet=south
        switch  sel spdt
        pot     vol 250k audio
        jack    out mono
        positions sel front back
        wire    neck.hot to sel.A1 white
        wire    bridge.hot to sel.A2 yellow
        wire    sel.A0 to vol.3 red
        wire    vol.2 to out.tip blue
        wire    vol.1 to vol.case bare
        wire    neck.ground to vol.case black
        wire    bridge.ground to vol.case black
        wire    vol.case to out.sleeve black
        """;

    [Fact]
    public void OneControl_TellsWhatItJoinsAndWhatIsHeard_InOneTable()
    {
        var picture = PictureOf(Selector);

        Assert.Equal(
            ["sel", "joins", "heard", "front", "A0+A1", "neck", "back", "A0+A2", "bridge"],
            Texts(picture, "heard")
        );
        Assert.Empty(Texts(picture, "contacts"));
    }

    [Fact]
    public void TwoControls_TellEachStateInARow_AndWhatEachJoinsApart()
    {
        var picture = PictureOf(
            Selector + "\nbutton mute momentary\nwire mute.1 to out.tip red\nwire mute.2 to vol.case black"
        );
        var cells = Texts(picture, "heard").Chunk(3).Select(row => string.Join('|', row)).ToList();

        Assert.Equal("sel|mute|heard", cells[0]);
        Assert.Equal(
            ["any|down|silence: tip and sleeve are joined", "back|up|bridge", "front|up|neck"],
            cells.Skip(1).Order(StringComparer.Ordinal)
        );
        Assert.Contains("mute: up nothing · down 1+2", Texts(picture, "contacts"));
    }

    [Fact]
    public void ACoilThatDoesNotSayHowItIsWound_IsMarked()
    {
        var picture = PictureOf(
            """
            pickup neck single-coil 6k
            pickup bridge single-coil 7k
            jack out mono
            wire neck.hot to bridge.hot to out.tip white
            wire neck.ground to bridge.ground to out.sleeve black
            """
        );

        Assert.Equal(["heard", "neck parallel bridge *", "* assumed: the text does not say"], Texts(picture, "heard"));
    }

    [Fact]
    public void MoreRowsThanADrawingTells_AreCounted()
    {
        var pickups = string.Join(
            '\n',
            Enumerable
                .Range(1, 5)
                .Select(i =>
                    $"pickup p{i} single-coil {5 + i}k wind=cw magnet=north\nswitch s{i} spdt\nwire p{i}.hot to s{i}.A1 white\nwire s{i}.A0 to out.tip white\nwire p{i}.ground to out.sleeve black"
                )
        );
        var texts = Texts(PictureOf($"jack out mono\n{pickups}"), "heard");

        // Five switches: 32 states, each heard in its own way.
        Assert.Equal("and 16 more rows", texts[^1]);
        Assert.Equal((1 + 16) * 6, texts.Length - 1);
    }

    [Theory]
    [InlineData("pot vol 250k audio")]
    [InlineData("pickup neck single-coil")]
    public void ACircuitWithoutAJack_TellsNothing(string text) => Assert.Empty(Texts(PictureOf(text), "heard"));

    [Fact]
    public void APicture_ThatStandsBesideATable_TellsNothing()
    {
        var compiled = Compilation.Of(new SourceText("test.wiring", Selector), NoSources.Instance);
        var options = new DrawOptions(LayoutEffort.Quick, Theme.Light, null);

        Assert.NotEmpty(Texts(compiled.PictureFor(options)!, "heard"));
        Assert.Empty(Texts(compiled.PictureFor(options with { TellsHeard = false })!, "heard"));
    }

    private static Picture PictureOf(string text) =>
        Compilation
            .Of(new SourceText("test.wiring", text), NoSources.Instance)
            .PictureFor(new DrawOptions(LayoutEffort.Quick, Theme.Light, "test.wiring"))!;

    private static string[] Texts(Picture picture, string name) =>
        [.. PictureItems.In(picture).OfType<TextItem>().Where(text => text.Class == name).Select(text => text.Text)];
}
