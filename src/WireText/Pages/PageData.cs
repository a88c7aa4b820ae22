using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using WireText.Circuits;
using WireText.Drawing.Charts;
using WireText.Drawing.Lettering;
using WireText.Geometry;
using WireText.Parts;
using WireText.Text;

namespace WireText.Pages;

/// <summary>Writes what the viewer of a page looks up, as JSON that may stand in a page of HTML. <c>docs/page.md</c> describes it.</summary>
internal static class PageData
{
    /// <summary>Grows when a viewer would have to change.</summary>
    public const int Version = 1;

    /// <summary>How far below the loudest point a curve is drawn, in dB: a volume at 3 is seen, and a peak of 3 dB is one. Chosen.</summary>
    private const double DeepestShown = 42;

    /// <summary>Plain letters of ASCII alone: nothing in it ends an element or a line.</summary>
    public static string Write(PageTable table)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            WriteMoved(json, table);
            WriteDrawn(json, table);
            WriteTold(json, table);
            WriteResponse(json, table);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void WriteMoved(Utf8JsonWriter json, PageTable table)
    {
        var circuit = table.Circuit;
        WriteTexts(
            json,
            "jacks",
            table.Jacks.Length > 1 ? table.Jacks.Select(jack => circuit.Parts[jack.Circuit.Outputs[0].Part].Name) : []
        );
        json.WriteStartArray("controls");
        for (var i = 0; i < table.States.Controls.Length; i++)
        {
            var control = table.States.Controls[i];
            json.WriteStartObject();
            WriteName(json, circuit.Parts[control.Part], control.Name);
            WriteTexts(json, "positions", control.Positions.Select(position => position.Name));
            json.WriteNumber("rest", control.Rest);
            json.WriteStartArray("closed");
            foreach (var bars in table.Closed[i])
            {
                WriteNumbers(json, bars);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString(
            "turning",
            table.States.Turning switch
            {
                KnobTurning.Alone => "alone",
                KnobTurning.None => "none",
                _ => "together",
            }
        );
        json.WriteStartArray("knobs");
        foreach (var knob in table.States.Knobs)
        {
            json.WriteStartObject();
            WriteName(json, circuit.Parts[knob.Dial.Part], knob.Dial.Name);
            WriteTexts(json, "stops", knob.Stops.Select(stop => stop.ToString("0.###", CultureInfo.InvariantCulture)));
            json.WriteNumber("rest", knob.Rest);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteName(Utf8JsonWriter json, Part part, string name)
    {
        json.WriteString("name", DrawnText.Clean(name));
        json.WriteString("part", DrawnText.Clean(part.Name));
        json.WriteString("about", DrawnText.Clean(AboutOf(part)));
    }

    /// <summary>What the text says of a part, else what it is.</summary>
    private static string AboutOf(Part part) =>
        part.Remark
        ?? string.Join(
            ' ',
            new[]
            {
                Naming.Alike(part.Definition.Model, PartDefinition.StandardModel) ? null : part.Definition.Model,
                part.ValueLabel,
                part.TaperLabel,
            }.OfType<string>()
        );

    private static void WriteDrawn(Utf8JsonWriter json, PageTable table)
    {
        WriteTexts(json, "wires", table.Circuit.Wires.Select(wire => wire.Id));
        WriteTexts(json, "lugs", table.Circuit.Lugs.Select(lug => lug.Name));
        WriteTexts(json, "parts", table.Circuit.Parts.Select(part => part.Name));
        json.WriteStartArray("live");
        foreach (var live in table.Live)
        {
            json.WriteStartArray();
            WriteNumbers(json, live.Wires);
            WriteNumbers(json, live.Lugs);
            WriteNumbers(json, live.Parts);
            WriteNumbers(json, live.Bars);
            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WritePropertyName("liveAt");
        WriteNumbers(json, table.LiveAt);
    }

    private static void WriteTold(Utf8JsonWriter json, PageTable table)
    {
        var (texts, curves) = (new Numbered<string>(), new Numbered<string>());
        WriteTexts(json, "labels", Told.Labels);
        json.WriteStartArray("told");
        foreach (var told in table.Told)
        {
            string[] words = [told.Heard, told.Level, told.Hum, told.Meter, told.Peak, told.Assumed, told.Unknown];
            ToldCurve?[] drawn = [told.Curve, told.Least, told.Most];
            WriteNumbers(
                json,
                [.. words.Select(texts.PlaceOf), .. drawn.Select(curve => curves.PlaceOf(curve?.Code ?? ""))]
            );
        }

        json.WriteEndArray();
        WriteTexts(json, "texts", texts.Items);
        WriteTexts(json, "curves", curves.Items);
        json.WritePropertyName("now");
        WriteNumbers(json, table.Now);
        json.WritePropertyName("stock");
        WriteNumbers(json, table.Stock);
    }

    private static void WriteResponse(Utf8JsonWriter json, PageTable table)
    {
        var lowest = table.Levels.DefaultIfEmpty(0).Max() - DeepestShown;
        var scales = PlotScales.For(new Box(0, 0, 1, 1), table.Levels.Select(level => Math.Max(level, lowest)));
        json.WriteStartObject("response");
        json.WriteNumber("bottom", scales.Bottom);
        json.WriteNumber("top", scales.Top);
        json.WriteNumber("step", PlotScales.Step);
        json.WriteStartArray("hertz");
        foreach (var hertz in StateTeller.Hertz)
        {
            json.WriteNumberValue(Math.Round(hertz, 2));
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(DrawnText.Clean(text));
        }

        json.WriteEndArray();
    }

    private static void WriteNumbers(Utf8JsonWriter json, ImmutableArray<int> numbers)
    {
        json.WriteStartArray();
        foreach (var number in numbers)
        {
            json.WriteNumberValue(number);
        }

        json.WriteEndArray();
    }
}
