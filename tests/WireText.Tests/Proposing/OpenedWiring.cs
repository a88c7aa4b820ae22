using System.Text.RegularExpressions;
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

    public static string Of(string text, string find)
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
