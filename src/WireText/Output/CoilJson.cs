using System.Text.Json;
using WireText.Circuits;
using WireText.Electrical.Solving;
using WireText.Parts;

namespace WireText.Output;

/// <summary>Writes the coils of a circuit, and where each of their values comes from. <c>docs/positions.md</c> describes it.</summary>
internal static class CoilJson
{
    public static void Write(Utf8JsonWriter json, Circuit circuit)
    {
        json.WriteStartArray("coils");
        foreach (var coil in circuit.Elements.OfType<Coil>())
        {
            Write(json, coil, circuit.Surroundings);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Coil coil, Surroundings day)
    {
        json.WriteStartObject();
        json.WriteString("name", coil.Name);
        PositionData.WriteFigure(json, "ohms", coil.Ohms);
        json.WriteString("ohmsOrigin", WordFor(coil.Origins.Ohms));
        PositionData.WriteFigure(json, "coolestOhms", coil.Ohms * Ohmmeter.CopperFactor(day.CoolestCelsius));
        PositionData.WriteFigure(json, "warmestOhms", coil.Ohms * Ohmmeter.CopperFactor(day.WarmestCelsius));
        PositionData.WriteFigure(json, "henries", coil.Henries);
        json.WriteString("henriesOrigin", WordFor(coil.Origins.Henries));
        PositionData.WriteFigure(json, "farads", coil.Farads);
        json.WriteString("faradsOrigin", WordFor(coil.Origins.Farads));
        PositionData.WriteFigure(json, "ownResonanceHertz", coil.OwnResonanceHertz);
        json.WriteString("winding", coil.Winding is { } winding ? CoilWords.Of(winding) : null);
        json.WriteString("windingOrigin", WordFor(coil.Origins.Winding));
        json.WriteString("magnet", coil.Magnet is { } magnet ? CoilWords.Of(magnet) : null);
        json.WriteString("magnetOrigin", WordFor(coil.Origins.Magnet));
        PositionData.WriteFigure(json, "turns", coil.Wire?.Turns);
        PositionData.WriteFigure(json, "awg", coil.Wire?.Gauge);
        PositionData.WriteFigure(json, "turnMetres", coil.Wire?.TurnMetres);
        PositionData.WriteFigure(json, "windingOhms", coil.Wire?.Ohms);
        json.WriteEndObject();
    }

    private static string WordFor(ValueOrigin origin) =>
        origin switch
        {
            ValueOrigin.Given => "given",
            ValueOrigin.Shared => "shared",
            ValueOrigin.ByModel => "model",
            ValueOrigin.ByWinding => "computed",
            _ => "assumed",
        };
}
