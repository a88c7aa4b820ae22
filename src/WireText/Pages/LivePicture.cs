using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Comparing;
using WireText.Drawing.Shapes;
using WireText.Text;

namespace WireText.Pages;

/// <summary>What a page shows of a text as soon as it was saved: the picture, what was found, and what is new.</summary>
/// <param name="File">What the text is called.</param>
/// <param name="Findings">What was found in it.</param>
/// <param name="Trouble">Why the picture is not of this text; null where it is.</param>
/// <param name="Circuit">What is drawn; null where nothing could be drawn yet.</param>
public sealed record LivePicture(string File, ImmutableArray<Finding> Findings, string? Trouble, Circuit? Circuit)
{
    /// <summary>The drawing on a light page and on a dark one; null where nothing could be drawn yet.</summary>
    public (Picture Light, Picture Dark)? Drawing { get; init; }

    /// <summary>How the circuit differs from the one that was shown before; null where it is the first, or not a new one.</summary>
    public CircuitComparison? Change { get; init; }
}
