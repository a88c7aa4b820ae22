namespace WireText.Tests.Checks.Slips;

/// <summary>The lines of a circuit as a technician edits them: words with single blanks, the order of no matter.</summary>
internal static class WiringLines
{
    public static List<string> Of(string text) =>
        [.. text.Split('\n').Select(line => string.Join(' ', Words(line))).Where(line => line.Length > 0)];

    public static string Text(IEnumerable<string> lines) => string.Join('\n', lines) + "\n";

    public static string[] Words(string line) =>
        line.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>The one line that is this, or this with a colour behind it; null when there is none, or several.</summary>
    public static int? IndexOf(List<string> lines, string line)
    {
        var places = Enumerable
            .Range(0, lines.Count)
            .Where(i => lines[i] == line || lines[i].StartsWith(line + " ", StringComparison.Ordinal))
            .ToList();
        return places.Count == 1 ? places[0] : null;
    }

    /// <summary>True when both lines are of one kind and name: two lines of one part.</summary>
    public static bool NamesAlike(string line, string other) => Words(line).Take(2).SequenceEqual(Words(other).Take(2));

    public static bool IsWire(string line) => line.StartsWith("wire ", StringComparison.Ordinal);

    /// <summary>The lugs of a wire's line in order; a run has more than two.</summary>
    public static string[] LugsOf(string wire) => [.. Words(wire)[1..^1].Where(word => word != "to")];

    /// <summary>The lines with each run cut into its single wires, and a cable into those that it holds: one of them can go alone.</summary>
    public static List<string> Stretches(List<string> lines) => [.. lines.SelectMany(Stretches)];

    private static IEnumerable<string> Stretches(string line)
    {
        if (IsWire(line))
        {
            var (lugs, colour) = (LugsOf(line), Words(line)[^1]);
            return lugs.Zip(lugs.Skip(1), (from, to) => $"wire {from} to {to} {colour}");
        }

        var words = Words(line);
        return words is ["cable", var core, "to", var end, var insulation, "braid", var braid, "to", var ground]
            ? [$"wire {core} to {end} {insulation}", $"wire {braid} to {ground} bare"]
            : [line];
    }

    /// <summary>The line with one name in place of another, and the other in place of the one.</summary>
    public static string Exchanged(string line, string one, string other) =>
        string.Join(
            ' ',
            Words(line)
                .Select(word =>
                    word == one ? other
                    : word == other ? one
                    : word
                )
        );
}
