using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Makes one list of what a check finds at several jacks: one cause is told once, with the jacks that it is true of.</summary>
internal static class JackFindings
{
    /// <summary>What is found at any jack; what marks the same is one finding. A jack is named where not all are meant.</summary>
    public static IEnumerable<Finding> AtEach(StudyContext context, Func<StudyContext, IEnumerable<Finding>> find)
    {
        var jacks = context.Jacks;
        return jacks is [var only]
            ? find(only)
            : jacks
                .SelectMany(jack => Keyed(find(jack)).Select(found => (Jack: jack, found.Key, found.Finding)))
                .GroupBy(found => found.Key)
                .Select(same =>
                    Named(same.First().Finding, [.. same.Select(found => found.Jack.JackName)], jacks.Length)
                );
    }

    /// <summary>What is found at the first jack and, in the same words, at every other.</summary>
    public static IEnumerable<Finding> AtAll(StudyContext context, Func<StudyContext, IEnumerable<Finding>> find)
    {
        var jacks = context.Jacks;
        if (jacks is [var only])
        {
            return find(only);
        }

        List<HashSet<(SourceLocation, string)>> others =
        [
            .. jacks
                .Skip(1)
                .Select(jack => find(jack).Select(finding => (finding.Location, finding.Message)).ToHashSet()),
        ];
        return find(jacks[0])
            .Where(finding => others.TrueForAll(there => there.Contains((finding.Location, finding.Message))));
    }

    /// <summary>Two findings of one jack that mark the same are two: the first of one jack is the first of another.</summary>
    private static IEnumerable<((SourceLocation, string, int) Key, Finding Finding)> Keyed(
        IEnumerable<Finding> findings
    )
    {
        var met = new Dictionary<(SourceLocation, string), int>();
        foreach (var finding in findings)
        {
            var marks = string.Join(' ', finding.Subjects.Select(subject => subject.Name));
            var turn = met.GetValueOrDefault((finding.Location, marks));
            met[(finding.Location, marks)] = turn + 1;
            yield return ((finding.Location, marks, turn), finding);
        }
    }

    private static Finding Named(Finding finding, ImmutableArray<string> jacks, int all) =>
        jacks.Length == all || jacks.Any(jack => Names(finding.Message, jack))
            ? finding
            : finding with
            {
                Message = $"at {Listing.Of(jacks)}: {finding.Message}",
            };

    /// <summary>True when a message speaks of the jack, or of a lug of it.</summary>
    private static bool Names(string message, string jack) =>
        message.Contains($"'{jack}'", StringComparison.Ordinal)
        || message.Contains($"'{jack}.", StringComparison.Ordinal);
}
