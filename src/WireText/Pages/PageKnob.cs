using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Pages;

/// <summary>A dial on a page, and where it can stand there.</summary>
/// <param name="Stops">Travels from 0 to 10, in order; where it rests is among them.</param>
public sealed record PageKnob(Dial Dial, ImmutableArray<double> Stops)
{
    /// <summary>The place of its rest among the stops.</summary>
    public int Rest => Stops.IndexOf(Dial.Rest);

    /// <summary>At every mark that is a multiple of the step, and at rest.</summary>
    public static PageKnob Of(Dial dial, int step) =>
        new(
            dial,
            [
                .. Enumerable
                    .Range(0, ((int)Setting.HighestTravel / step) + 1)
                    .Select(mark => (double)(mark * step))
                    .Append(dial.Rest)
                    .Distinct()
                    .Order(),
            ]
        );
}
