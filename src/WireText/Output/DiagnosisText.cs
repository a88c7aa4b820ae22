using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Diagnosing;

namespace WireText.Output;

/// <summary>Writes what a diagnosis came to, for people.</summary>
public static class DiagnosisText
{
    /// <summary>Stands once before the first advice.</summary>
    public const string Safety =
        "Unplug from the amplifier, battery out: a meter set to ohms never on a powered circuit. Plug back in only to listen.";

    /// <summary>Stands behind every answer.</summary>
    private const string SecondFault = "mend it and measure again: a second fault can hide behind the first";

    /// <summary>Explanations that are told, and lines of one. Chosen: what a bench reads.</summary>
    private const int MostTold = 6;

    private const int MostAlike = 8;

    private const string Indent = "            ";

    public static string Write(Diagnosis diagnosis) => Safety + "\n" + WriteShort(diagnosis);

    /// <summary>The same without the line on safety, where that was printed before.</summary>
    public static string WriteShort(Diagnosis diagnosis)
    {
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"{Counted(diagnosis.Findings, "finding")}; {Counted(diagnosis.FaultsTried, "single fault")} tried\n"
        );
        for (var i = 0; i < Math.Min(MostTold, diagnosis.Explanations.Length); i++)
        {
            Append(text, diagnosis.Explanations[i], i + 1);
        }

        if (diagnosis.Explanations.Length > MostTold)
        {
            var rest = diagnosis.Explanations.Skip(MostTold).Sum(one => one.Share);
            text.Append(
                CultureInfo.InvariantCulture,
                $"      {Percent(rest)}  {diagnosis.Explanations.Length - MostTold} others\n"
            );
        }

        foreach (var pair in diagnosis.Pairs)
        {
            text.Append("two at once  ").Append(string.Join("\n        and  ", pair.Words)).Append('\n');
        }

        foreach (var line in Ending(diagnosis))
        {
            text.Append(line).Append('\n');
        }

        if (diagnosis.Next is { } next)
        {
            Append(text, next);
        }

        if (!diagnosis.Assumed.IsEmpty)
        {
            text.Append("assumed, ±30 %: the resistance of ").Append(string.Join(", ", diagnosis.Assumed)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>What it came to, in a sentence or two.</summary>
    internal static IEnumerable<string> Ending(Diagnosis diagnosis)
    {
        switch (diagnosis.End)
        {
            case DiagnosisEnd.OneFault:
                yield return "1 explains it";
                yield return SecondFault;
                break;
            case DiagnosisEnd.OneGroup:
                yield return "no measurement tells these apart: mend what all of 1 have in common, or each in turn";
                yield return SecondFault;
                break;
            case DiagnosisEnd.NothingWrong:
                yield return "nothing is wrong within tolerance, as far as was measured";
                break;
            case DiagnosisEnd.Outside:
                yield return "outside the list: no fault that is known here explains it";
                break;
            case DiagnosisEnd.Pairs:
                yield return diagnosis.Pairs.Length == 1
                    ? "no single fault explains it; this pair does"
                    : "no single fault explains it; these pairs do";
                yield return SecondFault;
                break;
            case DiagnosisEnd.Several:
                yield return "several remain, and nothing cheap tells them apart";
                break;
        }
    }

    /// <summary>What to do, in words.</summary>
    internal static string Doing(NextMeasurement next) =>
        next.IsByEar ? $"listen at {next.Where}, tap each pole piece"
        : next.IsInside ? $"open the cavity, dials at 5: {next.Where}"
        : next.Where;

    private static void Append(StringBuilder text, Explanation one, int number)
    {
        var head = string.Create(CultureInfo.InvariantCulture, $"{number, 3}.  {Percent(one.Share)}  ");
        ImmutableArray<string> words = one.Kind switch
        {
            ExplanationKind.NothingWrong => ["nothing is wrong"],
            ExplanationKind.Outside => ["outside the list"],
            _ => one.Words.Length > MostAlike
                ?
                [
                    .. one.Words[..MostAlike],
                    string.Create(CultureInfo.InvariantCulture, $"{one.Words.Length - MostAlike} others like these"),
                ]
                : one.Words,
        };
        text.Append(head).Append(string.Join("\n" + Indent, words)).Append('\n');
        if (!one.Misfits.IsEmpty)
        {
            var misfits = one.Misfits.Select(misfit => $"{misfit.Where}: {misfit.Would}, not {misfit.Found}");
            text.Append(Indent).Append("would also show  ").Append(string.Join(";  ", misfits)).Append('\n');
        }
    }

    private static void Append(StringBuilder text, NextMeasurement next)
    {
        text.Append("measure next: ").Append(Doing(next)).Append('\n');
        var width = next.Outcomes.Select(outcome => outcome.Text.Length).DefaultIfEmpty(0).Max();
        foreach (var outcome in next.Outcomes)
        {
            var left = outcome
                .Leaves.Where(leaves => leaves <= MostTold)
                .Select(leaves => leaves.ToString(CultureInfo.InvariantCulture))
                .Concat(outcome.Leaves.Any(leaves => leaves > MostTold) ? ["others"] : []);
            text.Append("      ")
                .Append(outcome.Text.PadRight(width))
                .Append("  leaves ")
                .Append(string.Join(", ", left))
                .Append('\n');
        }
    }

    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100, 3:0} %");

    private static string Counted(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
