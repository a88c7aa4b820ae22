using System.Collections.Immutable;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Checks.Slips;

/// <summary>What came of following the advice that a slip is given.</summary>
internal enum AdviceEnd
{
    /// <summary>There is none, or it names no lugs and no line: the how is left to the reader.</summary>
    InWords,

    /// <summary>The circuit does what the right one does.</summary>
    Mends,

    /// <summary>It is still wrong, and that is told.</summary>
    LeavesItWrong,

    /// <summary>It is worse: a new error, or still wrong and nothing said any more.</summary>
    Harms,
}

/// <summary>What the program says of a slip without any claim, and what following that comes to.</summary>
/// <param name="IsDifferent">True when the tests' own solver tells it from the right circuit.</param>
/// <param name="Found">Errors and warnings, the first told first; then notes.</param>
internal sealed record SlipOutcome(Slip Slip, bool IsDifferent, ImmutableArray<Finding> Found, AdviceEnd End)
{
    /// <summary>How often a reader follows what is said and checks again.</summary>
    private const int MostSteps = 5;

    public static SlipOutcome Of(Slip slip)
    {
        var right = File.ReadAllText(Repository.PathOf("docs", "slips", slip.Circuit + ".wiring"));
        var bench = new RightBench(right);
        var text = slip.ApplyTo(right);
        var found = FoundIn(text, Severity.Note);
        return new SlipOutcome(slip, !bench.IsRight(text), found, EndOf(bench, text, found));
    }

    /// <summary>Nothing that is printed may harm; then what the reader comes to who follows the first that can be followed, again and again.</summary>
    private static AdviceEnd EndOf(RightBench bench, string text, ImmutableArray<Finding> found)
    {
        var firsts = found.Select(finding => Follow(bench, text, finding)).OfType<string>().ToList();
        if (firsts.Exists(next => IsWorse(bench, text, next)))
        {
            return AdviceEnd.Harms;
        }

        if (firsts.Count == 0)
        {
            return AdviceEnd.InWords;
        }

        for (var step = 0; step < MostSteps; step++)
        {
            if (
                FoundIn(text).Select(finding => Follow(bench, text, finding)).OfType<string>().FirstOrDefault()
                is not { } next
            )
            {
                break;
            }

            text = next;
            if (bench.IsRight(text))
            {
                return AdviceEnd.Mends;
            }
        }

        return AdviceEnd.LeavesItWrong;
    }

    private static bool IsWorse(RightBench bench, string before, string after)
    {
        if (bench.IsRight(after))
        {
            return false;
        }

        var (was, compiled) = (Compile(before), Compile(after));
        var known = was.Findings.Select(finding => finding.Id).Concat(was.Waiting).ToHashSet(StringComparer.Ordinal);
        var now = FoundIn(after);
        return now.IsEmpty
            || compiled.Findings.Any(finding => finding.Severity == Severity.Error && !known.Contains(finding.Id));
    }

    /// <summary>The text with the advice followed. Of several ways a reader takes the one that is right, and no other.</summary>
    private static string? Follow(RightBench bench, string text, Finding finding) =>
        Compile(text).Circuit is { } circuit && PrintedAdvice.Ways(text, circuit, finding) is [var first, ..] ways
            ? PrintedAdvice.IsChoice(finding)
                ? ways.FirstOrDefault(bench.IsRight)
                : first
            : null;

    private static ImmutableArray<Finding> FoundIn(string text, Severity least = Severity.Warning) =>
        [
            .. Compile(text)
                .Findings.Where(finding => finding.Severity >= least)
                .OrderByDescending(finding => finding.Severity > Severity.Note),
        ];

    private static Compilation Compile(string text) =>
        Compilation.Of(new SourceText("slip.wiring", text), NoSources.Instance);
}
