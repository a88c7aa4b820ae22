using System.Collections.Immutable;
using WireText.Building;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Electrical.Traces;

namespace WireText;

/// <param name="Theme">The colours of the picture.</param>
/// <param name="FileName">For the title block; null for none.</param>
public sealed record DrawOptions(LayoutEffort Effort, Theme Theme, string? FileName)
{
    /// <summary>What is drawn in full colour while the rest steps back; null for everything.</summary>
    public Trace? Trace { get; init; }

    /// <summary>A sheet of small pictures instead of one; empty for one.</summary>
    public ImmutableArray<SheetView> Views { get; init; } = [];

    /// <summary>Contacts that are drawn closed, whatever the position; for who shows and hides them. Empty for none.</summary>
    public ImmutableArray<ContactBar> Bars { get; init; } = [];

    /// <summary>The joints whose numbers stand on the picture; empty for none.</summary>
    public ImmutableArray<Joint> Joints { get; init; } = [];

    /// <summary>See <see cref="PictureOptions.ForBench"/>.</summary>
    public bool ForBench { get; init; } = true;

    /// <summary>False for who tells elsewhere what is heard in every position.</summary>
    public bool TellsHeard { get; init; } = true;

    /// <summary>How the circuit differs from an earlier one; null where it is drawn by itself. Findings are left out then: the numbers are those of the changes.</summary>
    public ChangesShown? Changes { get; init; }

    /// <summary>Millimetres of paper for a millimetre of the real thing.</summary>
    public double Scale { get; init; } = 1;
}
