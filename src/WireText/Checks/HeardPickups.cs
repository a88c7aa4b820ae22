using WireText.Circuits;

namespace WireText.Checks;

/// <summary>The pickups that are heard in a state.</summary>
/// <param name="Whole">Those of which every coil is.</param>
/// <param name="Divided">Those that have several coils.</param>
internal sealed record HeardPickups(HashSet<int> Parts, HashSet<int> Whole, HashSet<int> Divided)
{
    /// <summary>The same for states in which the same is heard.</summary>
    public string Key => $"{string.Join(' ', Parts.Order())}, whole {string.Join(' ', Whole.Order())}";

    public static HeardPickups Of(Circuit circuit, IEnumerable<Coil> coils)
    {
        var heard = coils.GroupBy(coil => coil.Part).ToDictionary(pickup => pickup.Key, pickup => pickup.Count());
        return new HeardPickups(
            [.. heard.Keys],
            [.. heard.Where(pickup => pickup.Value == CoilsOf(pickup.Key)).Select(pickup => pickup.Key)],
            [.. heard.Keys.Where(part => CoilsOf(part) > 1)]
        );

        int CoilsOf(int part) => circuit.Parts[part].Elements.Count(element => circuit.Elements[element] is Coil);
    }
}
