using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Checks.Repairs;

/// <summary>Whether two circuits of the same parts do the same at every jack and ground the same metal, in every state.</summary>
/// <remarks>
/// Where the live parts differ in structure, they are solved at fixed frequencies and dial settings with every value scaled
/// by a factor of its own, so that twin coils do not hide an exchange. Both answers are rational functions of low degree in
/// the values: agreement at such points means identity with near certainty (Schwartz 1980).
/// </remarks>
public static class Behaviour
{
    /// <summary>States compared one by one; with more, the situations of both circuits are. Chosen.</summary>
    internal const int MaxStates = 4_096;

    /// <summary>How far two answers may differ, relative to the larger. Chosen.</summary>
    private const double Tolerance = 1e-9;

    /// <summary>
    /// Settings of the dials, each a travel for the first dial and a step from one dial to the next, round from 10 to 0: all
    /// up, all down, all at the middle, and two in which no two dials stand alike. Chosen; no meaning.
    /// </summary>
    private static readonly ImmutableArray<(double First, double Step)> Settings =
    [
        (5, 0),
        (10, 0),
        (0, 0),
        (3.7, 2.3),
        (7.3, 4.1),
    ];

    /// <summary>Chosen; no meaning: low, in the middle, and near the resonances of pickups.</summary>
    private static readonly double[] Hertz = [137.31, 911.77, 4273.13];

    public static bool IsEqual(Circuit first, Circuit second) => FirstDifference(first, second) is null;

    /// <summary>The first state in which the two can be told apart, and by what; null when they are equal.</summary>
    /// <param name="dropsSign">
    /// True to take two states as alike that differ in the sign of all that is heard: it moves the loudspeaker the other way.
    /// </param>
    public static BehaviourDifference? FirstDifference(Circuit first, Circuit second, bool dropsSign = false)
    {
        var (a, b) = (Scaled(first), Scaled(second));
        return a
            .Outputs.Select(jack =>
                FirstDifference(Network.Of(a.SeenFrom(jack))!, Network.Of(b.SeenFrom(jack))!, dropsSign)
            )
            .FirstOrDefault(one => one is not null);
    }

    private static BehaviourDifference? FirstDifference(Network a, Network b, bool dropsSign) =>
        States(a, b).Select(state => DifferenceIn(a, b, state, dropsSign)).FirstOrDefault(one => one is not null);

    private static BehaviourDifference? DifferenceIn(Network a, Network b, State state, bool dropsSign)
    {
        if (!MetalIn(a, state).SequenceEqual(MetalIn(b, state)))
        {
            return new BehaviourDifference(state, DifferenceKind.Grounding);
        }

        if (!SuppliesIn(a, state).SequenceEqual(SuppliesIn(b, state)))
        {
            return new BehaviourDifference(state, DifferenceKind.Supply);
        }

        if (!CoilPlacement.Of(a, state).SequenceEqual(CoilPlacement.Of(b, state)))
        {
            return new BehaviourDifference(state, DifferenceKind.CoilPlace);
        }

        return SoundDifference(a, b, state, dropsSign);
    }

    private static BehaviourDifference? SoundDifference(Network a, Network b, State state, bool dropsSign)
    {
        foreach (var setting in Settings)
        {
            ImmutableArray<double> travels =
            [
                .. a.Circuit.Dials.Select(dial =>
                    (setting.First + (setting.Step * dial.Index)) % Math.BitIncrement(Dial.FullyUp)
                ),
            ];
            var first = LiveNetwork.Of(a, state.At(travels));
            var second = LiveNetwork.Of(b, state.At(travels));
            if (!first.IsLike(second) && !IsSolvedAlike(first, second, dropsSign))
            {
                return new BehaviourDifference(state.At(travels), DifferenceKind.Sound);
            }
        }

        return null;
    }

    private static bool IsSolvedAlike(LiveNetwork first, LiveNetwork second, bool dropsSign)
    {
        if (first.IsShort != second.IsShort || first.IsOpen != second.IsOpen)
        {
            return false;
        }

        var (a, b) = (AcSolver.Prepare(first, load: null), AcSolver.Prepare(second, load: null));
        return a?.Solve(Hertz) is { } one
            && b?.Solve(Hertz) is { } other
            && (IsNear(one, other, sign: 1) || (dropsSign && IsNear(one, other, sign: -1)));
    }

    private static bool IsNear(AcAnswer a, AcAnswer b, int sign)
    {
        if (!a.Coils.SequenceEqual(b.Coils))
        {
            return false;
        }

        for (var f = 0; f < Hertz.Length; f++)
        {
            if (
                !IsNear(a.ImpedanceAt(f), b.ImpedanceAt(f))
                || Enumerable.Range(0, a.Coils.Length).Any(coil => !IsNear(a.GainAt(coil, f), sign * b.GainAt(coil, f)))
            )
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsNear(Complex a, Complex b) =>
        Complex.Abs(a - b) <= Tolerance * Math.Max(Complex.Abs(a), Complex.Abs(b));

    /// <summary>The amplifiers that work, and the batteries that are drawn from, as elements.</summary>
    private static IEnumerable<int> SuppliesIn(Network network, State state)
    {
        var drawn = new List<int>(Supply.PoweredAmplifiers(network, state).Order());
        foreach (var battery in network.Circuit.Elements.OfType<Battery>())
        {
            if (BatteryLoop.IsClosed(network, state, battery))
            {
                drawn.Add(battery.Index);
            }
        }

        return drawn;
    }

    /// <summary>How each metal lug comes to the sleeve: by solder, by touch, by contacts, or not.</summary>
    private static IEnumerable<int> MetalIn(Network network, State state)
    {
        var (circuit, nodeOf) = (network.Circuit, network.InContact(state));
        var sleeve = circuit.Outputs[0].Sleeve;
        return circuit
            .Lugs.Where(lug => lug.IsMetal)
            .Select(lug =>
                circuit.Nets.SameSolder(lug.Index, sleeve) ? 3
                : circuit.Nets.SameNet(lug.Index, sleeve) ? 2
                : nodeOf[circuit.Nets.OneNet[lug.Index]] == nodeOf[network.Sleeve] ? 1
                : 0
            )
            .ToList();
    }

    private static IEnumerable<State> States(Network a, Network b)
    {
        var count = a.Circuit.Controls.Aggregate(
            1L,
            (many, control) => Math.Min(many * control.Positions.Length, int.MaxValue)
        );
        if (count > MaxStates)
        {
            return SituationTree
                .Of(a)
                .Situations.Concat(SituationTree.Of(b).Situations)
                .Select(situation => situation.State);
        }

        IEnumerable<State> states = [State.Rest(a.Circuit)];
        foreach (var control in a.Circuit.Controls)
        {
            states = states.SelectMany(state =>
                Enumerable.Range(0, control.Positions.Length).Select(position => state.At(control.Index, position))
            );
        }

        return states;
    }

    /// <summary>Every value times a factor of its own between 0.7 and 1.4.</summary>
    private static Circuit Scaled(Circuit circuit) =>
        circuit with
        {
            Elements = [.. circuit.Elements.Select(element => Scaled(element, Factor(element.Index)))],
        };

    private static Element Scaled(Element element, double factor) =>
        element switch
        {
            Coil coil => coil with { Ohms = coil.Ohms * factor, Henries = coil.Henries * factor },
            Track track => track with { Ohms = track.Ohms * factor },
            Resistor resistor => resistor with { Ohms = resistor.Ohms * factor },
            Capacitor capacitor => capacitor with { Farads = capacitor.Farads * factor },
            Inductor inductor => inductor with { Ohms = inductor.Ohms * factor, Henries = inductor.Henries * factor },
            Battery battery => battery with { Ohms = battery.Ohms * factor },
            Amplifier amplifier => amplifier with { InputOhms = amplifier.InputOhms * factor },
            _ => element,
        };

    /// <summary>Multiples of the golden ratio spread evenly and never repeat.</summary>
    private static double Factor(int index)
    {
        var turns = (index + 1) * 0.6180339887498949;
        return 0.7 + (0.7 * (turns - Math.Floor(turns)));
    }
}
