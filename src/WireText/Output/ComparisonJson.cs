using System.Buffers;
using System.Text;
using System.Text.Json;
using WireText.Circuits;
using WireText.Comparing;

namespace WireText.Output;

/// <summary>Writes how two circuits differ for other programs. <c>docs/compare.md</c> describes it.</summary>
public static class ComparisonJson
{
    /// <summary>Grows when a reader would have to change.</summary>
    public const int Version = 1;

    public static string Write(CircuitComparison circuits, PositionComparison? positions)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteBoolean("same", circuits.IsSame);
            WriteParts(json, circuits);
            WriteWires(json, circuits);
            json.WriteStartArray("names");
            foreach (var name in circuits.Names)
            {
                json.WriteStartObject();
                json.WriteString("control", name.Control);
                json.WriteString("before", name.Before);
                json.WriteString("after", name.After);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            WritePositions(json, circuits, positions);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteParts(Utf8JsonWriter json, CircuitComparison circuits)
    {
        json.WriteStartObject("parts");
        WriteWords(json, "dropped", circuits.Dropped.Select(part => ChangeList.Words(circuits.Before, part)));
        WriteWords(json, "added", circuits.Added.Select(part => ChangeList.Words(circuits.After, part)));
        json.WriteStartArray("changed");
        foreach (var change in circuits.Changed)
        {
            json.WriteStartObject();
            json.WriteString("part", change.After.Name);
            json.WriteString("before", change.WordsBefore);
            json.WriteString("after", change.WordsAfter);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteWires(Utf8JsonWriter json, CircuitComparison circuits)
    {
        json.WriteStartArray("wires");
        foreach (var change in circuits.Wires)
        {
            json.WriteStartObject();
            json.WriteString("change", WordOf(change.Kind));
            WriteWire(json, "before", circuits.Before, change.Before);
            WriteWire(json, "after", circuits.After, change.After);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteWire(Utf8JsonWriter json, string name, Circuit circuit, Wire? wire)
    {
        if (wire is null)
        {
            json.WriteNull(name);
        }
        else
        {
            json.WriteString(name, ChangeList.Words(circuit, wire));
        }
    }

    private static void WritePositions(Utf8JsonWriter json, CircuitComparison circuits, PositionComparison? positions)
    {
        json.WriteStartArray("positions");
        if (positions is not null && !circuits.IsSame)
        {
            foreach (var (state, lines) in ComparisonSheet.Positions(positions))
            {
                json.WriteStartObject();
                json.WriteString("at", state);
                foreach (var (what, before, after) in lines)
                {
                    json.WriteStartObject(what);
                    json.WriteString("before", before);
                    json.WriteString("after", after);
                    json.WriteEndObject();
                }

                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }

    private static void WriteWords(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (var word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }

    private static string WordOf(WireChangeKind kind) =>
        kind switch
        {
            WireChangeKind.Lifted => "lifted",
            WireChangeKind.Added => "added",
            WireChangeKind.Moved => "moved",
            _ => "exchanged",
        };
}
