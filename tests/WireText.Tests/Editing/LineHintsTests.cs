using WireText.Editing;
using WireText.Text;

namespace WireText.Tests.Editing;

public class LineHintsTests
{
    /// <summary>The codes by IEC 60062: two figures and a power of ten in picofarads.</summary>
    [Theory]
    [InlineData("cap dark 47n film", "473")]
    [InlineData("cap dark 22n", "223")]
    [InlineData("cap dark value=680p ceramic", "681")]
    [InlineData("cap dark n47", "471")]
    [InlineData("cap dark code=473", null)]
    [InlineData("cap dark 4n75", null)]
    [InlineData("cap dark 10n..100n", null)]
    [InlineData("resistor dark 47k", null)]
    public void Capacitor_WithAValue_HasItsMarking(string line, string? code) =>
        Assert.Equal(code, HintsOf(line, new TextSpan(0, line.Length)).SingleOrDefault()?.Words);

    [Fact]
    public void State_ThatIsOne_SaysWhatItDoesBehindItsLine()
    {
        const string text = """
            pickup  neck  single-coil  dcr=6k
            jack    out   mono
            pot     vol   250k audio
            wire    neck.hot to vol.3 white
            wire    vol.2 to out.tip white
            wire    neck.ground to vol.1 to out.sleeve black
            expect  rest: neck, reads 5.86k
            expect  vol=0 others=any: silence
            """;

        var hints = HintsOf(text, new TextSpan(0, text.Length));

        // 6 kΩ beside 250 kΩ are 5.859 kΩ; with the dial at 0 the wiper is on the sleeve.
        Assert.Equal(2, hints.Count);
        Assert.StartsWith("neck · 5.86 kΩ · peak ", hints[0].Words, StringComparison.Ordinal);
        Assert.Equal(text.IndexOf("5.86k", StringComparison.Ordinal) + 5, hints[0].At);
        Assert.StartsWith("silence: tip and sleeve are joined · 0 Ω", hints[1].Words, StringComparison.Ordinal);
        Assert.Empty(HintsOf(text, new TextSpan(0, 10)));
    }

    [Fact]
    public void State_WithAControlAtAny_SaysNothing()
    {
        const string text = "switch sel toggle-3way\njack out mono\nexpect sel=any: open\nexpect sel=1: open";

        Assert.Equal([text.Length], HintsOf(text, new TextSpan(0, text.Length)).Select(hint => hint.At));
    }

    private static IReadOnlyList<LineHint> HintsOf(string text, TextSpan stretch) =>
        LineHints.In(Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance), stretch);
}
