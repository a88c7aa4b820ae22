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
                WriteDoubts(json, measure);
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
        json.WriteNumber("hardFaults", measure.Faults.Length);
        json.WriteStartObject("faults");
        foreach (var kind in Enum.GetValues<FaultKind>())
        {
            json.WriteStartArray(KeyOf(kind));
            foreach (var fault in measure.FaultsOf(kind))
            {
                WriteThings(json, fault.First, fault.Second, IsOfWiresAlone(fault.Kind));
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void WriteDoubts(Utf8JsonWriter json, PictureMeasure measure)
    {
        json.WriteStartObject("doubts");
        foreach (var kind in Enum.GetValues<DoubtKind>())
        {
            json.WriteStartArray(KeyOf(kind));
            foreach (var doubt in measure.DoubtsOf(kind))
            {
                WriteThings(json, doubt.First, doubt.Second, isOfWiresAlone: false);
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static string KeyOf(DoubtKind kind) =>
        kind switch
        {
            DoubtKind.UnnamedLug => "unnamedLugs",
            DoubtKind.NameNearAnother => "namesNearAnother",
            DoubtKind.NameBehindAWire => "namesBehindAWire",
            DoubtKind.NameOutOfRow => "namesOutOfRow",
            DoubtKind.PartNameApart => "partNamesApart",
            DoubtKind.JointNearName => "jointsNearNames",
            DoubtKind.ShortEnd => "shortEnds",
            DoubtKind.LongLead => "longLeads",
            DoubtKind.CutText => "cutTexts",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "it has no key"),
        };

    private static string KeyOf(FaultKind kind) =>
        kind switch
        {
            FaultKind.MissingWire => "missingWires",
            FaultKind.ExtraWire => "extraWires",
            FaultKind.WrongEnd => "wrongEnds",
            FaultKind.Overlap => "overlaps",
            FaultKind.Crowding => "crowding",
            FaultKind.ThroughBody => "throughBodies",
            FaultKind.FalseJoint => "falseJoints",
            FaultKind.LabelOverlap => "labelOverlaps",
            FaultKind.StrayTag => "strayTags",
            FaultKind.OutsidePage => "outsidePage",
            FaultKind.CrampedHop => "crampedHops",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "it has no key"),
        };

    /// <summary>A pair as two names; a wire, where only wires can be at fault, by its id alone.</summary>
    private static void WriteThings(Utf8JsonWriter json, DrawnThing first, DrawnThing? second, bool isOfWiresAlone)
    {
        if (second is { } other)
        {
            json.WriteStartArray();
            json.WriteStringValue(first.ToString());
            json.WriteStringValue(other.ToString());
            json.WriteEndArray();
        }
        else
        {
            json.WriteStringValue(isOfWiresAlone ? first.Id : first.ToString());
        }
    }

    private static bool IsOfWiresAlone(FaultKind kind) =>
        kind is FaultKind.MissingWire or FaultKind.ExtraWire or FaultKind.WrongEnd or FaultKind.CrampedHop;

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
        WriteNumber(json, "shareOfPage", measure.ShareOfPage);
        WriteNumber(json, "score", measure.Score);
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double value) =>
        json.WriteNumber(name, Math.Round(value, 3, MidpointRounding.AwayFromZero));
}
