using WireText.Circuits;

namespace WireText.Electrical.BenchPlans;

/// <summary>One thing that may be wrong with an instrument that is otherwise built as its text says.</summary>
public abstract record Fault
{
    /// <summary>The circuit with the fault in it: the same parts, controls and dials, other nets or values.</summary>
    public abstract Circuit In(Circuit right);

    /// <summary>The circuit with another element in the place of one.</summary>
    private protected static Circuit With(Circuit circuit, Element element) =>
        circuit with
        {
            Elements = circuit.Elements.SetItem(element.Index, element),
        };
}

/// <summary>A stretch of conductor that was left out, or whose joint does not hold.</summary>
/// <param name="Wire">Index into <see cref="Circuit.Wires"/>.</param>
public sealed record WireLeftOut(int Wire) : Fault
{
    public override Circuit In(Circuit right) => right.Without(Wire);
}

/// <summary>A wire's end on a lug beside the right one.</summary>
/// <param name="Lug">Where it is, as an index into <see cref="Circuit.Lugs"/>.</param>
public sealed record WireOnNeighbour(WireEnd End, int Lug) : Fault
{
    public override Circuit In(Circuit right) => right.WithEnds((End, Lug));
}

/// <summary>An element that lets no direct current through: a broken coil, a dry joint inside, a burnt track.</summary>
/// <param name="Element">Index into <see cref="Circuit.Elements"/>.</param>
public sealed record ElementOpen(int Element) : Fault
{
    /// <summary>Lifted at its far ends, which hang on the near one: an element on one net carries nothing.</summary>
    public override Circuit In(Circuit right) =>
        With(
            right,
            right.Elements[Element] switch
            {
                Coil coil => coil with { Finish = coil.Start },
                Resistor resistor => resistor with { B = resistor.A },
                Capacitor capacitor => capacitor with { B = capacitor.A },
                Inductor inductor => inductor with { B = inductor.A },
                Track track => track with { Low = track.Wiper, High = track.Wiper },
                var other => other,
            }
        );
}

/// <summary>An element whose ends are joined; all three of a track.</summary>
/// <param name="Element">Index into <see cref="Circuit.Elements"/>.</param>
public sealed record ElementShorted(int Element) : Fault
{
    public override Circuit In(Circuit right)
    {
        var ends = right.Elements[Element].Ends;
        return ends.Zip(ends.Skip(1)).Aggregate(right, (circuit, pair) => circuit.With(pair.First, pair.Second));
    }
}

/// <summary>A pot of half the value that the text says: another was in the drawer.</summary>
/// <param name="Element">Index into <see cref="Circuit.Elements"/> of its track.</param>
public sealed record TrackHalved(int Element) : Fault
{
    public override Circuit In(Circuit right)
    {
        var track = (Track)right.Elements[Element];
        return With(right, track with { Ohms = track.Ohms / 2 });
    }
}
