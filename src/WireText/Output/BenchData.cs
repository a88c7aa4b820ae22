using System.Globalization;
using System.Text;
using WireText.Electrical.BenchPlans;
using WireText.Electrical.Solving;

namespace WireText.Output;

/// <summary>Writes a bench plan for other programs, as tables with commas (RFC 4180, lines ending in LF). <c>docs/bench.md</c> describes both.</summary>
public static class BenchData
{
    /// <summary>The readings, in ohms with four significant figures; no reading is <c>none</c>, what is not computed an empty cell.</summary>
    public static string WriteReadings(BenchPlan plan)
    {
        var sheet = new BenchSheet(plan);
        var text = new StringBuilder();
        AppendLine(
            text,
            [
                "number",
                .. plan.Moved.Select(control => control.Name),
                "dials",
                "from",
                "to",
                "reads_ohm",
                "reads_least_ohm",
                "reads_most_ohm",
                "range_ohm",
                "assumed",
                "found",
            ]
        );
        for (var i = 0; i < plan.Readings.Length; i++)
        {
            var reading = plan.Readings[i];
            AppendLine(
                text,
                [
                    BenchWords.NumberOf(i),
                    .. sheet.PositionsIn(reading.State),
                    BenchSheet.DialsOf(reading),
                    plan.Circuit.NameOf(reading.Points.Probe),
                    plan.Circuit.NameOf(reading.Points.Reference),
                    Ohms(reading.Expected, expected => expected.Ohms),
                    Ohms(reading.Expected, expected => expected.Least),
                    Ohms(reading.Expected, expected => expected.Most),
                    Figure(reading.Range),
                    reading.IsAssumed ? "yes" : "no",
                    "",
                ]
            );
        }

        return text.ToString();
    }

    /// <summary>A line for each fault: its group, or nothing where the meter does not see it, what it is, and the wrong readings.</summary>
    public static string WriteFaults(BenchPlan plan)
    {
        var sheet = new BenchSheet(plan);
        var text = new StringBuilder();
        AppendLine(text, ["group", "fault", "wrong_readings"]);
        for (var i = 0; i < plan.Faults.Groups.Length; i++)
        {
            var group = plan.Faults.Groups[i];
            foreach (var fault in group.Faults)
            {
                AppendLine(
                    text,
                    [BenchWords.NumberOf(i), BenchWords.Of(fault, plan.Circuit), BenchWords.WrongOf(group)]
                );
            }
        }

        foreach (var fault in plan.Faults.Unseen)
        {
            AppendLine(text, ["", BenchWords.Of(fault, plan.Circuit), ""]);
        }

        return text.ToString();
    }

    private static string Ohms(Reading? reading, Func<Reading, double> value) =>
        reading switch
        {
            null => "",
            { Kind: ReadingKind.None } => "none",
            { } read => Figure(value(read)),
        };

    private static string Figure(double ohms) =>
        double.Parse(ohms.ToString("G4", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            .ToString(CultureInfo.InvariantCulture);

    private static void AppendLine(StringBuilder text, IEnumerable<string> cells) =>
        text.Append(string.Join(',', cells.Select(CsvCell.Of))).Append('\n');
}
