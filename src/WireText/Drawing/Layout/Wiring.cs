using WireText.Drawing.Layout.Placement;
using WireText.Geometry;

namespace WireText.Drawing.Layout;

/// <summary>A lug or a surface as something that wires end on.</summary>
/// <param name="Part">The index of its part in <see cref="Wiring.Parts"/>.</param>
/// <param name="Index">Its index among its part's lugs, or among its part's surfaces.</param>
internal readonly record struct Terminal(int Part, int Index, bool IsSurface);

/// <summary>A wire with its ends looked up: indices into <see cref="Wiring.Terminals"/>, or -1 for an end that no part has.</summary>
internal sealed record Connection(LayoutWire Wire, int From, int To)
{
    /// <summary>A wire from a terminal to itself has no way to show, and one to nowhere has none to go.</summary>
    public bool CanRoute => From >= 0 && To >= 0 && From != To;
}

/// <summary>
/// A layout problem in canonical order, with every name looked up once. Parts are in the order of their ids, connections
/// in the order of their ends, colour and id, so the order of the input lists cannot reach the result.
/// </summary>
internal sealed class Wiring
{
    private readonly int[][] lugTerminals;
    private readonly Dictionary<string, int> terminalByName;

    private Wiring(LayoutPart[] parts)
    {
        Parts = parts;
        terminalByName = new Dictionary<string, int>(StringComparer.Ordinal);
        var terminals = new List<Terminal>();
        lugTerminals = new int[parts.Length][];
        for (var part = 0; part < parts.Length; part++)
        {
            lugTerminals[part] = new int[parts[part].Lugs.Length];
            for (var lug = 0; lug < parts[part].Lugs.Length; lug++)
            {
                lugTerminals[part][lug] = terminals.Count;
                terminalByName.TryAdd(parts[part].Lugs[lug].Id, terminals.Count);
                terminals.Add(new Terminal(part, lug, IsSurface: false));
            }

            for (var surface = 0; surface < parts[part].Surfaces.Length; surface++)
            {
                terminalByName.TryAdd(parts[part].Surfaces[surface].Id, terminals.Count);
                terminals.Add(new Terminal(part, surface, IsSurface: true));
            }
        }

        Terminals = [.. terminals];
    }

    public LayoutPart[] Parts { get; }

    public Terminal[] Terminals { get; }

    public Connection[] Connections { get; private set; } = [];

    public ParallelParts Parallel { get; private set; } = null!;

    public LayoutCable[] Cables { get; private set; } = [];

    public static Wiring Of(LayoutProblem problem)
    {
        LayoutPart[] parts = [.. problem.Parts.OrderBy(p => p.Id, StringComparer.Ordinal).ThenBy(p => p.Order)];
        var wiring = new Wiring(parts);
        wiring.Connections =
        [
            .. InOrder(problem.Wires)
                .Select(w => new Connection(w, wiring.TerminalOf(w.From), wiring.TerminalOf(w.To))),
        ];
        wiring.Parallel = new ParallelParts(wiring);
        wiring.Cables = [.. problem.Cables.OrderBy(c => c.Id, StringComparer.Ordinal)];
        return wiring;
    }

    /// <summary>Wires in the order in which they are laid.</summary>
    public static IEnumerable<LayoutWire> InOrder(IEnumerable<LayoutWire> wires) =>
        wires
            .OrderBy(w => w.From, StringComparer.Ordinal)
            .ThenBy(w => w.To, StringComparer.Ordinal)
            .ThenBy(w => w.Colour, StringComparer.Ordinal)
            .ThenBy(w => w.Id, StringComparer.Ordinal);

    /// <summary>The terminal of that full name, or -1.</summary>
    public int TerminalOf(string name) => terminalByName.GetValueOrDefault(name, -1);

    /// <summary>The connection of the wire with that id, or -1.</summary>
    public int ConnectionOf(string wireId) => Array.FindIndex(Connections, c => c.Wire.Id == wireId);

    public int LugTerminal(int part, int lug) => lugTerminals[part][lug];

    /// <summary>Where a terminal sits in its part's own frame: a lug's point, a surface's middle.</summary>
    public Point Own(int terminal)
    {
        var t = Terminals[terminal];
        return t.IsSurface ? Parts[t.Part].Surfaces[t.Index].Shape.Bounds.Centre : Parts[t.Part].Lugs[t.Index].At;
    }
}
