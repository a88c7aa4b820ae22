using System.Buffers;
using System.Text;
using System.Text.Json;
using WireText.Proposing;

namespace WireText.Output;

/// <summary>Writes what a search for wires came to, for other programs. <c>docs/propose.md</c> describes it.</summary>
public static class ProposalJson
{
    /// <summary>Grows when a reader would have to change.</summary>
    public const int Version = 1;

    public static string Write(Proposal proposal)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteString("outcome", WordOf(proposal.Outcome));
            json.WriteNumber("joints", proposal.Joints);
            json.WriteNumber("atLeast", proposal.AtLeast);
            json.WriteNumber("states", proposal.States);
            json.WriteNumber("nets", proposal.Nets);
            json.WriteNumber("judged", proposal.Judged);
            json.WriteNumber("steps", proposal.Nodes);
            WriteWords(json, "lines", proposal.Lines);
            json.WriteStartArray("others");
            foreach (var other in proposal.Others)
            {
                json.WriteStartArray();
                foreach (var line in other)
                {
                    json.WriteStringValue(line);
                }

                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.WriteString("why", proposal.Why);
            WriteWords(json, "excluding", proposal.Excluding);
            json.WriteStartArray("wouldDo");
            foreach (var one in proposal.WouldDo)
            {
                json.WriteStartObject();
                json.WriteString("model", one.Model);
                json.WriteNumber("joints", one.Joints);
                json.WriteNumber("lugs", one.Lugs);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static string WordOf(ProposalOutcome outcome) =>
        outcome switch
        {
            ProposalOutcome.Found => "found",
            ProposalOutcome.Impossible => "impossible",
            ProposalOutcome.Undecided => "undecided",
            _ => "refused",
        };

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
