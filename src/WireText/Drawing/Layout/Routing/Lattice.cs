using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>
/// The lattice that wires run on: nodes one pitch apart, and for each the fixed facts that decide who may use it. A node
/// is passable for a wire when the wire was let into the node's zone; see <see cref="ZoneAccess"/>.
/// </summary>
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
    LatticeFrame Frame,
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
    /// <summary>See <see cref="PartOpenings"/>.</summary>
    public bool OpensAllSides { get; init; }

    public int Width { get; } = Frame.Width;

    public int Height { get; } = Frame.Height;

    public int NodeCount => Frame.NodeCount;

    public PartPlacement Placement => Labelled.Placement;

    public Wiring Wiring => Placement.Wiring;

    public int XOf(int node) => Nodes[node].X;

    public int YOf(int node) => Nodes[node].Y;

    public Point OnPage(int node) => Frame.OnPage(XOf(node), YOf(node));

    /// <summary>See <see cref="LatticeFrame.Step"/>.</summary>
    public int Step(int direction) => Frame.Step(direction);

    /// <summary>What to add to twice a node's index for the edge that leaves it in a direction: an edge belongs to its western or northern node.</summary>
    public int EdgeOffset(int direction) =>
        direction switch
        {
            0 => 0,
            1 => 1,
            2 => -2,
            _ => (-2 * Width) + 1,
        };

    /// <summary>The direction to a side of the page.</summary>
    public static int DirectionOf(Side side) => ((int)side + 3) % 4;

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

    public LatticeBox BoxAround(ReadOnlySpan<int> nodes) => Frame.BoxAround(nodes);
}
