using System.Buffers;
using System.Text;
using System.Text.Json;
using WireText.Circuits;
using WireText.Electrical.Tolerances;

namespace WireText.Output;

/// <summary>Writes for other programs what tolerances do to a run. <c>docs/spread.md</c> describes it.</summary>
/// <remarks>SI units; four significant figures, so that no machine's last digit shows.</remarks>
public static class SpreadJson
{
    /// <summary>Grows when a reader would have to change.</summary>
    public const int Version = 1;

    public static string Write(SpreadTable table)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteString("title", table.Circuit.Title);
            json.WriteNumber("instruments", table.Options.Count);
            json.WriteNumber("seed", table.Options.Seed);
            json.WriteBoolean("oneBatch", table.Options.IsOneBatch);
            json.WriteStartArray("factors");
            foreach (var factor in table.Factors)
            {
                Write(json, factor);
            }

            json.WriteEndArray();
            json.WriteStartArray("states");
            foreach (var state in table.States)
            {
                Write(json, state);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void Write(Utf8JsonWriter json, RunFactor factor)
    {
        json.WriteStartObject();
        json.WriteString("name", factor.Name);
        json.WriteString(
            "quantity",
            factor.Quantity switch
            {
                RunQuantity.Ohms => "resistance",
                RunQuantity.Henries => "inductance",
                RunQuantity.Farads => "capacitance",
                _ => "temperature",
            }
        );
        PositionData.WriteFigure(json, "least", factor.Least);
        PositionData.WriteFigure(json, "most", factor.Most);
        json.WriteBoolean("unknown", factor.IsByRatio);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, RunSpread state)
    {
        json.WriteStartObject();
        json.WriteString("at", StateText.AsSaid(state.Analysis.State));
        json.WriteStartArray("figures");
        foreach (var spread in state.Figures)
        {
            json.WriteStartObject();
            json.WriteString("figure", SpreadText.WordFor(spread.Figure));
            json.WriteString(
                "unit",
                spread.Figure switch
                {
                    RunFigure.Reading => "ohm",
                    RunFigure.Peak => "hertz",
                    _ => "decibel",
                }
            );
            PositionData.WriteFigure(json, "asWritten", Finite(spread.AsWritten));
            PositionData.WriteFigure(json, "least", spread.Least);
            PositionData.WriteFigure(json, "most", spread.Most);
            json.WriteBoolean("exact", spread.IsExact);
            json.WriteStartObject("percentiles");
            for (var i = 0; i < RunSpread.Percents.Length; i++)
            {
                PositionData.WriteFigure(json, $"{RunSpread.Percents[i]}", spread.Percentiles[i]);
            }

            json.WriteEndObject();
            json.WriteNumber("without", spread.Without);
            json.WriteStartArray("shares");
            foreach (var share in spread.Shares)
            {
                json.WriteStartObject();
                json.WriteString("factor", share.Factor.Name);
                PositionData.WriteFigure(json, "share", share.Share);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            PositionData.WriteFigure(json, "firstOrder", Finite(spread.FirstOrder));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
