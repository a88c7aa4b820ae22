using System.Collections.Immutable;
using WireText.Building;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Electrical.Traces;
using WireText.Text;

namespace WireText.Drawing.Pictures;

/// <summary>What a picture shows besides the circuit.</summary>
public sealed record PictureOptions
{
    public Theme Theme { get; init; } = Theme.Light;

    /// <summary>The faces of the circuit's parts, in their order, where they are worked out already; else none.</summary>
    public ImmutableArray<Face> Faces { get; init; } = [];

    /// <summary>Places for the names of lugs that are known from other pictures.</summary>
    internal KnownLugLabels KnownLugLabels { get; init; } = new();

    /// <summary>The name of the source file, for the title block; null for none.</summary>
    public string? FileName { get; init; }

    /// <summary>What is drawn in full colour while the rest steps back; null for everything.</summary>
    public Trace? Trace { get; init; }

    /// <summary>Contacts that are drawn closed, whatever the position; for who shows and hides them. Empty for none.</summary>
    public ImmutableArray<ContactBar> Bars { get; init; } = [];

    /// <summary>The joints whose numbers stand on the drawing; empty for none.</summary>
    public ImmutableArray<Joint> Joints { get; init; } = [];

    /// <summary>How the circuit differs from an earlier one; null where it is drawn by itself.</summary>
    public ChangesShown? Changes { get; init; }

    /// <summary>
    /// False for a picture that leaves out what only the bench needs: findings, what heat harms, what is cut to length or to be
    /// extended. One for who is not to solder from it.
    /// </summary>
    public bool ForBench { get; init; } = true;

    /// <summary>What is heard in every position, told under the drawing; null where it is not told.</summary>
    public HeardTable? Heard { get; init; }

    /// <summary>Marked on the drawing and listed under it, in this order; remarks that are no findings are left out.</summary>
    public ImmutableArray<Finding> Findings
    {
        get;
        init => field = [.. value.Where(finding => finding.Severity != Severity.Right)];
    } = [];
}
