using System.Globalization;
using System.Text;
using WireText.Text;

namespace WireText.Tests.Checks.Slips;

/// <summary>The page of slips.</summary>
internal static class SlipPage
{
    public static string Figures(IReadOnlyList<SlipOutcome> all)
    {
        var harmful = all.Where(one => one.Slip.IsHarmful).ToList();
        var found = harmful.Where(one => !one.Found.IsEmpty).ToList();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"""
            | slips | harmless | nothing said of these | harmful | found | advice mends | leaves it wrong | in words | harms |
            | --- | --- | --- | --- | --- | --- | --- | --- | --- |
            | {all.Count} | {all.Count - harmful.Count} | {all.Count(one =>
                !one.Slip.IsHarmful && one.Found.IsEmpty
            )} | {harmful.Count} | {Share(found.Count, harmful.Count)} | {Count(AdviceEnd.Mends)} | {Count(
                AdviceEnd.LeavesItWrong
            )} | {Count(AdviceEnd.InWords)} | {Count(AdviceEnd.Harms)} |
            """
        );

        string Count(AdviceEnd end) => Share(found.Count(one => one.End == end), found.Count);
    }

    public static string Table(IEnumerable<SlipOutcome> all)
    {
        var text = new StringBuilder(
            "| circuit | slip | the mend, by hand | what is said | its advice |\n| --- | --- | --- | --- | --- |"
        );
        foreach (var one in all)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"\n| {one.Slip.Circuit} | {one.Slip.Name} | {one.Slip.Mend ?? "none: it harms nothing"} | {Said(one)} | {WordFor(one)} |"
            );
        }

        return text.ToString();
    }

    private static string Said(SlipOutcome one) =>
        one.Found is [var first, ..]
            ? $"{first.Message} [{first.Id}{(first.Severity == Severity.Note ? ", a note" : "")}]".Replace(
                "|",
                "\\|",
                StringComparison.Ordinal
            )
            : "nothing";

    private static string WordFor(SlipOutcome one) =>
        one.Found.IsEmpty
            ? ""
            : one.End switch
            {
                AdviceEnd.Mends => "mends",
                AdviceEnd.LeavesItWrong => "leaves it wrong",
                AdviceEnd.InWords => "in words",
                _ => "**harms**",
            };

    private static string Share(int part, int whole) =>
        string.Create(CultureInfo.InvariantCulture, $"{part} ({100.0 * part / whole:0.0} %)");
}
