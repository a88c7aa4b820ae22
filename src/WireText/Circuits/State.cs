using System.Collections.Immutable;

namespace WireText.Circuits;

/// <summary>
/// Where everything that can be moved stands: a position, or any, for each control, and a travel for each dial. With a control
/// at any it is a set of states: one for each choice of a position for that control.
/// </summary>
/// <remarks>Two are equal when they say the same of every control and dial, whatever was named.</remarks>
public sealed class State : IEquatable<State>
{
    private const int Any = -1;

    /// <summary>For each control the index of its position, or <see cref="Any"/>.</summary>
    private readonly ImmutableArray<int> positions;

    private State(ImmutableArray<int> positions, ImmutableArray<double> travels) =>
        (this.positions, Travels) = (positions, travels);

    /// <summary>For each dial of the circuit, 0 to 10.</summary>
    public ImmutableArray<double> Travels { get; }

    /// <summary>The settings that were said, in the order said: <c>sel=neck</c>; empty when none was, or <c>rest</c>.</summary>
    public ImmutableArray<string> Named { get; private init; } = [];

    public int ControlCount => positions.Length;

    /// <summary>True when some control is at any: it is more than one state, save where that control has one position.</summary>
    public bool HasAny => positions.Contains(Any);

    /// <summary>The controls that are not at any, in order of declaration, each with its position.</summary>
    public IEnumerable<(int Control, int Position)> Stated
    {
        get
        {
            for (var control = 0; control < positions.Length; control++)
            {
                if (positions[control] != Any)
                {
                    yield return (control, positions[control]);
                }
            }
        }
    }

    /// <summary>The index of a control's position; null where it is at any.</summary>
    public int? this[int control] => positions[control] == Any ? null : positions[control];

    /// <param name="positions">For each control, the index of its position, or null for any.</param>
    /// <param name="travels">For each dial, 0 to 10.</param>
    public static State Of(IEnumerable<int?> positions, ImmutableArray<double> travels) =>
        new([.. positions.Select(position => position ?? Any)], travels);

    /// <summary>Everything as the parts or the text say that it rests.</summary>
    public static State Rest(Circuit circuit) =>
        new([.. circuit.Controls.Select(control => control.Rest)], Resting(circuit));

    /// <summary>Plugs at rest, every other control at any, dials at rest: all that can be done to an instrument that is plugged in.</summary>
    public static State Open(Circuit circuit) =>
        new([.. circuit.Controls.Select(control => control.IsPlug ? control.Rest : Any)], Resting(circuit));

    /// <summary>The same with a control in a position, or at any for null. Nothing is named.</summary>
    public State At(int control, int? position) => new(positions.SetItem(control, position ?? Any), Travels);

    /// <summary>The same with every control that is at any put to rest. Nothing is named.</summary>
    public State Settled(Circuit circuit) =>
        new([.. circuit.Controls.Select(control => this[control.Index] ?? control.Rest)], Travels);

    /// <summary>The same with all dials elsewhere. Nothing is named.</summary>
    public State At(ImmutableArray<double> travels) => new(positions, travels);

    /// <summary>The same with a control in a position, and that named.</summary>
    public State With(Control control, int position) =>
        new(positions.SetItem(control.Index, position), Travels)
        {
            Named = Renamed(control.Name, StateText.Of(control, position)),
        };

    /// <summary>The same with a dial at a travel, and that named.</summary>
    public State With(Dial dial, double travel) =>
        new(positions, Travels.SetItem(dial.Index, travel)) { Named = Renamed(dial.Name, StateText.Of(dial, travel)) };

    /// <summary>The same with every dial at one travel, 0 to 10. Nothing is named.</summary>
    public State AtAll(double travel) => new(positions, [.. Travels.Select(_ => travel)]);

    /// <summary>The same with one dial elsewhere. Nothing is named.</summary>
    public State At(Dial dial, double travel) => new(positions, Travels.SetItem(dial.Index, travel));

    /// <summary>The same, as it was said.</summary>
    public State Saying(ImmutableArray<string> named) => new(positions, Travels) { Named = named };

    /// <summary>True when it was said where this control or dial stands, or that each of its positions is meant.</summary>
    public bool Names(string setting) =>
        Named.Any(named => named.StartsWith(setting + "=", StringComparison.OrdinalIgnoreCase));

    /// <summary>True when a control may stand at that position here.</summary>
    public bool Allows(int control, int position) => positions[control] is Any || positions[control] == position;

    /// <summary>What belongs to both, dials not looked at; null when no state does.</summary>
    public State? Common(State other)
    {
        var both = positions.ToBuilder();
        for (var control = 0; control < both.Count; control++)
        {
            if (both[control] == Any)
            {
                both[control] = other.positions[control];
            }
            else if (!other.Allows(control, both[control]))
            {
                return null;
            }
        }

        return new State(both.MoveToImmutable(), Travels);
    }

    /// <summary>True when some state belongs to both, dials not looked at.</summary>
    public bool Meets(State other)
    {
        for (var control = 0; control < positions.Length; control++)
        {
            if (positions[control] != Any && !other.Allows(control, positions[control]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>True when every state of the other belongs to this one, dials not looked at.</summary>
    public bool Holds(State other)
    {
        for (var control = 0; control < positions.Length; control++)
        {
            if (positions[control] != Any && positions[control] != other.positions[control])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>By the positions of the controls in order of declaration; any comes first.</summary>
    public static int Compare(State one, State other) =>
        one.positions.AsSpan().SequenceCompareTo(other.positions.AsSpan());

    public bool Equals(State? other) =>
        other is not null
        && positions.AsSpan().SequenceEqual(other.positions.AsSpan())
        && Travels.AsSpan().SequenceEqual(other.Travels.AsSpan());

    public override bool Equals(object? obj) => Equals(obj as State);

    public override int GetHashCode()
    {
        var hash = positions.Length;
        foreach (var position in positions)
        {
            hash = unchecked((hash * 31) + position);
        }

        return hash;
    }

    private static ImmutableArray<double> Resting(Circuit circuit) => [.. circuit.Dials.Select(dial => dial.Rest)];

    private ImmutableArray<string> Renamed(string name, string setting) =>
        [.. Named.Where(other => !other.StartsWith(name + "=", StringComparison.Ordinal)), setting];
}
