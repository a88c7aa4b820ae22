using System.Buffers;
using System.Text;
using System.Text.Json;
using WireText.Frames;

namespace WireText.Output;

/// <summary>Writes the list of a video's frames for the program that cuts it. <c>docs/frames.md</c> describes it.</summary>
public static class FramesJson
{
    /// <summary>Grows when a reader would have to change.</summary>
    public const int Version = 1;

    /// <param name="title">Of the circuit; null for none.</param>
    public static string Write(FrameSequence sequence, string? title)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteString("title", title);
            json.WriteString("of", sequence.Word);
            json.WriteNumber("width", sequence.Size.Width);
            json.WriteNumber("height", sequence.Size.Height);
            json.WriteNumber("seconds", sequence.Frames.Sum(frame => frame.Seconds));
            json.WriteStartArray("frames");
            foreach (var frame in sequence.Frames)
            {
                Write(json, frame);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void Write(Utf8JsonWriter json, Frame frame)
    {
        json.WriteStartObject();
        json.WriteString("file", frame.FileName);
        json.WriteNumber("number", frame.Number);
        json.WriteString("group", frame.Group);
        json.WriteString("text", frame.Caption);
        json.WriteNumber("seconds", frame.Seconds);
        WriteWords(json, "names", frame.Names.Select(name => name.Text));
        WriteWords(json, "wires", frame.Wires);
        if (frame.Joint is { } joint)
        {
            json.WriteNumber("joint", joint);
        }
        else
        {
            json.WriteNull("joint");
        }

        json.WriteEndObject();
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
}
