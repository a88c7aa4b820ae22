using System.Diagnostics;
using System.Globalization;
using System.Text;
using WireText.Cli;
using WireText.Cli.Hosting;
using WireText.Testing;

namespace WireText.Benchmarks;

/// <summary>Sends texts with mistakes in them through the commands, in process, and counts what came of it.</summary>
/// <remarks>
/// Each input goes through <c>check</c> and through one run of <see cref="Others"/> or <see cref="Slow"/>, which take turns.
/// <c>dotnet run -c Release --project tests/WireText.Benchmarks -- fuzz COUNT [FIRST]</c>. Input number N is the same in every run, so what a
/// failure names is replayed by <c>fuzz 1 N</c>.
/// </remarks>
internal static class FuzzedRuns
{
    private static readonly string[] Check = ["check", "-"];

    /// <summary>Every other run of a command that reads a wiring, as it reads one from standard input.</summary>
    private static readonly string[][] Others =
    [
        ["check", "--format", "json", "--harmless", "-"],
        ["check", "--format", "sarif", "--strict", "-"],
        ["positions", "-"],
        ["positions", "--expect", "-"],
        ["bench", "-"],
        ["draw", "--effort", "quick", "-"],
        ["draw", "--effort", "quick", "--measure", "--trace", "rest", "-"],
        ["diagnose", "-"],
        ["propose", "-"],
        ["template", "-"],
        ["page", "-"],
        ["format", "-"],
        ["flatten", "-"],
        ["compare", "-", "../1-one-pickup.wiring"],
        ["response", "-"],
        ["export", "--spice", "-"],
    ];

    /// <summary>The runs that lay wires out at full effort: some hundred times as slow, so one of them comes in their place at times.</summary>
    private static readonly string[][] Slow =
    [
        ["draw", "-"],
        ["draw", "--views", "positions", "-"],
        ["sheet", "-"],
        ["arrange", "-"],
    ];

    /// <summary>Every how many inputs a run of <see cref="Slow"/> comes. Chosen: it has no factor in common with the number of the others.</summary>
    private const int SlowEvery = 61;

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
        "\nplace vol at 40,60\n",
    ];

    /// <returns>The exit code: 0 when every run ended with a code of its own.</returns>
    public static int Run(int count, int first)
    {
        var texts = Repository
            .RightAndWrongExamples.Concat(Repository.FilesIn("docs/slips", "*.wiring"))
            .Select(File.ReadAllText)
            .ToArray();
        var runs = new SortedDictionary<string, CountedRun>(StringComparer.Ordinal);
        for (var number = first; number < first + count; number++)
        {
            var input = Mutated(texts, number);
            foreach (var command in (string[][])[Check, OtherOf(number)])
            {
                var name = string.Join(' ', command);
                if (!runs.TryGetValue(name, out var run))
                {
                    runs.Add(name, run = new CountedRun());
                }

                var began = Stopwatch.GetTimestamp();
                try
                {
                    run.Count(CliProgram.Run(command, new MemoryHost(input)));
                }
                catch (Exception e) when (e is not OutOfMemoryException)
                {
                    run.Failures++;
                    Say($"input {number}, {name}: {e.GetType().Name}: {e.Message}");
                }

                run.Took(Stopwatch.GetElapsedTime(began), number);
            }
        }

        foreach (var (name, run) in runs)
        {
            Say($"{name}: {run}");
        }

        var failures = runs.Values.Sum(run => run.Failures);
        Say(
            $"{count} inputs from {first} on, each through check and one of {Others.Length + Slow.Length} other runs; {failures} runs ended with an exception"
        );
        return failures == 0 ? 0 : 1;
    }

    private static string[] OtherOf(int number) =>
        number % SlowEvery == 0 ? Slow[number / SlowEvery % Slow.Length] : Others[number % Others.Length];

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

    /// <summary>What came of the runs of one command.</summary>
    private sealed class CountedRun
    {
        private readonly SortedDictionary<int, int> codes = [];
        private TimeSpan all;
        private TimeSpan longest;
        private int slowest;

        /// <summary>Runs that ended with an exception and no exit code.</summary>
        public int Failures { get; set; }

        public void Count(int code) => codes[code] = codes.GetValueOrDefault(code) + 1;

        public void Took(TimeSpan time, int number)
        {
            all += time;
            if (time > longest)
            {
                (longest, slowest) = (time, number);
            }
        }

        public override string ToString() =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"{string.Join(", ", codes.Select(code => $"{code.Value} × exit code {code.Key}"))}; {all.TotalSeconds:0} s, at most {longest.TotalSeconds:0.0} s (input {slowest})"
            );
    }

    /// <summary>A console in memory, with a text on its input.</summary>
    private sealed class MemoryHost(string input) : ICliHost
    {
        public Stream Input { get; } = new MemoryStream(Encoding.UTF8.GetBytes(input));

        public Stream Output { get; } = new MemoryStream();

        public Stream Error { get; } = new MemoryStream();

        public bool IsTerminal => false;

        public bool IsErrorTerminal => false;

        public string WorkingFolder => Repository.PathOf("examples", "mods");

        public string? Variable(string name) => null;
    }
}
