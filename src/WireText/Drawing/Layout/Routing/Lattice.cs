using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>
/// The lattice that wires run on: nodes one pitch apart, and for each the fixed facts that decide who may use it. A node
/// is passable for a wire when the wire was let into the node's zone; see <see cref="ZoneAccess"/>.
/// </summary>
/// <param name="Left">The x of column 0 in whole pitches on the page.</param>
/// <param name="Top">The y of row 0 in whole pitches on the page.</param>
/// <param name="Nodes">By node: what is fixed about it.</param>
/// <param name="LugNode">By terminal: its node; -1 for a surface.</param>
/// <param name="Landings">By terminal: the nodes on which a wire may end; empty for a lug.</param>
/// <param name="LandingBox">By terminal: the lattice box around its landings.</param>
/// <param name="IsInner">By terminal: true for a lug inside its own part's zone, reached by a corridor.</param>
/// <param name="IsInside">By terminal: true for a surface, and for a lug inside its own part's outline as drawn.</param>
/// <param name="Host">By terminal: the part inside whose outline the lug was put though it is not its own, or -1.</param>
/// <param name="ExitMask">By terminal: bit d is set when a wire may naturally leave the lug in direction d.</param>
internal sealed record Lattice(
    LabelledPlacement Labelled,
    int Left,
    int Top,
    int Width,
    int Height,
    LatticeNode[] Nodes,
    int[] LugNode,
    int[][] Landings,
    LatticeBox[] LandingBox,
    int[] ExitMask,
    int[] Host,
    bool[] IsInner,
    bool[] IsInside
)
{
    public int NodeCount => Width * Height;

    public PartPlacement Placement => Labelled.Placement;

    public Wiring Wiring => Placement.Wiring;

    public int XOf(int node) => Nodes[node].X;

    public int YOf(int node) => Nodes[node].Y;

    public Point OnPage(int node) => new((XOf(node) + Left) * LayoutScale.Pitch, (YOf(node) + Top) * LayoutScale.Pitch);

    /// <summary>The index step from a node to its neighbour in direction 0 east, 1 south, 2 west, 3 north.</summary>
    public int Step(int direction) =>
        direction switch
        {
            0 => 1,
            1 => Width,
            2 => -1,
            _ => -Width,
        };

    /// <summary>What to add to twice a node's index for the edge that leaves it in a direction: an edge belongs to its western or northern node.</summary>
    public int EdgeOffset(int direction) =>
        direction switch
        {
            0 => 0,
            1 => 1,
            2 => -2,
            _ => (-2 * Width) + 1,
        };

    public static int DirectionOf(int fromNode, int toNode)
    {
        var step = toNode - fromNode;
        return step switch
        {
            1 => 0,
            -1 => 2,
            > 0 => 1,
            _ => 3,
        };
    }

    public LatticeBox BoxOf(int terminal) => LandingBox[terminal];
}

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

/// <summary>A box of lattice nodes, both ends included.</summary>
internal readonly record struct LatticeBox(int X1, int Y1, int X2, int Y2)
{
    public LatticeBox Union(LatticeBox other) =>
        new(Math.Min(X1, other.X1), Math.Min(Y1, other.Y1), Math.Max(X2, other.X2), Math.Max(Y2, other.Y2));

    public LatticeBox Grown(int by, int width, int height) =>
        new(Math.Max(1, X1 - by), Math.Max(1, Y1 - by), Math.Min(width - 2, X2 + by), Math.Min(height - 2, Y2 + by));

    /// <summary>The least number of lane steps between two boxes.</summary>
    public int DistanceTo(LatticeBox other) =>
        Math.Max(0, Math.Max(X1 - other.X2, other.X1 - X2)) + Math.Max(0, Math.Max(Y1 - other.Y2, other.Y1 - Y2));
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
