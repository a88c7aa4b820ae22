using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Situations;

/// <summary>A set of states that share one live part: a position for the controls that matter, any for the others.</summary>
/// <param name="State">Dials at rest.</param>
/// <param name="Live">The live branches with every track kept whole, as indices into <see cref="Network.Branches"/>, in order.</param>
/// <param name="IsShort">True when contacts alone join tip and sleeve.</param>
public sealed record Situation(State State, ImmutableArray<int> Live, bool IsShort);
