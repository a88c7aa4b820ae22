using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks;

/// <summary>Names coils as people do: a pickup by its own name when all its coils are meant.</summary>
internal static class CoilNames
{
    public static ImmutableArray<string> Of(Circuit circuit, IReadOnlyCollection<Coil> coils) =>
        [
            .. coils
                .GroupBy(coil => coil.Part)
                .SelectMany(pickup =>
                    circuit.Parts[pickup.Key].Elements.Count(index => circuit.Elements[index] is Coil) == pickup.Count()
                        ? [circuit.Parts[pickup.Key].Name]
                        : pickup.Select(coil => coil.Name)
                ),
        ];
}
