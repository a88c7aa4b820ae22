using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Pages;

/// <summary>
/// The states that a page can show: every position of every control, plugs at rest, with the knobs at their stops. The last
/// knob changes from each to the next, the first control last.
/// </summary>
public sealed class PageStates
{
    /// <summary>States of a page, all jacks together. Chosen: two controls and three knobs by twos fit, and the page stays small.</summary>
    public const int MostStates = 2_048;

    /// <summary>Lugs and wires that are marked as live or not, in all states together: of a large circuit a page has fewer states. Chosen: 2 MB of numbers.</summary>
    public const int MostMarks = 400_000;

    private PageStates(ImmutableArray<Control> controls, ImmutableArray<PageKnob> knobs, KnobTurning turning)
    {
        Controls = controls;
        Knobs = knobs;
        Turning = turning;
    }

    /// <summary>Those that have more than one position, plugs left out.</summary>
    public ImmutableArray<Control> Controls { get; }

    public ImmutableArray<PageKnob> Knobs { get; }

    public KnobTurning Turning { get; }

    /// <summary>How many positions all controls have together.</summary>
    public long Positions => Controls.Aggregate(1L, (count, control) => Product(count, control.Positions.Length));

    /// <summary>How many settings all knobs have together: the states of one position.</summary>
    public long Settings =>
        Turning switch
        {
            KnobTurning.None => 1,
            KnobTurning.Alone => 1 + Knobs.Sum(knob => (long)knob.Stops.Length - 1),
            _ => Knobs.Aggregate(1L, (count, knob) => Product(count, knob.Stops.Length)),
        };

    /// <summary>How many states a page of that circuit has at most.</summary>
    public static int LimitOf(Circuit circuit) =>
        Math.Min(MostStates, MostMarks / Math.Max(1, circuit.Lugs.Length + circuit.Wires.Length));

    /// <summary>The finest turning of the knobs that keeps to <see cref="LimitOf"/>; null when the positions alone are more.</summary>
    /// <param name="times">How often each state is worked out: at each jack, and with each value that an unknown one may have.</param>
    public static PageStates? Of(Circuit circuit, int times)
    {
        ImmutableArray<Control> controls =
        [
            .. circuit.Controls.Where(control => !control.IsPlug && control.Positions.Length > 1),
        ];
        return Enum.GetValues<KnobTurning>()
            .Select(turning => new PageStates(controls, KnobsOf(circuit, turning), turning))
            .FirstOrDefault(states => Product(Product(states.Positions, states.Settings), times) <= LimitOf(circuit));
    }

    /// <summary>Every state, in order.</summary>
    public ImmutableArray<State> Of(Circuit circuit)
    {
        IEnumerable<State> positions = [State.Rest(circuit)];
        foreach (var control in Controls)
        {
            positions =
            [
                .. positions.SelectMany(state =>
                    Enumerable.Range(0, control.Positions.Length).Select(at => state.At(control.Index, at))
                ),
            ];
        }

        return [.. positions.SelectMany(Turned)];
    }

    private IEnumerable<State> Turned(State state)
    {
        if (Turning == KnobTurning.None)
        {
            return [state];
        }

        if (Turning == KnobTurning.Alone)
        {
            return Knobs
                .SelectMany(knob =>
                    knob.Stops.Where((_, place) => place != knob.Rest).Select(stop => state.At(knob.Dial, stop))
                )
                .Prepend(state);
        }

        return Knobs.Aggregate(
            (IEnumerable<State>)[state],
            (states, knob) => states.SelectMany(one => knob.Stops.Select(stop => one.At(knob.Dial, stop)))
        );
    }

    private static ImmutableArray<PageKnob> KnobsOf(Circuit circuit, KnobTurning turning) =>
        turning == KnobTurning.None
            ? []
            : [.. circuit.Dials.Select(dial => PageKnob.Of(dial, turning == KnobTurning.ByTwo ? 2 : 1))];

    /// <summary>Never more than a long holds: past every bound it makes no difference by how much.</summary>
    private static long Product(long one, long other) => one > int.MaxValue ? one : one * other;
}
