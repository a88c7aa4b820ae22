using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Tolerances;

/// <summary>What of an element is off.</summary>
public enum RunQuantity
{
    /// <summary>Its resistance to direct current.</summary>
    Ohms,

    Henries,

    Farads,

    /// <summary>The temperature of all copper, which one instrument has one of.</summary>
    Celsius,
}

/// <summary>
/// One thing that differs from instrument to instrument of a run: a value within its tolerance, or the warmth of the copper. A
/// deviation from −1 to 1 says where between its limits it is.
/// </summary>
/// <param name="Name">As <c>--what-if</c> names it: <c>vol</c>, <c>bridge.dcr</c>, <c>bridge.l</c>; several parted by a plus where one batch has one deviation.</param>
/// <param name="Elements">Whose value it is, as indices into <see cref="Circuit.Elements"/>; all of one deviation. Empty for the temperature.</param>
/// <param name="Least">What the value is multiplied by at −1; for the temperature degrees.</param>
/// <param name="Most">At 1.</param>
/// <param name="IsByRatio">True where nobody knows the value: then each ratio, and not each difference, is as likely.</param>
public sealed record RunFactor(
    string Name,
    RunQuantity Quantity,
    ImmutableArray<int> Elements,
    double Least,
    double Most,
    bool IsByRatio
)
{
    /// <summary>Stands for the temperature where factors are named.</summary>
    public const string Copper = "copper temperature";

    /// <summary>What the value is multiplied by at a deviation; of the temperature what copper's resistance at 20 °C is.</summary>
    /// <param name="deviation">−1 to 1.</param>
    public double MultiplierAt(double deviation)
    {
        var share = (deviation + 1) / 2;
        var value = IsByRatio ? Least * Math.Pow(Most / Least, share) : Least + ((Most - Least) * share);
        return Quantity == RunQuantity.Celsius ? Ohmmeter.CopperFactor(value) : value;
    }
}
