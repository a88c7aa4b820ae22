using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Text;

public class VisibleTextTests
{
    /// <summary>C0, DEL and C1 (ECMA-48); the separators of lines; the marks of direction (Unicode Standard Annex 9).</summary>
    public static TheoryData<int> UnseenCharacters =>
        Rows.Of(
            Enumerable
                .Range(0x00, 0x20)
                .Concat(Enumerable.Range(0x7F, 0x21))
                .Except([(int)'\t'])
                .Concat([0x061C, 0x200E, 0x200F, 0x2028, 0x2029])
                .Concat(Enumerable.Range(0x202A, 5))
                .Concat(Enumerable.Range(0x2066, 4))
        );

    [Theory]
    [MemberData(nameof(UnseenCharacters))]
    public void Line_WithACharacterThatDoesSomething_ShowsABox(int code) =>
        Assert.Equal("a□b", VisibleText.Line($"a{(char)code}b"));

    [Theory]
    [InlineData("wire    neck.hot\tto out.tip  # Ω ±5 % – näher, 音, 👍, e\u0301, a\u200Db")]
    [InlineData("a.wiring:1:2: error: a::b [unknown-lug]")]
    [InlineData("# [note]  ## two  #[x]")]
    public void Line_ThatOnlyShows_StaysAsItIs(string text) => Assert.Equal(text, VisibleText.Line(text));

    [Theory]
    [InlineData("::error::hi", "□:error::hi")]
    [InlineData(" \t::set-output name=a::b", " \t□:set-output name=a::b")]
    [InlineData("# ##[add-mask]a", "# ##□add-mask]a")]
    [InlineData("a\n::error::hi", "a□::error::hi")]
    public void Line_ThatALogWouldTakeForACommand_IsNone(string text, string visible) =>
        Assert.Equal(visible, VisibleText.Line(text));

    [Fact]
    public void Lines_StayLines_AndNoneStartsACommand() =>
        Assert.Equal("a□\n□:error::\n\n", VisibleText.Lines("a\r\n::error::\n\n"));
}
