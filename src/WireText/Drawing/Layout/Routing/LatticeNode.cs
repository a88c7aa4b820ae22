namespace WireText.Drawing.Layout.Routing;

/// <summary>What is fixed about one node, kept together because a search asks for all of it at once.</summary>
internal struct LatticeNode
{
    public int X;
    public int Y;

    /// <summary>0 for the free plane, 1 + part for the inside of a part, 1 + parts + terminal for a lug's own node.</summary>
    public int Zone;

    /// <summary>The price of a step onto it, before congestion.</summary>
    public int StepCost;

    /// <summary>1 + terminal of a lug beside it, or 0.</summary>
    public int NearLug;

    /// <summary>The edge to its eastern neighbour: 0 when free, 1 + terminal when only that lug's wires may use it, -1 when it lies too close to two lugs.</summary>
    public int EastEdgeLug;

    /// <summary>The same of the edge to its southern neighbour.</summary>
    public int SouthEdgeLug;

    /// <summary>Which kinds of wire the zone lets in here; 0 for none at all.</summary>
    public byte Access;

    /// <summary>True inside the outline of the part whose zone it is; a zone reaches a little beyond.</summary>
    public bool IsInside;

    public readonly int EdgeLug(bool isEast) => isEast ? EastEdgeLug : SouthEdgeLug;
}

/// <summary>Who may enter a node, as bits; a wire carries the bits that it has for a zone.</summary>
internal static class ZoneAccess
{
    public const byte Free = 1;

    /// <summary>A wire of one of the part's own lugs that lie inside its outline.</summary>
    public const byte Corridor = 2;

    /// <summary>A wire that ends on one of the part's surfaces.</summary>
    public const byte Rim = 4;

    /// <summary>A wire of a part that the author put on top of this one.</summary>
    public const byte Guest = 8;
}
