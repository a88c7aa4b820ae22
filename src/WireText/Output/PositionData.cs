using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Output;

/// <summary>Writes a table of positions for other programs. <c>docs/positions.md</c> describes both forms.</summary>
/// <remarks>SI units; four significant figures, so that no machine's last digit shows.</remarks>
public static class PositionData
{
    /// <summary>Grows when a reader would have to change.</summary>
    public const int Version = 1;

    private static readonly string[] Columns =
    [
        "heard",
        "outcome",
        "level_db",
        "hum",
        "hum_db",
        "reads_ohm",
        "reads_least_ohm",
        "reads_most_ohm",
        "peak_hz",
        "peak_db",
        "assumed",
        "notes",
    ];

    /// <summary>A table with commas (RFC 4180, lines ending in LF). What is not there is an empty cell; no reading is <c>none</c>.</summary>
    public static string WriteCsv(PositionTable table)
    {
        var controls = table.Circuit.Controls.Where(control => !control.IsPlug).ToList();
        var text = new StringBuilder();
        var jack = table.HasJacks ? [PositionSheet.JackColumn] : Array.Empty<string>();
        AppendLine(text, jack.Concat(controls.Select(control => control.Name)).Concat(Columns));
        foreach (var row in PositionSheet.RowsOf(table))
        {
            AppendLine(
                text,
                PositionSheet
                    .JackOf(table.Circuit, row)
                    .Concat(controls.Select(control => PositionSheet.PositionOf(control, row)))
                    .Concat(Cells(table, row))
            );
        }

        return text.ToString();
    }

    public static string WriteJson(PositionTable table)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteString("title", table.Circuit.Title);
            WriteLoad(json, table.Circuit.Surroundings);
            json.WriteString("levelReference", WordFor(table.Reference));
            json.WriteStartArray("rows");
            foreach (var row in PositionSheet.RowsOf(table))
            {
                Write(json, table.Circuit, row);
            }

            json.WriteEndArray();
            json.WriteStartArray("withoutPlug");
            foreach (var bare in table.BareReadings)
            {
                json.WriteStartObject();
                WriteJack(json, table.Circuit, bare.Jack);
                WritePositions(json, table.Circuit, bare.State);
                Write(json, bare.Reading);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            CoilJson.Write(json, table.Circuit);
            json.WriteStartArray("tooMany");
            foreach (var control in table.Crowding)
            {
                json.WriteStringValue(control.Name);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteLoad(Utf8JsonWriter json, Surroundings load)
    {
        json.WriteStartObject("load");
        WriteFigure(json, "cableFarads", load.CableFarads);
        WriteFigure(json, "inputOhms", load.InputOhms);
        WriteFigure(json, "mainsHertz", load.MainsHertz);
        WriteFigure(json, "coolestCelsius", load.CoolestCelsius);
        WriteFigure(json, "warmestCelsius", load.WarmestCelsius);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Circuit circuit, PositionRow row)
    {
        var (sound, isSound) = (row.Analysis.Sound, row.Analysis.Outcome == Outcome.Sound);
        json.WriteStartObject();
        WriteJack(json, circuit, row.Jack);
        WritePositions(json, circuit, row.State);
        json.WriteString("heard", row.WhatIsHeard(circuit));
        json.WriteString("outcome", WordFor(row.Analysis.Outcome));
        WriteFigure(json, "levelDecibels", row.LevelDecibels);
        json.WriteString("hum", isSound && sound.Hum is { } hum ? WordFor(hum.Word) : null);
        WriteFigure(json, "humDecibels", isSound ? sound.Hum?.ResidueDecibels : null);
        Write(json, row.Analysis.Reading);
        WriteFigure(json, "peakHertz", row.Analysis.Resonance?.Hertz);
        WriteFigure(json, "peakDecibels", sound.IsThin ? null : row.Analysis.Resonance?.HeightDecibels);
        json.WriteBoolean("assumed", IsAssumed(row));
        WriteDoubt(json, row);
        json.WriteStartArray("notes");
        foreach (var note in PositionSheet.NotesOf(row))
        {
            json.WriteStringValue(note);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Only where the row rests on what nobody knows.</summary>
    private static void WriteDoubt(Utf8JsonWriter json, PositionRow row)
    {
        if (row.Doubt is not { } doubt)
        {
            return;
        }

        var over = row.LevelDecibels - row.Analysis.Sound.LevelDecibels;
        json.WriteStartArray("unknown");
        foreach (var element in doubt.Elements)
        {
            json.WriteStringValue(element.Name);
        }

        json.WriteEndArray();
        WriteFigure(json, "levelLeastDecibels", doubt.LeastDecibels + over);
        WriteFigure(json, "levelMostDecibels", doubt.MostDecibels + over);
        WriteFigure(json, "peakLeastHertz", doubt.MayHaveNoPeak ? null : doubt.Lowest?.Hertz);
        WriteFigure(json, "peakMostHertz", doubt.Highest?.Hertz);
    }

    /// <summary>Only where there are several jacks to tell apart.</summary>
    private static void WriteJack(Utf8JsonWriter json, Circuit circuit, int? jack)
    {
        if (jack is { } part)
        {
            json.WriteString("jack", circuit.Parts[part].Name);
        }
    }

    private static void WritePositions(Utf8JsonWriter json, Circuit circuit, State state)
    {
        json.WriteStartObject("positions");
        foreach (var control in circuit.Controls.Where(control => !control.IsPlug))
        {
            json.WriteString(control.Name, StateText.PositionOf(control, state));
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Reading? reading)
    {
        json.WriteString("reading", WordFor(reading));
        var isValue = reading is { Kind: not ReadingKind.None };
        WriteFigure(json, "readsOhms", isValue ? reading!.Value.Ohms : null);
        WriteFigure(json, "readsLeastOhms", isValue ? reading!.Value.Least : null);
        WriteFigure(json, "readsMostOhms", isValue ? reading!.Value.Most : null);
    }

    private static IEnumerable<string> Cells(PositionTable table, PositionRow row)
    {
        var (sound, isSound) = (row.Analysis.Sound, row.Analysis.Outcome == Outcome.Sound);
        var isNone = row.Analysis.Reading is { Kind: ReadingKind.None };
        return
        [
            row.WhatIsHeard(table.Circuit),
            WordFor(row.Analysis.Outcome),
            Figure(row.LevelDecibels),
            isSound && sound.Hum is { } hum ? WordFor(hum.Word) : "",
            Figure(isSound ? sound.Hum?.ResidueDecibels : null),
            isNone ? "none" : Figure(row.Analysis.Reading?.Ohms),
            isNone ? "none" : Figure(row.Analysis.Reading?.Least),
            isNone ? "none" : Figure(row.Analysis.Reading?.Most),
            Figure(row.Analysis.Resonance?.Hertz),
            Figure(sound.IsThin ? null : row.Analysis.Resonance?.HeightDecibels),
            IsAssumed(row) ? "yes" : "no",
            string.Join("; ", PositionSheet.NotesOf(row)),
        ];
    }

    private static bool IsAssumed(PositionRow row) =>
        row.Doubt is not null
        || AssumedValues.BearSigns(row.Analysis)
        || AssumedValues.BearReading(row.Analysis)
        || AssumedValues.BearPeak(row.Analysis);

    private static string WordFor(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound => "sound",
            Outcome.Short => "short",
            Outcome.Quiet => "quiet",
            Outcome.Dead => "dead",
            Outcome.Open => "open",
            _ => "not-computed",
        };

    private static string WordFor(LevelReference reference) => reference == LevelReference.OneCoil ? "coil" : "loudest";

    private static string WordFor(HumWord word) =>
        word switch
        {
            HumWord.Cancelled => "cancelled",
            HumWord.LeftOver => "left-over",
            _ => "full",
        };

    private static string WordFor(Reading? reading) =>
        reading?.Kind switch
        {
            ReadingKind.Joined => "joined",
            ReadingKind.None => "none",
            ReadingKind.Value => "value",
            _ => "not-computed",
        };

    private static void AppendLine(StringBuilder text, IEnumerable<string> cells) =>
        text.Append(string.Join(',', cells.Select(CsvCell.Of))).Append('\n');

    internal static void WriteFigure(Utf8JsonWriter json, string name, double? value)
    {
        json.WritePropertyName(name);
        if (value is null)
        {
            json.WriteNullValue();
        }
        else
        {
            json.WriteRawValue(Figure(value));
        }
    }

    private static string Figure(double? value)
    {
        if (value is not { } number)
        {
            return "";
        }

        // Levels are told to a tenth of a dB at most: what rounds to nothing is 0, without a sign.
        var rounded = double.Parse(number.ToString("E3", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return Math.Abs(rounded) < 1e-15 ? "0" : rounded.ToString("R", CultureInfo.InvariantCulture);
    }
}
