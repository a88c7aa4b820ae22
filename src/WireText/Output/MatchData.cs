using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using WireText.Matching;

namespace WireText.Output;

/// <summary>Writes for other programs which part of a bin goes where. <c>docs/match.md</c> describes both forms.</summary>
public static class MatchData
{
    /// <summary>Grows when a reader would have to change.</summary>
    public const int Version = 1;

    /// <summary>A row for each part of each instrument, with commas (RFC 4180, lines ending in LF).</summary>
    public static string WriteCsv(MatchPlan plan)
    {
        var text = new StringBuilder("instrument,part,name,value,holds\n");
        for (var i = 0; i < plan.Instruments.Length; i++)
        {
            var one = plan.Instruments[i];
            for (var slot = 0; slot < plan.Slots.Length; slot++)
            {
                string[] cells =
                [
                    (i + 1).ToString(CultureInfo.InvariantCulture),
                    plan.Slots[slot].Part.Name,
                    one.Parts[slot].Name,
                    one.Parts[slot].Value.ToString("R", CultureInfo.InvariantCulture),
                    one.Holds ? "yes" : "no",
                ];
                text.Append(string.Join(',', cells.Select(CsvCell.Of))).Append('\n');
            }
        }

        return text.ToString();
    }

    public static string WriteJson(MatchPlan plan)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteNumber("asked", plan.Count);
            json.WriteNumber("whole", plan.Instruments.Length);
            json.WriteNumber("holding", plan.Holding);
            json.WriteBoolean("proven", plan.IsExact);
            PositionData.WriteFigure(json, "cost", plan.Cost);
            PositionData.WriteFigure(json, "leastCost", plan.LeastCost);
            json.WriteStartArray("instruments");
            foreach (var one in plan.Instruments)
            {
                Write(json, plan, one);
            }

            json.WriteEndArray();
            json.WriteStartArray("leftOver");
            foreach (var part in plan.LeftOver)
            {
                json.WriteStringValue(part.Name);
            }

            json.WriteEndArray();
            json.WriteStartArray("wanted");
            foreach (var wanted in plan.Wanted)
            {
                Write(json, wanted);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void Write(Utf8JsonWriter json, MatchPlan plan, MatchedInstrument one)
    {
        json.WriteStartObject();
        json.WriteStartObject("parts");
        for (var slot = 0; slot < plan.Slots.Length; slot++)
        {
            json.WriteString(plan.Slots[slot].Part.Name, one.Parts[slot].Name);
        }

        json.WriteEndObject();
        json.WriteBoolean("holds", one.Holds);
        PositionData.WriteFigure(json, "cost", one.Cost);
        json.WriteStartArray("figures");
        for (var goal = 0; goal < plan.Goals.Length; goal++)
        {
            json.WriteStartObject();
            json.WriteString("wanted", plan.Goals[goal].Words);
            PositionData.WriteFigure(json, "figure", double.IsFinite(one.Figures[goal]) ? one.Figures[goal] : null);
            PositionData.WriteFigure(json, "deviation", one.Deviations[goal]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, WantedPart wanted)
    {
        json.WriteStartObject();
        json.WriteString("part", wanted.Slot.Part.Name);
        json.WriteString("kind", wanted.Slot.Part.Kind);
        json.WriteNumber("count", wanted.Count);
        PositionData.WriteFigure(json, "least", wanted.Least);
        PositionData.WriteFigure(json, "most", wanted.Most);
        json.WritePropertyName("instrument");
        if (wanted.Instrument is { } instrument)
        {
            json.WriteNumberValue(instrument + 1);
        }
        else
        {
            json.WriteNullValue();
        }

        json.WriteEndObject();
    }
}
