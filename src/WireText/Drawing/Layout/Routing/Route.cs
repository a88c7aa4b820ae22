namespace WireText.Drawing.Layout.Routing;

/// <summary>A path over the lattice: every node from the first end to the other, each one step from the last.</summary>
/// <param name="Cost">What it cost when it was found.</param>
internal sealed record Route(int[] Nodes, RouteEnd Start, RouteEnd End, int Cost)
{
    public bool IsLugAtStart => Start == RouteEnd.Lug;

    public bool IsLugAtEnd => End == RouteEnd.Lug;

    public bool LandsAtStart => Start == RouteEnd.Landing;

    public bool LandsAtEnd => End == RouteEnd.Landing;
}

/// <summary>What a route ends on.</summary>
internal enum RouteEnd
{
    /// <summary>A lug's own node, which all its wires share.</summary>
    Lug,

    /// <summary>A node of a surface, which it has for itself.</summary>
    Landing,

    /// <summary>A node of the core that a braid's tail breaks out of.</summary>
    Breakout,
}
