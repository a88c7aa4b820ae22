using WireText.Circuits;

namespace WireText.Tests.Judging;

/// <summary>A circuit with parts as a shop has them: each value off by a fraction of its own.</summary>
internal static class PartSpread
{
    public static Circuit Of(Circuit circuit) =>
        circuit with
        {
            Elements = [.. circuit.Elements.Select(element => Of(element, 1 + Share(element.Index)))],
        };

    private static Element Of(Element element, double factor) =>
        element switch
        {
            Coil coil => coil with
            {
                Ohms = coil.Ohms * factor,
                Henries = coil.Henries / factor,
                Farads = coil.Farads * factor * factor,
            },
            Track track => track with { Ohms = track.Ohms * factor },
            Resistor resistor => resistor with { Ohms = resistor.Ohms * factor },
            Capacitor capacitor => capacitor with { Farads = capacitor.Farads * factor },
            Inductor choke => choke with { Henries = choke.Henries * factor },
            Battery battery => battery with { Ohms = battery.Ohms * factor },
            Amplifier amplifier => amplifier with { InputOhms = amplifier.InputOhms * factor },
            _ => element,
        };

    /// <summary>Between −0.2 and 0.2; no two elements have the same, since the root of two is no fraction.</summary>
    private static double Share(int index)
    {
        var turns = (index + 1) * Math.Sqrt(2);
        return (0.4 * (turns - Math.Floor(turns))) - 0.2;
    }
}
