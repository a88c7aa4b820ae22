using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Faults;
using WireText.Electrical.Solving;
using WireText.Quantities;

namespace WireText.Diagnosing;

/// <summary>
/// What nobody knows of a right instrument and all readings share: values within their tolerances, the warmth of the copper, the
/// meter's scale, where a hand sets a dial. Each is a number of mean 0 and deviation 1; a reading is linear in them.
/// </summary>
internal sealed class Nuisances
{
    private readonly Circuit right;
    private readonly ImmutableArray<double> sigmas;
    private readonly double copperSigma;
    private readonly int copper;
    private readonly int scale;
    private readonly int firstDial;
    private readonly int size;

    public Nuisances(Circuit right)
    {
        this.right = right;
        sigmas = [.. right.Elements.Select(SigmaOf)];
        copper = right.Elements.Length;
        scale = copper + 1;
        firstDial = scale + 1;
        size = firstDial + right.Dials.Length;
        copperSigma = CopperWire.TemperatureCoefficient * BenchOdds.Kelvin;
    }

    public int Count => size + 1;

    /// <summary>How a reading between two lugs depends on them: for each the change of the reading by one deviation of it, in ohms.</summary>
    /// <param name="ohms">The reading itself.</param>
    /// <param name="fault">Null for an instrument that is right.</param>
    /// <param name="state">Where the dials stand; the law of one that is turned drops out.</param>
    public double[] SlopesOf(
        DirectField field,
        int lug,
        int other,
        double ohms,
        FaultSize? fault,
        State state,
        int? turned
    )
    {
        var slopes = new double[Count];
        slopes[scale] = ohms * BenchOdds.MeterScale;
        var flows = field.FlowsBetween(lug, other);
        for (var i = 0; i < flows.Length; i++)
        {
            if (flows[i] == 0)
            {
                continue;
            }

            var stretch = field.Stretches[i];
            var power = stretch.Ohms * flows[i] * flows[i];
            if (stretch.Element == fault?.Sized)
            {
                slopes[size] += power * fault.HalfWidth / Math.Sqrt(3);
                if (stretch.Element >= right.Elements.Length || right.Elements[stretch.Element] is Track)
                {
                    continue;
                }
            }

            if (stretch.Element < sigmas.Length)
            {
                AddValue(slopes, stretch, power, flows[i], state, turned);
            }
        }

        return slopes;
    }

    /// <summary>How the reading of one element alone depends on them.</summary>
    public double[] SlopesOf(Element element, double ohms, FaultSize? fault)
    {
        var slopes = new double[Count];
        slopes[scale] = ohms * BenchOdds.MeterScale;
        if (fault?.Sized == element.Index)
        {
            slopes[size] = ohms * fault.HalfWidth / Math.Sqrt(3);
        }

        slopes[element.Index] = ohms * sigmas[element.Index];
        slopes[copper] = element is Coil or Inductor ? ohms * copperSigma : 0;
        return slopes;
    }

    /// <summary>The variance that a reading has of its own, in ohms squared.</summary>
    /// <param name="step">One of the last digit of what was read.</param>
    public static double OwnVariance(double ohms, double step)
    {
        var (fraction, digit) = (ohms * BenchOdds.OwnFraction, step / Math.Sqrt(12));
        return (fraction * fraction) + (BenchOdds.OwnOhms * BenchOdds.OwnOhms) + (digit * digit);
    }

    private void AddValue(double[] slopes, Stretch stretch, double power, double flow, State state, int? turned)
    {
        slopes[stretch.Element] += power * sigmas[stretch.Element];
        switch (right.Elements[stretch.Element])
        {
            case Coil or Inductor:
                slopes[copper] += power * copperSigma;
                break;
            case Track track when track.Dial != turned && state.Travels[track.Dial] is > 0 and < Dial.FullyUp:
                var share = track.Taper.FractionAt(state.Travels[track.Dial]);
                var whole = stretch.IsHigh ? 1 - share : share;
                if (whole is > 0 and < 1)
                {
                    // Of the whole track x(1 − x) goes over from one section to the other for one in ln(x/(1 − x)).
                    var moved = (stretch.IsHigh ? -1 : 1) * stretch.Ohms * (1 - whole) * BenchOdds.Hand;
                    slopes[firstDial + track.Dial] += flow * flow * moved;
                }

                break;
        }
    }

    /// <summary>The deviation of a value as a fraction of it: a tolerance is a limit, and uniform within it.</summary>
    private static double SigmaOf(Element element)
    {
        var tolerance = element is Coil { Origins.Ohms: ValueOrigin.Assumed }
            ? BenchOdds.AssumedTolerance
            : ValueTolerance.OfOhms(element);
        return tolerance / Math.Sqrt(3);
    }
}
