using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Building;

/// <summary>What the iron has to do to make one circuit into another.</summary>
/// <param name="Gone">Wires of the first that come off, in its order.</param>
/// <param name="Added">Wires of the second that are new, in its order.</param>
/// <param name="PartsGone">Parts of the first that come out.</param>
/// <param name="PartsAdded">Parts of the second that are new.</param>
internal sealed record CircuitDifference(
    ImmutableArray<Wire> Gone,
    ImmutableArray<Wire> Added,
    ImmutableArray<Part> PartsGone,
    ImmutableArray<Part> PartsAdded
)
{
    /// <remarks>A part that is replaced takes all wires on it off and on again, though their names stay.</remarks>
    public static CircuitDifference Of(Circuit before, Circuit after)
    {
        var (partsBefore, partsAfter) = (before.Parts.Select(Told).ToHashSet(), after.Parts.Select(Told).ToHashSet());
        ImmutableArray<Part> gone = [.. before.Parts.Where(part => !partsAfter.Contains(Told(part)))];
        ImmutableArray<Part> added = [.. after.Parts.Where(part => !partsBefore.Contains(Told(part)))];
        return new CircuitDifference(
            WithoutTwins(before, gone, Stock(after, added)),
            WithoutTwins(after, added, Stock(before, gone)),
            gone,
            added
        );
    }

    /// <summary>How often each wire is there that can stay: none of its ends is on a part that changes.</summary>
    private static Dictionary<string, int> Stock(Circuit circuit, ImmutableArray<Part> changed)
    {
        var stock = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var wire in circuit.Wires.Where(wire => !IsOn(circuit, wire, changed)))
        {
            stock[Told(circuit, wire)] = stock.GetValueOrDefault(Told(circuit, wire)) + 1;
        }

        return stock;
    }

    private static ImmutableArray<Wire> WithoutTwins(
        Circuit circuit,
        ImmutableArray<Part> changed,
        Dictionary<string, int> stock
    )
    {
        var left = ImmutableArray.CreateBuilder<Wire>();
        foreach (var wire in circuit.Wires)
        {
            var told = Told(circuit, wire);
            if (IsOn(circuit, wire, changed) || stock.GetValueOrDefault(told) == 0)
            {
                left.Add(wire);
            }
            else
            {
                stock[told]--;
            }
        }

        return left.ToImmutable();
    }

    private static bool IsOn(Circuit circuit, Wire wire, ImmutableArray<Part> parts) =>
        parts.Any(part => IsOn(circuit, wire.From, part) || IsOn(circuit, wire.To, part));

    private static bool IsOn(Circuit circuit, int lug, Part part) => lug >= 0 && circuit.Lugs[lug].Part == part.Index;

    /// <summary>A wire as one sees it: alike whichever end is written first.</summary>
    private static string Told(Circuit circuit, Wire wire)
    {
        string[] ends = [End(circuit, wire.From), End(circuit, wire.To)];
        Array.Sort(ends, StringComparer.OrdinalIgnoreCase);
        return $"{wire.Kind} {ends[0]} {ends[1]} {wire.Colour?.Name}";
    }

    private static string End(Circuit circuit, int lug) => lug < 0 ? "" : circuit.NameOf(lug);

    private static string Told(Part part) =>
        $"{part.Name.ToUpperInvariant()} {part.Kind} {part.Definition.Model} {part.ValueLabel} {part.TaperLabel} {string.Join(' ', part.Traits)}";
}
