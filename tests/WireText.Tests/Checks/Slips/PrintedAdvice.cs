using System.Text.RegularExpressions;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Tests.Checks.Slips;

/// <summary>Does what the help of a finding says, as who reads it at the bench would.</summary>
internal static partial class PrintedAdvice
{
    /// <summary>
    /// The text with the advice followed, once for each way that it names; none where it names no line and no lugs, and so
    /// leaves the how to the reader.
    /// </summary>
    public static IReadOnlyList<string> Ways(string text, Circuit circuit, Finding finding) =>
        !finding.Suggestions.IsEmpty
            ? [.. finding.Suggestions.Select(one => WiringLines.Text(WiringLines.Of(TextEdit.Apply(text, one.Edits))))]
        : Follow(text, circuit, finding) is { } followed ? [followed]
        : [];

    private static string? Follow(string text, Circuit circuit, Finding finding)
    {
        if (!finding.Edits.IsEmpty)
        {
            return WiringLines.Text(WiringLines.Of(TextEdit.Apply(text, finding.Edits)));
        }

        var help = Otherwise().Replace(finding.Help ?? "", "");
        var lines = WiringLines.Of(text);
        if (TakeOut().Match(help) is { Success: true } taken)
        {
            return Without(lines, LinesIn(taken)) is { } left ? WiringLines.Text(left) : null;
        }

        lines = WiringLines.Stretches(lines);
        var done =
            Rewire().Match(help) is { Success: true } rewired ? Rewired(lines, circuit, finding, LinesIn(rewired))
            : OtherEnd().Match(help) is { Success: true } brought ? OnOtherEnd(lines, Names(brought), LinesIn(brought))
            : OnItsPart().Match(help) is { Success: true } instead ? Replaced(lines, LinesIn(instead), lug: 0)
            : Both().Match(help) is { Success: true } both ? OnTheOther(lines, finding, LinesIn(both))
            : OnItsEnd().Match(help) is { Success: true } moved ? Replaced(lines, LinesIn(moved), lug: ^1)
            : Between().Match(help) is { Success: true } cap ? PutBetween(lines, circuit, cap)
            : Besides().Match(help) is { Success: true } added ? [.. lines, .. LinesIn(added)]
            : Exchange().Match(help) is { Success: true } pair ? Exchanged(lines, Names(pair))
            : Move().Match(help) is { Success: true } move ? Moved(lines, Names(move))
            : Join().Match(help) is { Success: true } join ? Joined(lines, circuit, Names(join))
            : null;
        return done is null ? null : WiringLines.Text(done);
    }

    private static string[] LinesIn(Match match) =>
        match.Groups["lines"].Value.Split("; ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static (string A, string B) Names(Match match) => (match.Groups["a"].Value, match.Groups["b"].Value);

    private static List<string>? Without(List<string> lines, string[] taken)
    {
        foreach (var line in taken)
        {
            var at = lines.LastIndexOf(line);
            if (at < 0)
            {
                return null;
            }

            lines.RemoveAt(at);
        }

        return lines;
    }

    /// <summary>All wires of the part that is blamed go; what is written comes.</summary>
    private static List<string> Rewired(List<string> lines, Circuit circuit, Finding finding, string[] written)
    {
        var part = finding.Subjects is [{ Kind: SubjectKind.Part } subject, ..] ? subject.Name : "";
        var start = circuit.FindPart(part) is null ? "\n" : part + ".";
        lines.RemoveAll(line =>
            WiringLines.IsWire(line)
            && WiringLines.LugsOf(line).Any(lug => lug.StartsWith(start, StringComparison.Ordinal))
        );
        return WithParts(lines, written);
    }

    /// <summary>What is written takes the place of the wires that end on its first lugs, or on its last.</summary>
    private static List<string> Replaced(List<string> lines, string[] written, Index lug)
    {
        var ends = written.Where(WiringLines.IsWire).Select(line => WiringLines.LugsOf(line)[lug]).ToHashSet();
        lines.RemoveAll(line => WiringLines.IsWire(line) && WiringLines.LugsOf(line).Any(ends.Contains));
        return WithParts(lines, written);
    }

    /// <summary>Each wire or lead that is written was on one of the two lugs that the finding marks, and is on the other now.</summary>
    private static List<string> OnTheOther(List<string> lines, Finding finding, string[] written)
    {
        var marked = finding.Subjects.Select(subject => subject.Name).ToList();
        foreach (var line in written)
        {
            var words = WiringLines.Words(line).Where(word => word != "wire").ToList();
            var (own, to) = (words[0], words[2]);
            var from = marked.Find(lug => lug != to) ?? to;
            var at = lines.FindIndex(old => IsSoldered(old) && Holds(old, own) && Holds(old, from));
            if (at >= 0)
            {
                lines[at] = string.Join(' ', WiringLines.Words(lines[at]).Select(word => word == from ? to : word));
            }
        }

        return lines;

        // A lead is told by its part: the lines of parts that hang name no leads.
        static bool Holds(string line, string lug) =>
            WiringLines.Words(line) is var words && (words.Contains(lug) || words.Contains(lug.Split('.')[0]));
    }

    /// <summary>What is written takes the place of the stretch between two lugs.</summary>
    private static List<string>? OnOtherEnd(List<string> lines, (string A, string B) names, string[] written) =>
        lines.RemoveAll(line =>
            WiringLines.IsWire(line)
            && WiringLines.LugsOf(line) is var lugs
            && lugs.Contains(names.A)
            && lugs.Contains(names.B)
        ) > 0
            ? [.. lines, .. written]
            : null;

    /// <summary>A part's line takes the place of the line with its name.</summary>
    private static List<string> WithParts(List<string> lines, string[] written)
    {
        foreach (var line in written)
        {
            var at = WiringLines.IsWire(line) ? -1 : lines.FindIndex(old => WiringLines.NamesAlike(old, line));
            if (at < 0)
            {
                lines.Add(line);
            }
            else
            {
                lines[at] = line;
            }
        }

        return lines;
    }

    private static List<string> Exchanged(List<string> lines, (string A, string B) names) =>
        [.. lines.Select(line => IsSoldered(line) ? WiringLines.Exchanged(line, names.A, names.B) : line)];

    private static List<string> Moved(List<string> lines, (string A, string B) names) =>
        [
            .. lines.Select(line =>
                IsSoldered(line)
                    ? string.Join(' ', WiringLines.Words(line).Select(word => word == names.A ? names.B : word))
                    : line
            ),
        ];

    /// <summary>A part in the way between two lugs: the wire that joins them goes, and a name that is taken gets a number.</summary>
    private static List<string> PutBetween(List<string> lines, Circuit circuit, Match match)
    {
        var (a, b) = Names(match);
        lines.RemoveAll(line =>
            WiringLines.IsWire(line) && WiringLines.LugsOf(line) is var lugs && lugs.Contains(a) && lugs.Contains(b)
        );
        var name = match.Groups["name"].Value;
        return
        [
            .. lines,
            $"cap {(circuit.FindPart(name) is null ? name : name + "2")} {match.Groups["value"]} from {a} to {b}",
        ];
    }

    /// <summary>A wire between two lugs; a lead that is soldered somewhere is joined there.</summary>
    private static List<string> Joined(List<string> lines, Circuit circuit, (string A, string B) names)
    {
        return [.. lines, $"wire {LugOf(names.A)} to {LugOf(names.B)} black"];

        string LugOf(string name) =>
            circuit.FindLug(name) is { IsLead: true } lead
            && circuit.Wires.FirstOrDefault(wire => wire.Touches(lead.Index)) is { } wire
                ? circuit.NameOf(wire.From == lead.Index ? wire.To : wire.From)
                : name;
    }

    private static bool IsSoldered(string line) =>
        WiringLines.IsWire(line)
        || line.StartsWith("splice ", StringComparison.Ordinal)
        || line.Contains(" from ", StringComparison.Ordinal);

    /// <summary>True where one of two ways is to be chosen, and a line stands for one of them alone.</summary>
    public static bool IsChoice(Finding finding) =>
        finding.Suggestions.Length > 1
        || finding.Help?.Contains("; if it says so, write ", StringComparison.Ordinal) == true
        || finding.Suggestions.IsEmpty
            && finding.Help?.Contains(", or name them in the order of what is heard: ", StringComparison.Ordinal)
                == true;

    /// <summary>What is offered to who meant what is there.</summary>
    [GeneratedRegex(
        "(?:[,;] or (?:write: allow|write turns-back|if this is|take the claim).*|, and to nothing else)$",
        RegexOptions.Singleline
    )]
    private static partial Regex Otherwise();

    [GeneratedRegex("^take out(?: one)?: (?<lines>.+)$", RegexOptions.ExplicitCapture)]
    private static partial Regex TakeOut();

    [GeneratedRegex(
        "^(?:lift its wires and write|move its wires to tip and sleeve): (?<lines>.+)$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Rewire();

    [GeneratedRegex(
        "^(?:take the lead off the signal|move the lead|let the plug switch it|turn it round|hang it there|take one that is open until pressed"
            + "|write|exchange the throws, or name them in the order of what is heard): (?<lines>.+)$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex OnItsPart();

    [GeneratedRegex(
        "^move the wire from '(?<a>[\\w.-]+)' to '(?<b>[\\w.-]+)': (?<lines>.+)$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex OtherEnd();

    [GeneratedRegex("^move its wire: (?<lines>.+)$", RegexOptions.ExplicitCapture)]
    private static partial Regex OnItsEnd();

    [GeneratedRegex("^exchange them: (?<lines>.+)$", RegexOptions.ExplicitCapture)]
    private static partial Regex Both();

    [GeneratedRegex(
        "^put a capacitor in its way: cap (?<name>\\S+) (?<value>\\S+) from (?<a>\\S+) to (?<b>\\S+)$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Between();

    [GeneratedRegex(
        "^(?:solder it|solder a ground wire(?: past the switch)?|ground the free end|join the two loose ends): (?<lines>.+)$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Besides();

    [GeneratedRegex(
        "^exchange (?:the leads |what is on |their leads: )?'?(?<a>[\\w.-]+)'? (?:and|with) '?(?<b>[\\w.-]+)'?$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Exchange();

    [GeneratedRegex("^move what is on '(?<a>[\\w.-]+)' to '(?<b>[\\w.-]+)'$", RegexOptions.ExplicitCapture)]
    private static partial Regex Move();

    [GeneratedRegex("^join '(?<a>[\\w.-]+)' with '(?<b>[\\w.-]+)'$", RegexOptions.ExplicitCapture)]
    private static partial Regex Join();
}
