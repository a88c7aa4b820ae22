using WireText.Editing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Editing;

public class HoversTests
{
    private const string Circuit = """
        pickup  neck  single-coil dcr=6k "the old one"
        switch  sel   toggle-3way
        jack    out   mono
        positions sel up both down
        wire    neck.hot to sel.A1 white
        wire    sel.A0 to out.tip red
        wire    neck.ground to out.sleeve black
        expect  sel=up: neck

        """;

    [Theory]
    [InlineData(
        "sel.[|A1|] white",
        "sel.A1: up: A0",
        "one net with neck.hot",
        "sel=up: joined to the tip",
        "sel=down: no signal"
    )]
    [InlineData("neck.[|ground|]", "start of the coil; lead; 1 wire on it", "sel=up: joined to the sleeve")]
    [InlineData("pickup  [|neck|]", "neck: pickup single-coil dcr=6k", "\"the old one\"", "from behind")]
    [InlineData("switch  sel   [|toggle-3way|]", "switch toggle-3way", "positions:")]
    [InlineData("[|pickup|]  neck", "a pickup: pickup NAME")]
    [InlineData("[|wire|]    neck", "a run of wire")]
    [InlineData("sel.A1 [|white|]", "white, WH, #FFFFFF")]
    [InlineData("expect  sel=[|up|]", "sel=up: neck · 6.00 kΩ")]
    [InlineData("positions sel up both [|down|]", "sel=down: open: the jack floats")]
    public void Word_OfACircuit_SaysWhatItMeans(string marked, params string[] said)
    {
        var example = MarkedText.Parse(marked);
        var at = Circuit.IndexOf(example.Text, StringComparison.Ordinal) + example.Spans[0].Start;

        var hover = HoverAt(Circuit, at)!;

        Assert.Equal(new TextSpan(at, example.Spans[0].Length), hover.At);
        Every.Item(said, words => Assert.Contains(words, hover.Markdown, StringComparison.Ordinal));
    }

    [Fact]
    public void Check_ThatIsAllowed_ShowsItsPage() =>
        Assert.StartsWith("# hot-case\n", HoverAt("allow hot-case \"x\"", 8)!.Markdown, StringComparison.Ordinal);

    /// <summary>What a file says in quotes stays in its fence, whatever it is.</summary>
    [Fact]
    public void Remark_InQuotesWithMarkup_StaysCode()
    {
        var hover = HoverAt("pot vol 500k \"```` <b>[x](y)</b>\"", 5)!;

        Assert.StartsWith("`````text\nvol: pot 500k linear\n\"```` <b>", hover.Markdown, StringComparison.Ordinal);
        Assert.EndsWith("\n`````\n", hover.Markdown, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("circuit \"x\"", 9)]
    [InlineData("", 0)]
    [InlineData("# pot", 3)]
    [InlineData("frobnicate", 2)]
    public void Word_ThatMeansNothing_SaysNothing(string text, int at) => Assert.Null(HoverAt(text, at));

    [Fact]
    public void EachNameOfEachExample_SaysSomething()
    {
        Every.Item(
            Repository.Examples,
            path =>
            {
                var text = File.ReadAllText(path);
                var compiled = Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance);
                Every.Item(
                    NameTable.Of(compiled).Own.Where(use => use.Kind is not (NameKind.Section or NameKind.Position)),
                    use => Assert.NotNull(Hovers.At(compiled, use.At.Span.Start))
                );
            }
        );
    }

    private static Hover? HoverAt(string text, int offset) =>
        Hovers.At(Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance), offset);
}
