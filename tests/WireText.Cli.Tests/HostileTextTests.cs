using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>Names and lines from strangers are shown on terminals and in the logs of workflows, and do nothing there.</summary>
public sealed class HostileTextTests : IDisposable
{
    /// <summary>A colour, a move of the cursor, a turn of the writing, and a line that a workflow takes for a command.</summary>
    private const string Hostile =
        "a\u001b[31m\u009b2J\u202e\u2066\u200f\u2028\r\n::error file=b::gotcha\n ##[error]gotcha";

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    public static TheoryData<string> Formats => ["text", "github"];

    [Theory]
    [MemberData(nameof(Formats))]
    public void FileName_ThatIsHostile_DoesNothing(string format)
    {
        var file = folder.Put($"{Hostile}.wiring", Sample.Wrong);

        AssertHarmless(Ran.Of("check", "--format", format, file), format);
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void FileName_ThatStartsACommand_StartsNone(string format)
    {
        folder.Put("::error::gotcha", Sample.Wrong);
        var before = Directory.GetCurrentDirectory();
        try
        {
            Directory.SetCurrentDirectory(folder.Root);

            AssertHarmless(Ran.Of("check", "--format", format, "::error::gotcha"), format);
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
        }
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Line_ThatIsHostile_DoesNothing(string format)
    {
        var text =
            Sample.Right
            + $"note \"{Hostile.ReplaceLineEndings("")}\"\nwire \u001b[2Jx ##[error]gotcha\nwire gotcha to out.tip red\n";

        AssertHarmless(Ran.Of("check", "--format", format, folder.Put("a.wiring", text)), format);
    }

    [Fact]
    public void Settings_ThatAreHostile_DoNothing()
    {
        folder.Put(
            "wiretext.toml",
            "[checks]\n\"a\\u001b[31m\\n::error::gotcha\" = \"off\"\nheat = \"\\u202e\\n::error::\\u009b\"\n"
        );

        AssertHarmless(Ran.Of("check", folder.Put("a.wiring", Sample.Right)), "text");
    }

    [Theory]
    [InlineData("parts", Hostile)]
    [InlineData("explain", Hostile)]
    [InlineData(Hostile)]
    [InlineData("check", "--format", Hostile, "a.wiring")]
    [InlineData("check", Hostile)]
    [InlineData("positions", Hostile)]
    [InlineData("draw", "-", "-o", Hostile)]
    [InlineData("draw", "-", "--scale", Hostile)]
    [InlineData("export", "-", "--spice", "--at", Hostile)]
    [InlineData("format", "--check", Hostile)]
    public void Argument_ThatIsHostile_DoesNothing(params string[] args) =>
        AssertHarmless(Ran.Of(new TestHost(Sample.Right), args), "text");

    /// <summary>What is written for programs keeps every character.</summary>
    [Fact]
    public void Format_OfStandardInput_KeepsHostileLinesAsTheyAre()
    {
        const string Line = "# \u001b[31m ##[error]\n";

        Assert.Equal(Line, Ran.Of(new TestHost(Line), "format", "-").Output);
    }

    /// <summary>Nothing but text, and lines that start a command only where the program starts one for a finding.</summary>
    private static void AssertHarmless(Ran ran, string format)
    {
        var told = ran.Output + ran.Error;
        Assert.Contains("gotcha", told, StringComparison.Ordinal);
        Every.Item(told, character => Assert.False(IsHostile(character), $"U+{(int)character:X4} is shown"));
        Assert.DoesNotContain("##[", told, StringComparison.Ordinal);
        List<string> commands =
        [
            .. told.Split('\n').Where(line => line.TrimStart().StartsWith("::", StringComparison.Ordinal)),
        ];
        Assert.DoesNotContain(commands, line => !line.StartsWith("::error file=", StringComparison.Ordinal));
        Assert.Equal(format == "github" ? ran.Output.Count(character => character == '\n') : 0, commands.Count);
    }

    private static bool IsHostile(char character) =>
        (char.IsControl(character) && character is not ('\n' or '\t'))
        || "\u2028\u2029\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069".Contains(
            character,
            StringComparison.Ordinal
        );
}
