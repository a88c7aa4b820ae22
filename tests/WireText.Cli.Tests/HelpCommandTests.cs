namespace WireText.Cli.Tests;

/// <summary><c>help</c> is a word for what <c>--help</c> shows.</summary>
public class HelpCommandTests
{
    [Fact]
    public void Help_Alone_IsThatOfTheProgram() => Assert.Equal(Ran.Of("--help"), Ran.Of("help"), Same);

    [Fact]
    public void Help_OfACommand_IsItsOwn() => Assert.Equal(Ran.Of("draw", "--help"), Ran.Of("help", "draw"), Same);

    [Fact]
    public void Help_OfAMistypedCommand_OffersTheNearest() =>
        Assert.StartsWith(
            "wiretext: no command is called 'darw'; did you mean 'draw'?\n",
            Ran.Of("help", "darw").Error,
            StringComparison.Ordinal
        );

    private static bool Same(Ran one, Ran other) =>
        (one.Code, one.Output, one.Error) == (other.Code, other.Output, other.Error);
}
