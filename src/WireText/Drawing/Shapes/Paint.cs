using System.Collections.Immutable;
using WireText.Drawing.Lettering;

namespace WireText.Drawing.Shapes;

/// <summary>How an outline is painted.</summary>
/// <param name="LineWidth">In millimetres.</param>
public sealed record Paint(Colour? Fill, Colour? Line, double LineWidth)
{
    /// <summary>Dash and gap in turn, in millimetres; empty for an unbroken line.</summary>
    public ImmutableArray<double> Dashes { get; init; } = [];

    public bool HasRoundEnds { get; init; }

    public static Paint Filled(Colour fill) => new(fill, null, 0);

    public static Paint Stroked(Colour line, double width) => new(null, line, width);
}
