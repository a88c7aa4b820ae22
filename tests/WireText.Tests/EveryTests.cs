using WireText.Testing;
using Xunit.Sdk;

namespace WireText.Tests;

/// <summary>A test that goes over nothing fails, and says over what.</summary>
public class EveryTests
{
    private static readonly string[] Nothing = [];

    [Fact]
    public void Of_Nothing_FailsAndSaysWhatIsEmpty() =>
        Assert.Equal(
            "there is nothing to go over: Nothing is empty",
            Assert.Throws<TrueException>(() => Every.Of(Nothing)).Message
        );

    [Fact]
    public void Item_OfNothing_Fails() => Assert.Throws<TrueException>(() => Every.Item(Nothing, _ => { }));

    [Fact]
    public void Item_OfSomething_JudgesEachAndSaysWhichFailed()
    {
        var judged = new List<int>();

        var failure = Assert.Throws<AllException>(() =>
            Every.Item(
                [1, 2, 3],
                item =>
                {
                    judged.Add(item);
                    Assert.NotEqual(2, item);
                }
            )
        );

        Assert.Equal([1, 2, 3], judged);
        Assert.Contains("1 out of 3 items", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_OfNothing_AreAFailure() => Assert.Throws<TrueException>(() => Rows.Of(Nothing));

    [Fact]
    public void FilesIn_AFolderWithoutSuchFiles_IsAnError() =>
        Assert.Equal(
            "there is no examples/*.nothing",
            Assert.Throws<InvalidOperationException>(() => Repository.FilesIn("examples", "*.nothing")).Message
        );
}
