using WireText.Starting;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>A wiring is begun from choices, by options or by answers, and never over a file.</summary>
public sealed class NewCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void WithoutATerminal_TakesWhatIsUsual()
    {
        var ran = Run(new TestHost { WorkingFolder = folder.Root }, "guitar");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Equal("guitar.wiring is written\nnext: wiretext watch guitar.wiring --open\n", ran.Output);
        Assert.Equal(Starter.All.First().Write(), folder.Text("guitar.wiring"));
        Assert.Equal(0, Ran.Of("check", "--strict", folder["guitar.wiring"]).Code);
        Assert.Equal(0, Ran.Of("format", "--check", folder["guitar.wiring"]).Code);
    }

    /// <summary>Each choice by its options is the text of that choice.</summary>
    [Fact]
    public void Options_OfEachChoice_WriteItsText() =>
        Every.Item(
            Starter.All,
            starter =>
            {
                var ran = Ran.Of(
                    "new",
                    "-",
                    "--pickups",
                    starter.Pickups.Word,
                    "--selector",
                    starter.Selector.Word,
                    "--controls",
                    starter.Controls.Word,
                    "--jack",
                    starter.Jack.Word
                );

                Assert.Equal((0, ""), (ran.Code, ran.Error));
                Assert.Equal(starter.Write(), ran.Output);
            }
        );

    [Fact]
    public void OnATerminal_AsksWhatNoOptionSays_ByNumberOrWord()
    {
        var ran = Run(Terminal("4\ntoggle\ntoggle-3way\n\n2\n"), "guitar");

        Assert.Equal(0, ran.Code);
        Assert.Contains("  4  two-humbuckers    two humbuckers\n", ran.Error, StringComparison.Ordinal);
        Assert.Contains("'toggle' is none of them", ran.Error, StringComparison.Ordinal);
        Assert.Contains("Which, by number or word? [volume-tone] ", ran.Error, StringComparison.Ordinal);
        Assert.Equal(
            Ran.Of(
                "new",
                "-",
                "--pickups",
                "two-humbuckers",
                "--selector",
                "toggle-3way",
                "--controls",
                "volume-tone",
                "--jack",
                "stereo"
            ).Output,
            folder.Text("guitar.wiring")
        );
    }

    /// <summary>One pickup has nothing to choose between: that is not asked.</summary>
    [Fact]
    public void OnATerminal_WithOptions_AsksTheRest()
    {
        var ran = Run(Terminal("\n\n"), "guitar", "--pickups", "single");

        Assert.Equal(0, ran.Code);
        Assert.DoesNotContain("pickups:", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("selector:", ran.Error, StringComparison.Ordinal);
        Assert.Contains("controls:", ran.Error, StringComparison.Ordinal);
        Assert.Contains("jack:", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void OnATerminal_WithoutAnAnswer_WritesNothing()
    {
        var ran = Run(Terminal("1\n"), "guitar");

        Assert.Equal(2, ran.Code);
        Assert.EndsWith("wiretext: there was no answer: nothing is written\n", ran.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Names);
    }

    [Theory]
    [InlineData("guitar")]
    [InlineData("guitar.wiring")]
    public void FileThatIsThere_StaysAsItIs(string name)
    {
        folder.Put("guitar.wiring", "mine\n");

        var ran = Run(Terminal(""), name);

        Assert.Equal(2, ran.Code);
        Assert.Equal("wiretext: 'guitar.wiring' is there already and stays as it is; give another name\n", ran.Error);
        Assert.Equal("mine\n", folder.Text("guitar.wiring"));
    }

    /// <summary>It may come while somebody thinks about the answers.</summary>
    [Fact]
    public void FileThatComesMeanwhile_StaysAsItIs()
    {
        var host = Terminal("\n\n\n\n");
        host.Meanwhile = () => host.Meanwhile = () => folder.Put("guitar.wiring", "mine\n");

        var ran = Run(host, "guitar");

        Assert.Equal(2, ran.Code);
        Assert.Equal("mine\n", folder.Text("guitar.wiring"));
    }

    [Fact]
    public void LinkToNothing_StaysALink()
    {
        File.CreateSymbolicLink(folder["guitar.wiring"], folder["none"]);

        var ran = Run(new TestHost { WorkingFolder = folder.Root }, "guitar");

        Assert.Equal(2, ran.Code);
        Assert.Equal(["guitar.wiring"], folder.Names);
    }

    [Theory]
    [InlineData("--selector lever-5way does not go with the choices before it; there is none", "single", "lever-5way")]
    [InlineData(
        "--selector toggle-3way does not go with the choices before it; there is lever-5way, lever-3way",
        "three-singles",
        "toggle-3way"
    )]
    public void ChoiceThatDoesNotGo_SaysWhatDoes(string why, string pickups, string selector)
    {
        var ran = Ran.Of("new", "-", "--pickups", pickups, "--selector", selector);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Equal($"wiretext: {why}\n", ran.Error);
    }

    [Fact]
    public void Page_NamesEveryChoice()
    {
        var page = File.ReadAllText(Repository.PathOf("docs", "start.md"));

        Every.Item(
            Starter.All.SelectMany(starter =>
                new IStarterAnswer[] { starter.Pickups, starter.Selector, starter.Controls, starter.Jack }
            ),
            answer => Assert.Contains($"`{answer.Word}`", page, StringComparison.Ordinal)
        );
    }

    private TestHost Terminal(string answers) =>
        new(answers)
        {
            WorkingFolder = folder.Root,
            IsInputTerminal = true,
            IsErrorTerminal = true,
        };

    private static Ran Run(TestHost host, params string[] args) => Ran.Of(host, ["new", .. args]);
}
