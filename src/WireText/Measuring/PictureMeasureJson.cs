using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace WireText.Measuring;

/// <summary>Writes a measure as JSON without reflection.</summary>
internal static class PictureMeasureJson
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write(PictureMeasure measure)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("schema", "wiretext-measure/1");
            if (measure.Error is { } error)
            {
                json.WriteString("error", error);
            }
            else
            {
                WriteWires(json, measure);
                WriteFaults(json, measure);
                WriteQuality(json, measure);
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteWires(Utf8JsonWriter json, PictureMeasure measure)
    {
        json.WriteStartObject("wires");
        if (measure.WiresInSource is { } inSource)
        {
            json.WriteNumber("inSource", inSource);
        }
        else
        {
            json.WriteNull("inSource");
        }

        json.WriteNumber("inPicture", measure.WiresInPicture);
        json.WriteEndObject();
    }

    private static void WriteFaults(Utf8JsonWriter json, PictureMeasure measure)
    {
        json.WriteNumber("hardFaults", measure.HardFaults);
        json.WriteStartObject("faults");
        WriteNames(json, "missingWires", measure.MissingWires);
        WriteNames(json, "extraWires", measure.ExtraWires);
        WriteNames(json, "wrongEnds", measure.WrongEnds);
        WritePairs(json, "overlaps", measure.Overlaps);
        WritePairs(json, "crowding", measure.Crowding);
        WritePairs(json, "throughBodies", measure.ThroughBodies);
        WritePairs(json, "falseJoints", measure.FalseJoints);
        WritePairs(json, "labelOverlaps", measure.LabelOverlaps);
        WriteNames(json, "strayTags", measure.StrayTags);
        WriteNames(json, "outsidePage", measure.OutsidePage);
        WriteNames(json, "crampedHops", measure.CrampedHops);
        json.WriteEndObject();
    }

    private static void WriteQuality(Utf8JsonWriter json, PictureMeasure measure)
    {
        json.WriteStartObject("crossings");
        json.WriteNumber("total", measure.Crossings);
        json.WriteNumber("mostOnOneWire", measure.MostCrossingsOnOneWire);
        WriteNumber(json, "shareOfWiresWithNone", measure.ShareWithoutCrossing);
        json.WriteEndObject();
        json.WriteStartObject("tags");
        json.WriteNumber("wanted", measure.TagsWanted);
        json.WriteNumber("placed", measure.TagsPlaced);
        json.WriteEndObject();
        WriteNumber(json, "bends", measure.Bends);
        WriteNumber(json, "lengthMm", measure.Length);
        WriteNumber(json, "lowerBoundMm", measure.LowerBound);
        WriteNumber(json, "lengthOverLowerBound", measure.LengthOverLowerBound);
        WriteNumber(json, "widthMm", measure.Width);
        WriteNumber(json, "heightMm", measure.Height);
        WriteNumber(json, "areaMm2", measure.Area);
        WriteNumber(json, "score", measure.Score);
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double value) =>
        json.WriteNumber(name, Math.Round(value, 3, MidpointRounding.AwayFromZero));

    private static void WriteNames(Utf8JsonWriter json, string name, ImmutableArray<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }

    private static void WritePairs(Utf8JsonWriter json, string name, ImmutableArray<OffendingPair> pairs)
    {
        json.WriteStartArray(name);
        foreach (var pair in pairs)
        {
            json.WriteStartArray();
            json.WriteStringValue(pair.First);
            json.WriteStringValue(pair.Second);
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }
}
