using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.BenchPlans;
using WireText.Quantities;

namespace WireText.Output;

/// <summary>Words for what a meter shows at the bench, and for what may be wrong.</summary>
internal static class BenchWords
{
    /// <summary>The number of a reading, as printed: the first is 1.</summary>
    public static string NumberOf(int reading) => (reading + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>What a meter may show: <c>under 1 Ω</c>, <c>nothing</c>, <c>6.70–7.47 kΩ</c>.</summary>
    public static string BandOf(MeterBand band)
    {
        if (band.IsContinuity)
        {
            return $"under {RangeOf(MeterBand.ContinuityOhms)}";
        }

        if (band.IsNothing)
        {
            return "nothing";
        }

        if (double.IsInfinity(band.Most))
        {
            return $"over {ValueText.Figure(band.Least, Unit.Ohm)}";
        }

        var (least, most) = (ValueText.Figure(band.Least, Unit.Ohm), ValueText.Figure(band.Most, Unit.Ohm));
        var sameUnit = least.Split(' ')[1] == most.Split(' ')[1];
        return least == most ? most : $"{(sameUnit ? least.Split(' ')[0] : least)}–{most}";
    }

    /// <summary>The wrong readings of a group by their numbers, those that show the same together: <c>2–4 show nothing, 9 shows under 1 Ω</c>.</summary>
    public static string WrongOf(FaultGroup group) =>
        string.Join(
            ", ",
            group
                .Wrong.GroupBy(wrong => BandOf(wrong.Band))
                .Select(alike =>
                    $"{Numbers([.. alike.Select(wrong => wrong.Reading)])} {(alike.Count() == 1 ? "shows" : "show")} {alike.Key}"
                )
        );

    /// <summary>What a fault is, in the circuit's words.</summary>
    public static string Of(Fault fault, Circuit circuit) =>
        fault switch
        {
            WireLeftOut left => $"{WireWords(left.Wire, circuit)} left out",
            WireOnNeighbour on =>
                $"{WireWords(on.End.Wire, circuit)} on {circuit.NameOf(on.Lug)} instead of {circuit.NameOf(on.End.LugIn(circuit))}",
            ElementOpen open => $"{ElementWords(open.Element, circuit)} open",
            ElementShorted shorted => $"{ElementWords(shorted.Element, circuit)} shorted",
            TrackHalved halved => $"{ElementWords(halved.Element, circuit)} of half its value",
            _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "no words for it"),
        };

    /// <summary>A range of the meter: <c>200 Ω</c>.</summary>
    public static string RangeOf(double ohms) => ValueText.Figure(ohms, Unit.Ohm, figures: 1);

    /// <summary>Three and more in a row as a span: <c>2–4 7</c>.</summary>
    private static string Numbers(ImmutableArray<int> readings)
    {
        var words = new List<string>();
        for (var first = 0; first < readings.Length; )
        {
            var last = first;
            while (last + 1 < readings.Length && readings[last + 1] == readings[last] + 1)
            {
                last++;
            }

            if (last - first < 2)
            {
                last = first;
            }

            words.Add(
                last == first ? NumberOf(readings[first]) : $"{NumberOf(readings[first])}–{NumberOf(readings[last])}"
            );
            first = last + 1;
        }

        return string.Join(' ', words);
    }

    private static string WireWords(int index, Circuit circuit)
    {
        var wire = circuit.Wires[index];
        var kind = wire.Kind switch
        {
            WireKind.Core => "core",
            WireKind.Braid => "braid",
            WireKind.PartLead or WireKind.SpliceLead => "lead",
            _ => "wire",
        };
        return $"{kind} {circuit.NameOf(wire.From)} to {circuit.NameOf(wire.To)}";
    }

    private static string ElementWords(int index, Circuit circuit)
    {
        var element = circuit.Elements[index];
        var kind = element is Coil ? "coil" : circuit.Parts[element.Part].Kind;
        // The gangs of a pot may share its name, and so may what is inside a preamp.
        var isAlone = circuit.Elements.Count(other => other.Name == element.Name) == 1;
        var between = isAlone ? "" : $" from {circuit.NameOf(element.Ends[0])} to {circuit.NameOf(element.Ends[^1])}";
        return $"{kind} {element.Name}{between}";
    }
}
