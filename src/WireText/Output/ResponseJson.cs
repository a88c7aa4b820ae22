using System.Buffers;
using System.Text;
using System.Text.Json;
using WireText.Circuits;
using WireText.Electrical.Responses;
using WireText.Electrical.Sound;

namespace WireText.Output;

/// <summary>Writes a study as JSON for other programs. <c>docs/response.md</c> describes it.</summary>
public static class ResponseJson
{
    /// <summary>Grows when a reader would have to change.</summary>
    public const int Version = 1;

    public static string Write(ResponseStudy study)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteString("circuit", study.Circuit.Title);
            if (study.Circuit.JackToName() is { } jack)
            {
                json.WriteString("jack", jack);
            }

            json.WriteStartObject("load");
            json.WriteNumber("cableFarads", study.Circuit.Surroundings.CableFarads);
            json.WriteNumber("inputOhms", study.Circuit.Surroundings.InputOhms);
            json.WriteEndObject();
            WriteNumbers(json, "hertz", ResponseStudy.Hertz);
            json.WriteStartArray("curves");
            foreach (var curve in study.Curves)
            {
                Write(json, study.Circuit, curve);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void Write(Utf8JsonWriter json, Circuit circuit, ResponseCurve curve)
    {
        json.WriteStartObject();
        json.WriteString("label", curve.Label);
        json.WriteStartObject("positions");
        foreach (var control in circuit.Controls)
        {
            json.WriteString(control.Name, StateText.PositionOf(control, curve.State));
        }

        json.WriteEndObject();
        json.WriteStartObject("dials");
        foreach (var dial in circuit.Dials)
        {
            json.WriteNumber(dial.Name, Rounded(curve.State.Travels[dial.Index]));
        }

        json.WriteEndObject();
        json.WriteString("change", curve.Change);
        json.WriteString("outcome", WordFor(curve.Outcome));
        json.WriteString("heard", curve.Heard);
        json.WriteStartArray("assumed");
        foreach (var coil in curve.AssumedCoils)
        {
            json.WriteStringValue(coil);
        }

        json.WriteEndArray();
        if (curve.Peak is { } peak)
        {
            json.WriteStartObject("peak");
            json.WriteNumber("hertz", Rounded(peak.Hertz));
            json.WriteNumber("decibels", Rounded(peak.Decibels));
            json.WriteNumber("heightDecibels", Rounded(peak.HeightDecibels));
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("peak");
        }

        if (curve.Decibels is { } levels)
        {
            WriteNumbers(json, "decibels", levels);
        }
        else
        {
            json.WriteNull("decibels");
        }

        if (curve is { Least: { } least, Most: { } most })
        {
            json.WriteStartArray("unknown");
            foreach (var element in curve.InDoubt)
            {
                json.WriteStringValue(element.Name);
            }

            json.WriteEndArray();
            WriteNumbers(json, "leastDecibels", least);
            WriteNumbers(json, "mostDecibels", most);
        }

        json.WriteEndObject();
    }

    private static void WriteNumbers(Utf8JsonWriter json, string name, IEnumerable<double> values)
    {
        // In one line: an indented array of 400 numbers has 400 lines.
        var numbers = values.Select(value =>
            Rounded(value).ToString(System.Globalization.CultureInfo.InvariantCulture)
        );
        json.WritePropertyName(name);
        json.WriteRawValue($"[{string.Join(", ", numbers)}]");
    }

    /// <summary>As many digits as mean something; the last ones of a logarithm differ from machine to machine.</summary>
    private static decimal Rounded(double value) => decimal.Round((decimal)value, 3);

    private static string WordFor(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound => "sound",
            Outcome.Short or Outcome.Quiet => "silence",
            Outcome.Dead => "dead",
            Outcome.Open => "open",
            _ => "not computed",
        };
}
