using System.Globalization;
using System.Text;
using WireText.Cli;
using WireText.Cli.Hosting;
using WireText.Testing;

namespace WireText.Benchmarks;

/// <summary>Sends texts with mistakes in them through every command, in process, and counts what came of it.</summary>
/// <remarks>
/// <c>dotnet run -c Release --project tests/WireText.Benchmarks -- fuzz COUNT [FIRST]</c>. Input number N is the same in every run, so what a
/// failure names is replayed by <c>fuzz 1 N</c>.
/// </remarks>
internal static class FuzzedRuns
{
    /// <summary>Every command that reads a wiring, as it reads one from standard input.</summary>
    private static readonly string[][] Commands =
    [
        ["check", "-"],
        ["check", "--format", "json", "--harmless", "-"],
        ["check", "--format", "sarif", "-"],
        ["positions", "-"],
        ["positions", "--expect", "-"],
        ["draw", "-"],
        ["template", "-"],
        ["page", "-"],
        ["arrange", "-"],
        ["format", "-"],
        ["response", "-"],
        ["export", "--spice", "-"],
    ];

    /// <summary>What is put between the letters: ends of lines, quotes, brackets, and characters that are more than one unit or none to see.</summary>
    private static readonly string[] Strange =
    [
        "\n",
        "\r",
        "\"",
        "#",
        "(",
        ")",
        ".",
        ":",
        "=",
        "+",
        "-",
        "\0",
        "\u001b",
        "\u202e",
        "\u2066",
        "\ufeff",
        "\U0001F3B8",
        "999999999",
        "1e308",
        "-0",
        "to",
        "wire",
        "expect rest: ",
    ];

    /// <returns>The exit code: 0 when every run ended with a code of its own.</returns>
    public static int Run(int count, int first)
    {
        var texts = Repository.Examples.Concat(Repository.Mistakes).Select(File.ReadAllText).ToArray();
        var codes = new SortedDictionary<(string Command, int Code), int>();
        var failures = 0;
        for (var number = first; number < first + count; number++)
        {
            var input = Mutated(texts, number);
            foreach (var command in Commands)
            {
                try
                {
                    var key = (command[0], CliProgram.Run(command, new MemoryHost(input)));
                    codes[key] = codes.GetValueOrDefault(key) + 1;
                }
                catch (Exception e) when (e is not OutOfMemoryException)
                {
                    failures++;
                    Say($"input {number}, {string.Join(' ', command)}: {e.GetType().Name}: {e.Message}");
                }
            }
        }

        foreach (var ((command, code), times) in codes)
        {
            Say($"{command}, exit code {code}: {times}");
        }

        Say(
            $"{count} inputs from {first} on, each through {Commands.Length} runs; {failures} runs ended with an exception"
        );
        return failures == 0 ? 0 : 1;
    }

    /// <summary>One of the texts, with one to three places of it changed.</summary>
    private static string Mutated(string[] texts, int number)
    {
        var random = new Random(number);
        var text = new StringBuilder(texts[random.Next(texts.Length)]);
        for (var changes = random.Next(1, 4); changes > 0; changes--)
        {
            var at = random.Next(text.Length);
            var length = Math.Min(random.Next(1, 12), text.Length - at);
            switch (random.Next(5))
            {
                case 0:
                    text.Remove(at, Math.Min(length, text.Length - 1));
                    break;
                case 1:
                    text.Insert(random.Next(text.Length), text.ToString(at, length));
                    break;
                case 2:
                    text.Insert(at, Strange[random.Next(Strange.Length)]);
                    break;
                case 3:
                    text[at] = (char)random.Next(32, 127);
                    break;
                default:
                    ExchangeLines(text, random);
                    break;
            }
        }

        return text.ToString();
    }

    private static void ExchangeLines(StringBuilder text, Random random)
    {
        var lines = text.ToString().Split('\n');
        var (a, b) = (random.Next(lines.Length), random.Next(lines.Length));
        (lines[a], lines[b]) = (lines[b], lines[a]);
        text.Clear().AppendJoin('\n', lines);
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    /// <summary>A console in memory, with a text on its input.</summary>
    private sealed class MemoryHost(string input) : ICliHost
    {
        public Stream Input { get; } = new MemoryStream(Encoding.UTF8.GetBytes(input));

        public Stream Output { get; } = new MemoryStream();

        public Stream Error { get; } = new MemoryStream();

        public bool IsTerminal => false;

        public bool IsErrorTerminal => false;

        public string WorkingFolder => Repository.PathOf("examples");

        public string? Variable(string name) => null;
    }
}
