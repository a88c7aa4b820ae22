using System.Text.RegularExpressions;
using WireText.Checks;
using WireText.Cli.Hosting;
using WireText.Parts;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>What holds for every command, and the two that only tell.</summary>
public sealed class CliProgramTests : IDisposable
{
    /// <summary>As the program lists them: a new one is held to all of this without a word here.</summary>
    private static readonly IReadOnlyList<string> Commands = Every.Of(CommandsIn(Ran.Of("--help").Output));

    private readonly TestFolder folder = new();

    /// <summary>Those that read wiring, by their own examples.</summary>
    public static TheoryData<string> FileCommands =>
        Rows.Of(
            Ending.Where(command => ExampleOf(command).Any(arg => arg.EndsWith(".wiring", StringComparison.Ordinal)))
        );

    public static TheoryData<string> EveryHelp => Rows.Of(["", .. Commands]);

    public static TheoryData<string> AllCommands => Rows.Of(Ending);

    /// <summary>
    /// Those that end by themselves. The others go on until they are told to end: <see cref="WatchCommandTests"/> and
    /// <see cref="LanguageServerCommandTests"/> run their examples.
    /// </summary>
    private static IEnumerable<string> Ending =>
        Commands.Where(command => command is not ("watch" or "language-server"));

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(AllCommands))]
    public void Help_OfEachCommand_HasAnExampleThatRuns(string command)
    {
        folder.Put(
            "guitar.wiring",
            command switch
            {
                "propose" => Sample.ToBeFound,
                "diagnose" => Sample.FoundOut,
                _ => Sample.Right + "place   out  at 40,60\n",
            }
        );
        folder.Put("bin.csv", "name,kind,value\nN1,pickup,6.05k\nP1,pot,243k\n");
        Ran.Of("format", folder["guitar.wiring"]);

        Assert.Equal(command, ExampleOf(command)[0]);
        Assert.Equal(0, RunExample(command, folder["guitar.wiring"]).Code);
    }

    [Fact]
    public void Help_OfTheProgram_NamesEveryCommandAndTheExitCodes()
    {
        var ran = Ran.Of("--help");

        Assert.Equal(0, ran.Code);
        Assert.True(Commands.Count > 20);
        Assert.Contains("Exit code: 0 right", ran.Output, StringComparison.Ordinal);
        Assert.True(ran.Output.Count(c => c == '\n') <= 80, "it no longer fits on two screens of forty lines");
    }

    /// <summary>Whatever the terminal. Alone on its line is what can be copied, or a choice of words that is longer.</summary>
    [Theory]
    [MemberData(nameof(EveryHelp))]
    public void Help_StandsInEightyColumns(string command)
    {
        string[] args = command.Length == 0 ? ["--help"] : [command, "--help"];

        var lines = Ran.Of(args).Output.Split('\n');

        Every.Item(
            lines.Where(line => line.Trim().Contains("  ", StringComparison.Ordinal) || !line.StartsWith(' ')),
            line => Assert.True(line.Length <= 80, line)
        );
    }

    [Fact]
    public void Version_IsOneLine()
    {
        var ran = Ran.Of("--version");

        Assert.Equal(0, ran.Code);
        Assert.Matches(@"^\d+\.\d+\.\d+\S*\n$", ran.Output);
    }

    [Theory]
    [InlineData("frobnicate")]
    [InlineData("--frobnicate")]
    [InlineData("check")]
    [InlineData("check", "--format", "xml", "a.wiring")]
    [InlineData("draw")]
    [InlineData("draw", "a.wiring", "b.wiring")]
    [InlineData("draw", "a.wiring", "--effort", "some")]
    [InlineData("parts", "no-such-part")]
    [InlineData("parts", "pot", "jack")]
    [InlineData("parts", "pto", "push-pull")]
    [InlineData("parts", "pot", "push-pull", "jack")]
    [InlineData("explain", "no-such-check")]
    [InlineData("format")]
    [InlineData("response")]
    [InlineData("export")]
    [InlineData("export", "a.wiring")]
    [InlineData("[diagram]", "check", "a.wiring")]
    public void Run_WrongUse_Exits2AndSpeaksOnStandardErrorAlone(params string[] args)
    {
        var ran = Ran.Of(args);

        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Output);
        Assert.StartsWith("wiretext: ", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>Nothing was asked: what can be asked is said, but not to a program that reads the output.</summary>
    [Fact]
    public void Run_WithoutACommand_Exits2AndListsThem()
    {
        var ran = Ran.Of();

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Equal(Ran.Of("--help").Output, ran.Error);
    }

    [Fact]
    public void Run_MistypedCommand_OffersTheNearest() =>
        Assert.StartsWith(
            "wiretext: no command is called 'chekc'; did you mean 'check'?\n",
            Ran.Of("chekc", "a.wiring").Error,
            StringComparison.Ordinal
        );

    [Theory]
    [MemberData(nameof(FileCommands))]
    public void Run_FileThatIsNotThere_Exits2(string command) =>
        AssertCannotRead(command, folder["none.wiring"], "there is no such file");

    [Theory]
    [MemberData(nameof(FileCommands))]
    public void Run_FolderWithoutAnyWiring_Exits2(string command) =>
        AssertCannotRead(
            command,
            folder.Root,
            command == "check" ? "there is no .wiring file in it" : "it is a folder"
        );

    [Theory]
    [MemberData(nameof(FileCommands))]
    public void Run_FileThatIsNoText_Exits2AndStays(string command)
    {
        byte[] content = [0x7F, .. "ELF"u8, 0xFF, 0xFE, 0x00, 0x80];

        AssertCannotRead(command, folder.Put("a.wiring", content), "not text in UTF-8");

        Assert.Equal(content, File.ReadAllBytes(folder["a.wiring"]));
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Theory]
    [MemberData(nameof(FileCommands))]
    public void Run_FileLargerThanAnyWiring_Exits2(string command) =>
        AssertCannotRead(command, folder.Put("a.wiring", new byte[17 * 1024 * 1024]), "larger than");

    [Fact]
    public void Run_NameThatStartsWithAt_IsAFileLikeAnyOther()
    {
        var before = Directory.GetCurrentDirectory();
        folder.Put("@a.wiring", Sample.Right);
        try
        {
            Directory.SetCurrentDirectory(folder.Root);

            Assert.Equal(0, Ran.Of("check", "@a.wiring").Code);
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
        }
    }

    [SkippableFact]
    public void Run_OutputCannotBeWritten_Exits2()
    {
        Skip.IfNot(File.Exists("/dev/full"), "this system has no device that is always full");
        using var full = new FullHost();

        Assert.Equal(2, CliProgram.Run(["--version"], full));
        Assert.Equal(2, CliProgram.Run(["parts"], full));
    }

    [Fact]
    public void Parts_NoName_ListsEveryStandardModel()
    {
        var ran = Ran.Of("parts");

        Assert.Equal(0, ran.Code);
        Every.Item(
            StandardParts.Catalogue.Definitions,
            part => Assert.Contains(part.Model, ran.Output, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Parts_EachStandardModel_ShowsItsLugsAndItsDefinition()
    {
        foreach (var part in StandardParts.Catalogue.Definitions.Where(part => part.Model != "standard"))
        {
            var ran = Ran.Of("parts", part.Model);

            Assert.Equal(0, ran.Code);
            Assert.Contains($"define {part.Kind} {part.Model}", ran.Output, StringComparison.Ordinal);
            Every.Item(part.Terminals, lug => Assert.Contains(lug.Name, ran.Output, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Parts_NameWithATypo_OffersTheNearest() =>
        Assert.Contains("did you mean 'lever-3way'?", Ran.Of("parts", "lever-3wya").Error, StringComparison.Ordinal);

    [Theory]
    [InlineData("pot", "push-pull")]
    [InlineData("POT", "Standard")]
    [InlineData("jack", "mono")]
    public void Parts_KindAndModel_ShowsTheOne(string kind, string model)
    {
        var ran = Ran.Of("parts", kind, model);

        Assert.Equal(0, ran.Code);
        Assert.StartsWith($"{kind} {model}", ran.Output, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(1, ran.Output.Split('\n').Count(line => line.StartsWith("define ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("no standard pot is called 'push-pul'; did you mean 'push-pull'?", "pot", "push-pul")]
    [InlineData("there is no kind of part called 'pto'; did you mean 'pot'?", "pto", "push-pull")]
    [InlineData("several kinds have a 'standard' model; write the kind before it: ", "standard")]
    public void Parts_NameThatFitsNothing_SaysWhatWould(string message, params string[] names) =>
        Assert.StartsWith($"wiretext: {message}", Ran.Of(["parts", .. names]).Error, StringComparison.Ordinal);

    [Fact]
    public void Explain_NoName_ListsEveryFinding()
    {
        var ran = Ran.Of("explain");

        Assert.Equal(0, ran.Code);
        Every.Item(
            FindingCatalogue.All,
            check => Assert.Matches($@"(?m)^    {check.Id}  +{Regex.Escape(check.Title)} \(", ran.Output)
        );
    }

    [Fact]
    public void Explain_EachFinding_SaysWhyAndHowToMend()
    {
        foreach (var check in FindingCatalogue.All)
        {
            var ran = Ran.Of("explain", check.Id);

            Assert.Equal(0, ran.Code);
            Assert.Contains(check.Why.Trim(), ran.Output, StringComparison.Ordinal);
            Assert.Contains(check.Mend.Trim(), ran.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Explain_NameWithATypo_OffersTheNearest() =>
        Assert.Contains(
            "did you mean 'floating-ground'?",
            Ran.Of("explain", "floating-gruond").Error,
            StringComparison.Ordinal
        );

    private void AssertCannotRead(string command, string file, string why)
    {
        var ran = RunExample(command, file);

        Assert.Equal(2, ran.Code);
        Assert.StartsWith($"wiretext: cannot read '{file}': ", ran.Error, StringComparison.Ordinal);
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
    }

    /// <summary>Runs the example of a command on a file; what it writes goes beside.</summary>
    private Ran RunExample(string command, string file) =>
        Ran.Of(
            new TestHost { WorkingFolder = folder.Root },
            [
                .. ExampleOf(command)
                    .Select(arg =>
                        arg.EndsWith(".wiring", StringComparison.Ordinal) ? file
                        : arg.StartsWith("guitar.", StringComparison.Ordinal) ? folder[arg]
                        : arg
                    ),
            ]
        );

    /// <summary>The arguments of the first example in the help of a command.</summary>
    private static string[] ExampleOf(string command)
    {
        var ran = Ran.Of(command, "--help");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var line = ran.Output.Split('\n').SkipWhile(line => line != "Example:").ElementAt(1);
        return line.Trim().Split(' ')[1..];
    }

    /// <summary>The first word of each row between the usage and the last heading.</summary>
    private static IEnumerable<string> CommandsIn(string help) =>
        help.Split('\n')
            .SkipWhile(line => line != "To write a wiring:")
            .TakeWhile(line => !line.StartsWith("What a command", StringComparison.Ordinal))
            .Where(line => line.Length > 2 && line.StartsWith("  ", StringComparison.Ordinal) && line[2] != ' ')
            .Select(line => line.Trim().Split(' ')[0]);

    /// <summary>A console whose every output is a full disk.</summary>
    private sealed class FullHost : ICliHost, IDisposable
    {
        public Stream Input => Stream.Null;

        public Stream Output { get; } =
            new FileStream("/dev/full", FileMode.Open, FileAccess.Write, FileShare.None, bufferSize: 0);

        public Stream Error => Output;

        public bool IsTerminal => false;

        public bool IsErrorTerminal => false;

        public string WorkingFolder => "/";

        public string? Variable(string name) => null;

        public void Dispose() => Output.Dispose();
    }
}
