using System.Text.RegularExpressions;

namespace WireText.Tests.Checks.Repairs;

/// <summary>A repair as it is printed in the help of a finding: what a technician would type.</summary>
/// <param name="Lines">The lines that go, and those that come in their place.</param>
internal sealed partial record PrintedRepair(List<(string? Old, List<string> New)> Lines)
{
    /// <summary>Reads every repair that a help text gives.</summary>
    public static List<PrintedRepair> ReadAll(string help)
    {
        var repairs = new List<PrintedRepair>();
        foreach (var line in help.Split('\n'))
        {
            if (line.Contains("makes every claim true: ", StringComparison.Ordinal) || IsNumbered(line))
            {
                repairs.Add(new PrintedRepair([]));
            }

            var words = Place()
                .Replace(line, "")
                .Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            switch (words is [var verb, _] ? verb : "")
            {
                case "replace" or "remove":
                    repairs[^1].Lines.Add((words[1], []));
                    break;
                case "with" or "and":
                    repairs[^1].Lines[^1].New.Add(words[1]);
                    break;
                case "add" when line.StartsWith(' '):
                    repairs[^1].Lines.Add((null, [words[1]]));
                    break;
            }
        }

        return repairs;
    }

    /// <summary>The text with the lines changed; each old line must be there.</summary>
    public string ApplyTo(string text)
    {
        var lines = text.Split('\n').ToList();
        foreach (var (old, now) in Lines)
        {
            var at = old is null ? lines.Count : lines.FindIndex(line => Tidy(line) == old);
            Assert.True(at >= 0, $"no line is '{old}'");
            lines.RemoveRange(at, old is null ? 0 : 1);
            lines.InsertRange(at, now);
        }

        return string.Join('\n', lines) + "\n";
    }

    /// <summary>Where a line is, or is to be added; what it says must be what is there, wherever that is.</summary>
    [GeneratedRegex("  \\((?:below )?line \\d+\\)$")]
    private static partial Regex Place();

    private static bool IsNumbered(string line) => line.Length > 2 && char.IsAsciiDigit(line[0]) && line[1] == '.';

    /// <summary>Single blanks and no comment. No line of the examples has a mark or two blanks within quotes.</summary>
    private static string Tidy(string line) =>
        string.Join(' ', line.Split('#')[0].Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
