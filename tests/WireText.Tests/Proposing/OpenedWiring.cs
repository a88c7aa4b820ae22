using System.Text.RegularExpressions;
using WireText.Circuits;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Proposing;

/// <summary>A right circuit with the wires on some of its controls taken out, and asked for again.</summary>
internal static partial class OpenedWiring
{
    /// <param name="example">The name of an example.</param>
    /// <param name="find">What stands behind <c>find</c>: controls, and lugs behind <c>at</c>.</param>
    public static string OfExample(string example, string find) =>
        Of(File.ReadAllText(Repository.PathOf("examples", example + ".wiring")), find);

    /// <param name="withEnds">True to say behind <c>at</c> which lugs the wires led to.</param>
    public static string Of(string text, string find, bool withEnds = false)
    {
        var circuit = Compilation.Of(new SourceText("whole.wiring", text), NoSources.Instance).Circuit!;
        var open = find.Split(" at ")[0]
            .Split(' ')
            .Select(name => circuit.FindControl(name)!)
            .SelectMany(control => control.Positions)
            .SelectMany(position => position.Closed)
            .SelectMany(group => group)
            .Select(circuit.NameOf)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        if (withEnds && EndsOf(circuit, open) is { Count: > 0 } ends)
        {
            find += $" at {string.Join(' ', ends)}";
        }

        var lines = text.TrimEnd('\n').Split('\n').SelectMany(line => LeftOf(line, open));
        return $"{string.Join('\n', lines)}\nfind {find}\n";
    }

    /// <summary>How many stretches end on the lugs of controls: what the hand has done there.</summary>
    public static int JointsByHand(string example, string find)
    {
        var whole = File.ReadAllText(Repository.PathOf("examples", example + ".wiring"));
        var before = Compilation.Of(new SourceText("whole.wiring", whole), NoSources.Instance).Circuit!;
        var after = Compilation.Of(new SourceText("open.wiring", Of(whole, find)), NoSources.Instance).Circuit!;
        return before.Wires.Length - after.Wires.Length;
    }

    /// <summary>The lugs at the other ends of the wires on open lugs.</summary>
    private static List<string> EndsOf(Circuit circuit, HashSet<string> open) =>
        [
            .. circuit
                .Wires.Where(wire => wire.From >= 0 && wire.To >= 0)
                .SelectMany(wire => new[] { (Here: wire.From, There: wire.To), (Here: wire.To, There: wire.From) })
                .Where(wire => open.Contains(circuit.NameOf(wire.Here)) && !open.Contains(circuit.NameOf(wire.There)))
                .Select(wire => circuit.NameOf(wire.There))
                .Distinct(),
        ];

    /// <summary>What is left of a line: the pieces of a run that lie on other lugs.</summary>
    private static IEnumerable<string> LeftOf(string line, HashSet<string> open)
    {
        if (Wire().Match(line) is not { Success: true } wire)
        {
            yield return line;
            yield break;
        }

        var lugs = wire.Groups["lugs"].Value.Split(" to ").Select(lug => lug.Trim()).ToList();
        if (!lugs.Exists(open.Contains))
        {
            yield return line;
            yield break;
        }

        var piece = new List<string>();
        foreach (var lug in lugs.Append(""))
        {
            if (lug.Length > 0 && !open.Contains(lug))
            {
                piece.Add(lug);
                continue;
            }

            if (piece.Count > 1)
            {
                yield return $"wire {string.Join(" to ", piece)} {wire.Groups["colour"].Value}";
            }

            piece.Clear();
        }
    }

    [GeneratedRegex(@"^wire\s+(?<lugs>\S+(\s+to\s+\S+)+)\s+(?<colour>\S+)", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Wire();
}
