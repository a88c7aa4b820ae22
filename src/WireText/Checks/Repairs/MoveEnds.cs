using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks.Repairs;

/// <summary>Several wire ends, each on another lug: the leads of a part, or what is on two lugs of a jack.</summary>
public sealed record MoveEnds(ImmutableArray<(WireEnd End, int Lug)> Moves) : CircuitEdit
{
    public override ImmutableArray<int> LugsIn(Circuit circuit) =>
        [.. Moves.SelectMany(move => new[] { move.End.LugIn(circuit), move.Lug })];

    public override Circuit Apply(Circuit circuit) => circuit.WithEnds([.. Moves]);
}
