using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks.Repairs;

/// <summary>One change that could mend a circuit.</summary>
public abstract record CircuitEdit
{
    /// <summary>The lugs whose nets it changes, as indices into <see cref="Circuit.Lugs"/>; empty when it changes no wire.</summary>
    public abstract ImmutableArray<int> LugsIn(Circuit circuit);

    /// <summary>The circuit with the change made.</summary>
    public abstract Circuit Apply(Circuit circuit);
}

/// <summary>The names of a control's positions in another order: the list was written in the wrong one.</summary>
/// <param name="Order">For each position the index of the position whose name it takes.</param>
public sealed record RenamePositions(int Control, ImmutableArray<int> Order) : CircuitEdit
{
    public override ImmutableArray<int> LugsIn(Circuit circuit) => [];

    public override Circuit Apply(Circuit circuit) => circuit.WithPositionNames(Control, Order);
}

/// <summary>A wire's end on another lug; both ends that meet there where a run passes the lug.</summary>
public sealed record MoveEnd(LugOnLine What, int Lug) : CircuitEdit
{
    public override ImmutableArray<int> LugsIn(Circuit circuit) => [What.LugIn(circuit), Lug];

    public override Circuit Apply(Circuit circuit) => circuit.WithEnds([.. What.Ends.Select(end => (end, Lug))]);
}

/// <summary>Two wire ends, each on the lug of the other.</summary>
public sealed record ExchangeEnds(LugOnLine First, LugOnLine Second) : CircuitEdit
{
    public override ImmutableArray<int> LugsIn(Circuit circuit) => [First.LugIn(circuit), Second.LugIn(circuit)];

    public override Circuit Apply(Circuit circuit)
    {
        var (first, second) = (First.LugIn(circuit), Second.LugIn(circuit));
        return circuit.WithEnds([
            .. First.Ends.Select(end => (end, second)),
            .. Second.Ends.Select(end => (end, first)),
        ]);
    }
}

/// <summary>All wires of two lugs exchanged.</summary>
public sealed record ExchangeLugs(int First, int Second, ImmutableArray<WireEnd> Ends) : CircuitEdit
{
    public override ImmutableArray<int> LugsIn(Circuit circuit) => [First, Second];

    public override Circuit Apply(Circuit circuit) =>
        circuit.WithEnds([.. Ends.Select(end => (end, end.LugIn(circuit) == First ? Second : First))]);
}

public sealed record RemoveWire(int Wire) : CircuitEdit
{
    public override ImmutableArray<int> LugsIn(Circuit circuit) => [circuit.Wires[Wire].From, circuit.Wires[Wire].To];

    public override Circuit Apply(Circuit circuit) => circuit.Without(Wire);
}

public sealed record AddWire(int From, int To) : CircuitEdit
{
    public override ImmutableArray<int> LugsIn(Circuit circuit) => [From, To];

    public override Circuit Apply(Circuit circuit) => circuit.With(From, To);
}
