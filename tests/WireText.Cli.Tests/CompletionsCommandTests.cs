using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The scripts are loaded by the shells that they are for, and asked as a hand on the Tab key asks.</summary>
public sealed class CompletionsCommandTests : IDisposable
{
    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    /// <summary>What is typed, and what must be offered with it.</summary>
    public static TheoryData<string, string> Typed =>
        new()
        {
            { "dr", "draw" },
            { "draw --th", "--theme" },
            { "draw --theme pr", "print" },
            { "new guitar --pickups three", "three-singles" },
            { "parts lever-3", "lever-3way" },
            { "explain floating", "floating-ground" },
            { "help lang", "language-server" },
            { "completions fi", "fish" },
            { "check gui", "guitar.wiring" },
            { "check --parts sho", "shop" },
        };

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    [SkippableTheory]
    [MemberData(nameof(Typed))]
    public void Bash_OffersWhatFollows(string typed, string offered)
    {
        Need("bash");
        var words = string.Join(' ', $"wiretext {typed}".Split(' ').Select(word => $"'{word}'"));

        var ran = Complete(
            "bash",
            $$"""
            source ./script
            COMP_WORDS=({{words}}); COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
            complete -p wiretext >/dev/null && _wiretext 2>/dev/null
            printf '%s\n' "${COMPREPLY[@]}"
            """
        );

        Assert.Equal([offered], ran);
    }

    [SkippableTheory]
    [MemberData(nameof(Typed))]
    public void Fish_OffersWhatFollows(string typed, string offered)
    {
        Need("fish");

        var ran = Complete("fish", $"source ./script; complete -C 'wiretext {typed}'");

        Assert.Equal([offered], ran.Select(line => line.Split('\t')[0].TrimEnd('/')));
    }

    /// <summary>zsh completes at its line editor alone: it is started at a terminal of its own, and Tab is pressed.</summary>
    [SkippableFact]
    public void Zsh_OffersWhatFollows()
    {
        Need("zsh");
        var rows = Typed.Select(row => (Typed: (string)row[0], Offered: (string)row[1])).ToList();
        var keys = rows.Select(row => $"press $'\\C-Uwiretext {row.Typed}\\t\\C-X'");

        Complete(
            "zsh",
            $$"""
            zmodload zsh/zpty zsh/zselect
            press() {
              local before=$(wc -l < shown) waited=0
              zpty -w -n asked "$1"
              while (( $(wc -l < shown) == before && waited++ < 500 )); do zpty -r -t asked ignored; zselect -t 2; done
            }
            : > shown
            zpty asked zsh -f -i
            zpty -w asked 'autoload -U compinit; compinit -u -D; source ./script; show() { print -r -- "$BUFFER" >> shown }; zle -N show; bindkey "^X" show; bindkey "^U" kill-whole-line'
            press $'\C-X'
            {{string.Join('\n', keys)}}
            zpty -d asked
            """
        );

        var shown = folder
            .Text("shown")
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.TrimEnd(' ', '/'));
        Assert.Equal(rows.Select(row => $"wiretext {Completed(row.Typed, row.Offered)}"), shown);
    }

    [Fact]
    public void EveryScript_NamesEveryCommandAndOption()
    {
        var help = Ran.Of("draw", "--help").Output;
        var options = Every.Of(
            help.Split(' ', '\n', ',', ':').Where(word => word.StartsWith("--", StringComparison.Ordinal)).Distinct()
        );
        foreach (var name in new[] { "bash", "zsh" })
        {
            var script = Ran.Of("completions", name).Output;
            Every.Item(
                options.Where(option => option != "--help"),
                option => Assert.Contains(option, script, StringComparison.Ordinal)
            );
        }
    }

    /// <summary>The last word of what was typed, whole.</summary>
    private static string Completed(string typed, string offered) => typed[..(typed.LastIndexOf(' ') + 1)] + offered;

    private string[] Complete(string program, string asked)
    {
        folder.Put("guitar.wiring", Sample.Right);
        folder.Put("shop/parts.wiring", Sample.Right);
        folder.Put("script", Ran.Of("completions", program).Output);
        folder.Put("asked", asked);
        var ran = shell.Run($"HOME=\"$PWD\" {program} ./asked", folder);

        Assert.Equal("", ran.Error);
        return ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static void Need(string program) =>
        Skip.If(Programs.Find(program) is null, $"{program} is not installed: install it to have its script tried");
}
