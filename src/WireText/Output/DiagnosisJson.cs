using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using WireText.Diagnosing;

namespace WireText.Output;

/// <summary>Writes what a diagnosis came to, for other programs. <c>docs/diagnose.md</c> describes it.</summary>
public static class DiagnosisJson
{
    /// <summary>Grows when a reader would have to change.</summary>
    public const int Version = 1;

    public static string Write(Diagnosis diagnosis)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteString("safety", DiagnosisText.Safety);
            json.WriteNumber("findings", diagnosis.Findings);
            json.WriteNumber("faultsTried", diagnosis.FaultsTried);
            json.WriteString("end", WordOf(diagnosis.End));
            json.WriteStartArray("ending");
            foreach (var line in DiagnosisText.Ending(diagnosis))
            {
                json.WriteStringValue(line);
            }

            json.WriteEndArray();
            Write(json, "explanations", diagnosis.Explanations);
            Write(json, "pairs", diagnosis.Pairs);
            Write(json, diagnosis.Next);
            json.WriteStartArray("assumed");
            foreach (var coil in diagnosis.Assumed)
            {
                json.WriteStringValue(coil);
            }

            json.WriteEndArray();
            json.WriteNumber("networks", diagnosis.Work);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void Write(Utf8JsonWriter json, string name, ImmutableArray<Explanation> explanations)
    {
        json.WriteStartArray(name);
        foreach (var one in explanations)
        {
            json.WriteStartObject();
            json.WriteString("kind", WordOf(one.Kind));
            json.WriteNumber("share", Math.Round(one.Share, 4));
            json.WriteStartArray("faults");
            foreach (var words in one.Words)
            {
                json.WriteStringValue(words);
            }

            json.WriteEndArray();
            json.WriteStartArray("wouldAlsoShow");
            foreach (var misfit in one.Misfits)
            {
                json.WriteStartObject();
                json.WriteString("where", misfit.Where);
                json.WriteString("would", misfit.Would);
                json.WriteString("found", misfit.Found);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, NextMeasurement? next)
    {
        if (next is null)
        {
            json.WriteNull("next");
            return;
        }

        json.WriteStartObject("next");
        json.WriteString("where", next.Where);
        json.WriteBoolean("byEar", next.IsByEar);
        json.WriteBoolean("inside", next.IsInside);
        json.WriteStartArray("outcomes");
        foreach (var outcome in next.Outcomes)
        {
            json.WriteStartObject();
            json.WriteString("found", outcome.Text);
            json.WriteStartArray("leaves");
            foreach (var number in outcome.Leaves)
            {
                json.WriteNumberValue(number);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string WordOf(ExplanationKind kind) =>
        kind switch
        {
            ExplanationKind.Fault => "fault",
            ExplanationKind.NothingWrong => "nothing-wrong",
            _ => "outside",
        };

    private static string WordOf(DiagnosisEnd end) =>
        end switch
        {
            DiagnosisEnd.NothingFound => "nothing-found",
            DiagnosisEnd.OneFault => "one-fault",
            DiagnosisEnd.OneGroup => "one-group",
            DiagnosisEnd.NothingWrong => "nothing-wrong",
            DiagnosisEnd.Pairs => "pairs",
            DiagnosisEnd.Outside => "outside",
            DiagnosisEnd.GoOn => "go-on",
            _ => "several",
        };
}
