using System.Text.RegularExpressions;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>How long what a finding says may be: a message is one short statement, and its help is read at a glance.</summary>
internal static partial class ShortWords
{
    private const int MostLetters = 99;

    private const int MostLines = 2;

    /// <summary>Fails where words of a finding are too long, and tells all of them; there must be findings.</summary>
    public static void Hold(IEnumerable<Finding> findings)
    {
        var all = findings.ToList();
        Assert.NotEmpty(all);
        Assert.Equal("", string.Join('\n', TooLong(all).Distinct()));
    }

    /// <summary>What is too long of the findings; empty where all is short.</summary>
    private static IEnumerable<string> TooLong(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
        {
            if (finding.Message.Length > MostLetters)
            {
                yield return $"{finding.Id}, {finding.Message.Length} letters: {finding.Message}";
            }

            if (Prose(finding).Count() > MostLines)
            {
                yield return $"{finding.Id}, long help: {finding.Help}";
            }
        }
    }

    /// <summary>The lines of the help that are read: not a definition to paste, nor the numbered ways to choose from with their lines.</summary>
    private static IEnumerable<string> Prose(Finding finding) =>
        (finding.Help ?? "").Split('\n').Where(line => !Pasted().IsMatch(line));

    [GeneratedRegex("^(?: |define |[0-9]+\\. )")]
    private static partial Regex Pasted();
}
