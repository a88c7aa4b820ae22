using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class FlattenCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    private static string Mod => Repository.PathOf("examples", "mods", "mute-and-capacitor.wiring");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Flatten_TheMod_WritesACircuitThatStandsAlone()
    {
        var target = folder["whole.wiring"];

        var ran = Ran.Of("flatten", Mod, "-o", target);

        Assert.Equal((0, "", ""), (ran.Code, ran.Output, ran.Error));
        Assert.DoesNotContain("base", File.ReadAllText(target), StringComparison.Ordinal);
        Assert.Equal(0, Ran.Of("check", "--strict", target).Code);
        Assert.Equal(0, Ran.Of("format", "--check", target).Code);
        Assert.Equal(Ran.Of("positions", Mod).Output, Ran.Of("positions", target).Output);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("positions")]
    [InlineData("draw", "-o")]
    [InlineData("response", "-o")]
    public void EveryCommand_TakesAMod(params string[] command) =>
        Assert.Equal(
            0,
            Ran.Of([command[0], Mod, .. command.Length > 1 ? new[] { "-o", folder["drawn.svg"] } : []]).Code
        );

    [Fact]
    public void Flatten_ABaseThatIsNotThere_WritesNothing()
    {
        var file = folder.Put("mod.wiring", "base \"none.wiring\"\n");

        var ran = Ran.Of("flatten", file, "-o", folder["whole.wiring"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("cannot read 'none.wiring'", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["whole.wiring"]));
    }
}
