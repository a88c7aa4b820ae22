using System.Text;
using WireText.Circuits;
using WireText.Electrical.BenchPlans;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes a bench plan for people, to be printed and filled in.</summary>
public static class BenchText
{
    private const int Indent = 4;

    public static string Write(BenchPlan plan)
    {
        var sheet = new BenchSheet(plan);
        var text = new StringBuilder();
        if (plan.Circuit.Title is { } title)
        {
            text.Append(VisibleText.Line(title)).Append("\n\n");
        }

        TextTable.Write(text, sheet.ReadingHeading, sheet.Readings, sheet.ExpectedColumn, below: []);
        TextTable.WriteRemarks(text, [.. sheet.ReadingRemarks()]);
        text.Append('\n');
        TextTable.Write(text, sheet.TapHeading, sheet.Taps, sheet.SoundingColumn, below: []);
        TextTable.WriteRemarks(text, [.. sheet.TapRemarks()]);
        WriteFaults(text, plan.Faults, plan.Circuit);
        return text.ToString();
    }

    private static void WriteFaults(StringBuilder text, FaultTable faults, Circuit circuit)
    {
        text.Append(
            "\nwhat wrong readings point to, where one thing alone is wrong; lines under one head cannot be told apart\n"
        );
        text.Append(new string('-', TextTable.Widest)).Append('\n');
        foreach (var group in faults.Groups)
        {
            Append(text, BenchWords.WrongOf(group), indent: 0);
            AppendAll(text, group.Faults, circuit);
        }

        if (!faults.Unseen.IsEmpty)
        {
            text.Append("\nnot seen by the meter: with these every reading may be as expected\n");
            AppendAll(text, faults.Unseen, circuit);
        }

        if (!faults.IsComplete)
        {
            text.Append("\nthere are more faults than were tried\n");
        }
    }

    private static void AppendAll(StringBuilder text, IEnumerable<Fault> faults, Circuit circuit)
    {
        foreach (var fault in faults)
        {
            Append(text, BenchWords.Of(fault, circuit), Indent);
        }
    }

    private static void Append(StringBuilder text, string sentence, int indent)
    {
        foreach (var line in TextWidth.Wrapped(sentence, TextTable.Widest - indent))
        {
            text.Append(' ', indent).Append(line).Append('\n');
        }
    }
}
