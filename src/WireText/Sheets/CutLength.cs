using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Geometry;

namespace WireText.Sheets;

/// <summary>How long to cut a wire, from its way on the drawing. Known only where the author placed both of its parts.</summary>
internal sealed class CutLength
{
    /// <summary>In the cavity a wire lies in bends and not along straight lines: a tenth more. Common practice; not measured.</summary>
    private const double Slack = 1.1;

    /// <summary>For the stripped end, its hook round the lug and a second try, in millimetres at each end. Common practice.</summary>
    private const double End = 15;

    /// <summary>What a ruler on the bench is read to, in millimetres; rounded up.</summary>
    private const double Step = 5;

    private readonly Circuit circuit;
    private readonly Dictionary<string, double> routes;

    /// <param name="layout">Null where the circuit is not drawn: then nothing is known.</param>
    public CutLength(Circuit circuit, LayoutResult? layout)
    {
        this.circuit = circuit;
        routes = (layout?.Wires ?? []).ToDictionary(
            route => route.Wire.Id,
            route => Polyline.Length(route.Points.AsSpan()),
            StringComparer.Ordinal
        );
    }

    /// <summary>In millimetres, for a run with all of its stretches; null where it has to be measured.</summary>
    public double? Of(ImmutableArray<Wire> run)
    {
        if (!run.All(IsPlaced))
        {
            return null;
        }

        var length = (run.Sum(wire => routes[wire.Id]) * Slack) + (2 * End);
        return Math.Ceiling(length / Step) * Step;
    }

    private bool IsPlaced(Wire wire) => routes.ContainsKey(wire.Id) && IsPlaced(wire.From) && IsPlaced(wire.To);

    private bool IsPlaced(int lug) =>
        lug >= 0 && circuit.Places.Any(place => place.Part == circuit.Lugs[lug].Part && place.At is not null);
}
