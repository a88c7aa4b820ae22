using System.Text;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Writes what there is to say about a kind of finding: the text of <c>explain</c>, and its page in the docs.</summary>
public static class CheckPage
{
    /// <summary>The text of <c>explain</c> in Markdown, ending with a line break.</summary>
    public static string Write(FindingDescription check)
    {
        var page = new StringBuilder();
        page.Append($"# {check.Id}\n\n{Sentence(check.Title)} ({WeightOf(check)}, {WordFor(check.Group)})\n\n");
        page.Append($"{check.Why.Trim()}\n\n");
        if (check.HasExamples)
        {
            page.Append($"It is found in\n\n{Code(check.Bad)}\nand not in\n\n{Code(check.Good)}\n");
        }

        page.Append($"## To mend it\n\n{check.Mend.Trim()}\n");
        return page.ToString();
    }

    /// <summary>The page of the docs: the text of <c>explain</c>, and what is left out while the finding stands.</summary>
    public static string WriteForDocs(FindingDescription description) =>
        description is not CheckDescription { Silences.IsEmpty: false } check
            ? Write(description)
            : $"{Write(check)}\n## What waits for it\n\nWhile it stands, {Shadows(check)}: mended, it may take them with it.\n";

    private static string Shadows(CheckDescription check)
    {
        var clauses = check
            .Silences.GroupBy(silence => (silence.Check is null, silence.Reach, silence.OnlyByErrors))
            .Select(group =>
            {
                var names = string.Join(", ", group.Select(silence => silence.Check));
                var verb = group.Skip(1).Any() ? "are" : "is";
                return group.First() switch
                {
                    { Check: null, Reach: SilenceReach.SamePart } => "whatever else is found on the part is left out",
                    { Check: null } silence => $"nothing else is reported but {string.Join(" and ", silence.Except)}",
                    { Reach: SilenceReach.Anywhere, OnlyByErrors: true } =>
                        $"{names} {verb} left out if this is an error",
                    { Reach: SilenceReach.Anywhere } => $"{names} {verb} left out",
                    { Reach: SilenceReach.SamePart } => $"{names} {verb} left out on the same part",
                    _ => $"{names} {verb} left out on the same part or net",
                };
            });
        return string.Join("; ", clauses);
    }

    /// <summary>The table of all checks in Markdown, one row each, ending with a line break.</summary>
    public static string WriteTable(IEnumerable<FindingDescription> checks)
    {
        var table = new StringBuilder(
            "# What is checked\n\n| finding | weight | about | says |\n| --- | --- | --- | --- |\n"
        );
        foreach (var check in checks)
        {
            table.Append(
                $"| [{check.Id}]({check.Id}.md) | {WeightOf(check)} | {WordFor(check.Group)} | {check.Title} |\n"
            );
        }

        return table.ToString();
    }

    /// <summary>A line a finding for a terminal, under what each is about, ending with a line break.</summary>
    public static string WriteList(IReadOnlyCollection<FindingDescription> checks)
    {
        var width = checks.Max(check => check.Id.Length);
        var list = new StringBuilder();
        foreach (var group in checks.GroupBy(check => check.Group).OrderBy(group => group.Key))
        {
            list.Append(WordFor(group.Key)).Append('\n');
            foreach (var check in group)
            {
                list.Append($"    {check.Id.PadRight(width)}  {check.Title} ({WeightOf(check)})\n");
            }
        }

        return list.ToString();
    }

    private static string Code(string marked) =>
        $"```wiring\n{marked.Replace("[|", "", StringComparison.Ordinal).Replace("|]", "", StringComparison.Ordinal).Trim()}\n```\n";

    /// <summary>A title as a sentence.</summary>
    public static string Sentence(string title) => $"{char.ToUpperInvariant(title[0])}{title[1..]}.";

    private static string WeightOf(FindingDescription check) =>
        check.OnlyWhenAsked ? $"{WordFor(check.Severity)} with --harmless" : WordFor(check.Severity);

    private static string WordFor(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            Severity.Note => "note",
            _ => "right",
        };

    private static string WordFor(FindingGroup group) =>
        group switch
        {
            FindingGroup.Text => "text",
            FindingGroup.Connections => "connections",
            FindingGroup.Grounding => "grounding",
            FindingGroup.Switching => "switching",
            FindingGroup.Sound => "sound",
            FindingGroup.Supply => "supply",
            FindingGroup.Values => "values",
            FindingGroup.Building => "building",
            _ => "beliefs",
        };
}
