using System.Collections.Immutable;
using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>A lattice while it is laid: what is known of its nodes so far.</summary>
internal sealed class LatticeDraft
{
    public LatticeDraft(LabelledPlacement labelled, LatticeFrame frame)
    {
        (Labelled, Frame) = (labelled, frame);
        NameHomes = [.. Wiring.Parts.Select((part, i) => Layout.NameHomes.Of(part, PoseOf(i)))];
        Nodes = new LatticeNode[frame.NodeCount];
        StaysClosed = new bool[frame.NodeCount];
        IsInner = new bool[Wiring.Terminals.Length];
        Host = new int[Wiring.Terminals.Length];
        Array.Fill(Host, -1);
        for (var node = 0; node < Nodes.Length; node++)
        {
            Nodes[node] = new LatticeNode
            {
                X = node % frame.Width,
                Y = node / frame.Width,
                Access = ZoneAccess.Free,
            };
        }
    }

    public LabelledPlacement Labelled { get; }

    public LatticeFrame Frame { get; }

    public LatticeNode[] Nodes { get; }

    /// <summary>By node: true where words stand or two bodies lie on one another; nothing opens it.</summary>
    public bool[] StaysClosed { get; }

    /// <summary>See <see cref="Lattice.IsInner"/>.</summary>
    public bool[] IsInner { get; }

    /// <summary>See <see cref="Lattice.Host"/>.</summary>
    public int[] Host { get; }

    /// <summary>By part: see <see cref="Layout.NameHomes"/>.</summary>
    public ImmutableArray<Box?>[] NameHomes { get; }

    public Wiring Wiring => Labelled.Placement.Wiring;

    public Pose PoseOf(int part) => Labelled.Placement.Poses[part];

    /// <summary>Lets wires of a kind in at a node of a part's zone.</summary>
    public void Open(int node, int part, byte access)
    {
        if (Nodes[node].Zone == part + 1 && !StaysClosed[node])
        {
            Nodes[node].Access |= access;
        }
    }
}
