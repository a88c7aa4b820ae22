using WireText.Text;

namespace WireText.Tests.Text;

public class DidYouMeanTests
{
    private static readonly string[] Words = ["wire", "cable", "splice", "switch", "silence"];

    [Theory]
    [InlineData("wrie", "wire")]
    [InlineData("WIRE", "wire")]
    [InlineData("wir", "wire")]
    [InlineData("wirre", "wire")]
    [InlineData("swich", "switch")]
    [InlineData("silnece", "silence")]
    public void Nearest_SlipOfTheKeyboard_FindsTheWord(string word, string meant) =>
        Assert.Equal(meant, DidYouMean.Nearest(word, Words));

    [Theory]
    [InlineData("")]
    [InlineData("pickup")]
    [InlineData("wi")]
    [InlineData("w")]
    public void Nearest_OtherWord_GuessesNothing(string word) => Assert.Null(DidYouMean.Nearest(word, Words));

    [Fact]
    public void Nearest_OneLetterLug_IsNoSlip() => Assert.Null(DidYouMean.Nearest("4", ["1", "2", "3"]));

    [Fact]
    public void Nearest_Equals_TakesTheFirst() => Assert.Equal("cat", DidYouMean.Nearest("cut", ["cat", "cot"]));

    [Fact]
    public void Nearest_HugeWord_GuessesNothing() =>
        Assert.Null(DidYouMean.Nearest(new string('a', 1 << 20), [new string('a', 1 << 20)]));
}
