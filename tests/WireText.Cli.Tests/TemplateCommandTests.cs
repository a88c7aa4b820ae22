using System.Text;
using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed partial class TemplateCommandTests : IDisposable
{
    private const string Plate = """
        define switch own
            lugs a -3,0 b 3,0
            position 1 a+b
            position 2
        pot vol 250k audio
        switch k own
        button kill momentary
        place vol at 20,20
        place k at 50,20
        """;

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Template_OfAPlate_IsAPdfAndTellsWhatIsMissing()
    {
        var ran = Ran.Of("template", folder.Put("a.wiring", Plate), "-o", folder["a.pdf"], "--holes", folder["a.csv"]);

        Assert.StartsWith(
            "%PDF-",
            Encoding.Latin1.GetString(File.ReadAllBytes(folder["a.pdf"])),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "the hole of 'k' is not known; write its size on its line",
            ran.Error,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "'kill' has no place and is not on the template; write: place kill at X,Y",
            ran.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(2, folder.Text("a.csv").Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Contains("\nvol,-20,20,10,", folder.Text("a.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public void Template_FromBehind_HasThePlacesAsTheyAreWritten()
    {
        Ran.Of("template", folder.Put("a.wiring", Plate), "--from", "behind", "-o", folder["a.csv"]);

        Assert.Contains("\nvol,20,20,10,,,behind,", folder.Text("a.csv"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pot vol 250k audio", "write a line for each, such as place vol at 40,60")]
    [InlineData("pickup neck single-coil", "no part of the circuit sits in a hole")]
    public void Template_OfNothingToDrill_SaysWhatToWrite(string text, string words)
    {
        var ran = Ran.Of("template", folder.Put("a.wiring", text), "-o", folder["a.pdf"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Theory]
    [InlineData("--paper a4 --format csv", "--paper is for a PDF")]
    [InlineData("-o holes.txt", "ends in none of .pdf and .csv")]
    [InlineData("--from above", "above")]
    public void Template_WithWhatCannotBe_SaysWhy(string options, string words)
    {
        var ran = Ran.Of(["template", folder.Put("a.wiring", Plate), .. options.Split(' ')]);

        Assert.Equal(2, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryCommandOfThePage_WritesWhatItShows()
    {
        var page = File.ReadAllText(Repository.PathOf("docs", "template.md"));
        folder.Put("plate.wiring", BlockOf(page, "wiring"));
        var host = new TestHost { WorkingFolder = folder.Root };
        var commands = Every.Of(BlockOf(page, "sh").Split('\n', StringSplitOptions.RemoveEmptyEntries));

        Every.Item(
            commands,
            command =>
            {
                Ran.Of(host, command.Split(' ')[1..]);

                var words = command.Split(' ');
                Assert.True(File.Exists(folder[words[Array.IndexOf(words, "-o") + 1]]), command);
            }
        );
        Assert.Equal(BlockOf(page, "csv"), folder.Text("holes.csv"));
    }

    private static string BlockOf(string page, string kind) =>
        Blocks().Matches(page).First(match => match.Groups["kind"].Value == kind).Groups["text"].Value;

    [GeneratedRegex("```(?<kind>\\w+)\n(?<text>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Blocks();
}
