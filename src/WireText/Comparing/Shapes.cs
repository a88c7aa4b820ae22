using WireText.Circuits;

namespace WireText.Comparing;

/// <summary>
/// What a part looks like with all that is soldered to it, without names: parts of two circuits with the same shape stand in the
/// same place.
/// </summary>
/// <remarks>
/// Colour refinement (Weisfeiler and Leman 1968): each round tells a part by what it was told by and by its neighbours. Shapes
/// are numbered by their texts in order, so that two circuits give the same numbers to the same shapes.
/// </remarks>
internal static class Shapes
{
    /// <summary>Rounds: an instrument is not wider. Chosen.</summary>
    private const int Rounds = 8;

    /// <summary>The parts of each shape among some parts of a circuit, in the order of declaration.</summary>
    public static SortedDictionary<string, List<int>> Of(Circuit circuit, IEnumerable<int> parts)
    {
        string[] shapes =
        [
            .. circuit.Parts.Select(part => $"{part.Kind.ToUpperInvariant()} {PartWords.Of(circuit, part)}"),
        ];
        for (var round = 0; round < Rounds; round++)
        {
            shapes = Refined(circuit, shapes);
        }

        var found = new SortedDictionary<string, List<int>>(StringComparer.Ordinal);
        foreach (var part in parts)
        {
            if (!found.TryGetValue(shapes[part], out var alike))
            {
                found.Add(shapes[part], alike = []);
            }

            alike.Add(part);
        }

        return found;
    }

    private static string[] Refined(Circuit circuit, string[] shapes)
    {
        var neighbours = shapes.Select(_ => new List<string>()).ToList();
        foreach (var wire in circuit.Wires.Where(wire => wire is { From: >= 0, To: >= 0 }))
        {
            Add(wire.From, wire.To);
            Add(wire.To, wire.From);
        }

        return
        [
            .. shapes.Select(
                (shape, part) =>
                {
                    neighbours[part].Sort(StringComparer.Ordinal);
                    return Digest.Of($"{shape}[{string.Join(',', neighbours[part])}]");
                }
            ),
        ];

        void Add(int own, int other) =>
            neighbours[circuit.Lugs[own].Part]
                .Add(
                    $"{circuit.Lugs[own].Terminal.Name}-{circuit.Lugs[other].Terminal.Name} {shapes[circuit.Lugs[other].Part]}".ToUpperInvariant()
                );
    }
}
