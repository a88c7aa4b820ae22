using System.Text.RegularExpressions;

namespace WireText.Cli.Tests;

/// <summary>
/// What <c>check --format github</c> writes, read back by the documented rules of workflow commands: properties between the
/// word and two colons, separated by commas; %25, %0D, %0A everywhere, %3A and %2C in properties too.
/// </summary>
public sealed partial class FindingCommandsTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("a.wiring")]
    [InlineData("odd, names: 50%/a::b,c=d.wiring")]
    [InlineData("100%2C.wiring")]
    [InlineData("two\nlines\r.wiring")]
    public void Command_OfAFileWithAnAwkwardName_ReadsBackAsThatName(string name)
    {
        var file = folder.Put(name, Sample.Wrong);

        var ran = Run(file);

        var (word, properties, _) = Read(Assert.Single(Lines(ran.Output)));
        Assert.Equal(1, ran.Code);
        Assert.Equal("error", word);
        Assert.Equal(name, properties["file"]);
        Assert.Equal(("4", "37", "42"), (properties["line"], properties["col"], properties["endColumn"]));
        Assert.Equal("unknown-colour", properties["title"]);
    }

    [Fact]
    public void Message_WithHelpOfSeveralLines_IsOneLine()
    {
        var ran = Ran.Of("check", "--format", "github", Shown.Example("mistakes/positions-exchanged.wiring"));

        var (_, _, message) = Read(Assert.Single(Lines(ran.Output)));
        Assert.Contains("\n     replace  positions ", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Message_WithAPercent_ReadsBack()
    {
        var file = folder.Put("a.wiring", "jack out\nwire out.tip to out.sleeve 100%0A::x\n");

        var (_, _, message) = Read(Lines(Run(file).Output)[0]);

        Assert.Contains("'100%0A::x'", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Word_IsThatOfTheSeverity()
    {
        Assert.Equal("warning", Read(Assert.Single(Lines(Run(folder.Put("a.wiring", Sample.Doubtful)).Output))).Word);
        const string mute = "button mute momentary\nwire mute.1 to out.tip white\nwire mute.2 to out.sleeve black\n";
        Assert.Equal(
            "notice",
            Read(Assert.Single(Lines(Run(folder.Put("b.wiring", Sample.Right + mute)).Output))).Word
        );
        Assert.Empty(Run(folder.Put("c.wiring", Sample.Right)).Output);
    }

    [Fact]
    public void File_OutsideTheFolder_IsNamedFromTheRoot()
    {
        var file = folder.Put("a.wiring", Sample.Wrong);

        var ran = Ran.Of(new TestHost { WorkingFolder = folder["elsewhere"] }, "check", "--format", "github", file);

        Assert.Equal(file, Read(Assert.Single(Lines(ran.Output))).Properties["file"]);
    }

    private Ran Run(string file) =>
        Ran.Of(new TestHost { WorkingFolder = folder.Root }, "check", "--format", "github", file);

    private static string[] Lines(string output) => output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private static (string Word, Dictionary<string, string> Properties, string Message) Read(string line)
    {
        var match = Command().Match(line);
        Assert.True(match.Success, line);
        var properties = match
            .Groups["properties"]
            .Value.Split(',')
            .Select(property => property.Split('=', 2))
            .ToDictionary(
                pair => pair[0],
                pair =>
                    Unescaped(
                        pair[1]
                            .Replace("%3A", ":", StringComparison.Ordinal)
                            .Replace("%2C", ",", StringComparison.Ordinal)
                    ),
                StringComparer.Ordinal
            );
        return (match.Groups["word"].Value, properties, Unescaped(match.Groups["message"].Value));
    }

    private static string Unescaped(string text) =>
        text.Replace("%0D", "\r", StringComparison.Ordinal)
            .Replace("%0A", "\n", StringComparison.Ordinal)
            .Replace("%25", "%", StringComparison.Ordinal);

    [GeneratedRegex(@"^::(?<word>[a-z]+) (?<properties>[^:]*)::(?<message>.*)$", RegexOptions.None, 2000)]
    private static partial Regex Command();
}
