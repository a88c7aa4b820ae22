using WireText.Editing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Editing;

public class WordTokensTests
{
    [Theory]
    [InlineData(
        "wire neck.hot to sel.A1 white/black # why",
        "Keyword wire,Part neck,Lug hot,Keyword to,Part sel,Lug A1,Colour white,Colour black,Comment # why"
    )]
    [InlineData(
        "pickup neck single-coil dcr=6k wind=cw \"it\"",
        "Kind pickup,Part neck,Model single-coil,Key dcr,Number 6k,Key wind,Choice cw,Text \"it\""
    )]
    [InlineData(
        "expect out: sel=b others=any: neck.n, reads 6k",
        "Keyword expect,Part out,Part sel,Choice b,Key others,Keyword any,Part neck,Lug n,Keyword reads,Number 6k"
    )]
    [InlineData("allow hot-case at vol.1 \"x\"", "Keyword allow,Check hot-case,Keyword at,Part vol,Lug 1,Text \"x\"")]
    [InlineData("wire neck.hot too", "Keyword wire,Choice neck.hot,Choice too")]
    [InlineData("frobnicate a b", "Kind frobnicate,Part a,Choice b")]
    public void Words_OfALine_AreWhatTheyAre(string line, string expected) =>
        Assert.Equal(
            expected,
            string.Join(
                ',',
                TokensOf(line).Select(token => $"{token.Kind} {line.Substring(token.At.Start, token.At.Length)}")
            )
        );

    [Fact]
    public void Words_OfEachExample_CoverAllButMarks()
    {
        Every.Item(
            Repository.RightAndWrongExamples,
            path =>
            {
                var text = File.ReadAllText(path);
                var left = text.ToCharArray();
                var end = 0;
                Every.Item(
                    TokensOf(text),
                    token =>
                    {
                        Assert.True(token.At.Start >= end && token.At.Length > 0);
                        end = token.At.End;
                        Assert.DoesNotContain('\n', text[token.At.Start..end]);
                        Array.Fill(left, ' ', token.At.Start, token.At.Length);
                    }
                );
                Assert.DoesNotContain(
                    left,
                    character => !char.IsWhiteSpace(character) && !".:,()/=+".Contains(character)
                );
            }
        );
    }

    private static IReadOnlyList<WordToken> TokensOf(string text) =>
        WordTokens.Of(Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance));
}
