using System.Collections.Immutable;

namespace WireText.Building;

/// <summary>Conductors that one touch of the iron makes one. On a case, each conductor has a joint of its own.</summary>
/// <param name="Lug">The lug, lead, case or splice that it is on: an index into <see cref="Circuits.Circuit.Lugs"/>.</param>
/// <param name="Wires">
/// What must lie there before it is soldered, in the order of the circuit: indices into <see cref="Circuits.Circuit.Wires"/>. A
/// run that passes the lug is here with both of its stretches.
/// </param>
public sealed record Joint(int Lug, ImmutableArray<int> Wires)
{
    /// <summary>From 1, in the order in which the joints are made.</summary>
    public int Number { get; init; }
}
