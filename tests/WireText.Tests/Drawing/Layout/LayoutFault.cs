namespace WireText.Tests.Drawing.Layout;

/// <summary>What no layout may have; the definitions are those of docs/layout.md.</summary>
internal enum LayoutFaultKind
{
    Overlap,
    Crowding,
    WrongEnd,

    /// <summary>A stretch that runs along neither axis and is no last one, or too long for one.</summary>
    Slanted,

    ThroughBody,
    FalseJoint,
    LabelOverlap,
    CrampedHop,
    Unrouted,
}

/// <summary>Something that no layout may have.</summary>
/// <param name="What">The wires, parts or lugs concerned, and by how much, in words.</param>
internal readonly record struct LayoutFault(LayoutFaultKind Kind, string What)
{
    public override string ToString() => $"{Kind}: {What}";
}
