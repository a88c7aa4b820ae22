using WireText.Circuits;
using WireText.Parts;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Comparing;

/// <summary>What a part is, whatever it is called and wherever it is soldered.</summary>
internal static class PartWords
{
    /// <summary>Model, value, taper, words, and of a pickup what its coils are.</summary>
    public static string Of(Circuit circuit, Part part)
    {
        var coils = part.Elements.Select(element => circuit.Elements[element]).OfType<Coil>().ToList();
        return string.Join(
            ' ',
            new[] { ModelOf(part), part.ValueLabel, part.TaperLabel }
                .OfType<string>()
                .Concat(part.Traits)
                .Concat(coils.SelectMany(coil => Of(coil, named: coils.Count > 1)))
        );
    }

    /// <summary>True when two parts are the same in everything that can be heard or bought.</summary>
    public static bool AreAlike(Circuit first, Part one, Circuit second, Part other) =>
        Naming.Alike(one.Kind, other.Kind)
        && Of(first, one) == Of(second, other)
        && one.Elements.Select(element => Bare(first.Elements[element]))
            .SequenceEqual(other.Elements.Select(element => Bare(second.Elements[element])));

    /// <summary>Nobody says of a plain part that it is one.</summary>
    private static string? ModelOf(Part part) =>
        Naming.Alike(part.Definition.Model, PartDefinition.StandardModel) ? null : part.Definition.Model;

    private static IEnumerable<string> Of(Coil coil, bool named)
    {
        var section = named ? coil.Name[(coil.Name.IndexOf('.', StringComparison.Ordinal) + 1)..] + "." : "";
        yield return $"{section}dcr={ValueText.Label(coil.Ohms, Unit.Ohm)}";
        yield return $"{section}l={ValueText.Label(coil.Henries, Unit.Henry)}";
        yield return $"{section}c={ValueText.Label(coil.Farads, Unit.Farad)}";
        if (coil.Winding is { } winding)
        {
            yield return $"{section}wind={(winding == Winding.Clockwise ? "cw" : "ccw")}";
        }

        if (coil.Magnet is { } magnet)
        {
            yield return $"{section}magnet={magnet.ToString().ToLowerInvariant()}";
        }

        if ((coil.Spot.CoilMetres ?? coil.Spot.PickupMetres) is { } metres)
        {
            yield return $"{(coil.Spot.CoilMetres is null ? "" : section)}at={ValueText.Label(metres, Unit.Metre)}";
        }

        if (coil.Spot.ApertureMetres is { } aperture)
        {
            yield return $"{section}aperture={ValueText.Label(aperture, Unit.Metre)}";
        }
    }

    /// <summary>An element without its name and its ends.</summary>
    private static Element Bare(Element element)
    {
        var bare = element with { Index = 0, Part = 0, Name = "" };
        return bare switch
        {
            Coil coil => coil with { Start = 0, Finish = 0 },
            Track track => track with { Low = 0, Wiper = 0, High = 0, Dial = 0 },
            Resistor resistor => resistor with { A = 0, B = 0 },
            Capacitor capacitor => capacitor with { A = 0, B = 0 },
            Inductor inductor => inductor with { A = 0, B = 0 },
            Battery battery => battery with { Plus = 0, Minus = 0 },
            Amplifier amplifier => amplifier with { In = 0, Out = 0, Common = 0, Supply = null },
            _ => bare,
        };
    }
}
