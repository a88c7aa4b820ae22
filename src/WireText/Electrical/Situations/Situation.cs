using System.Collections.Immutable;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Situations;

/// <summary>A set of states that share one live part: a position for the controls that matter, any for the others.</summary>
/// <param name="Positions">For each control the index of its position, or <see cref="Any"/>.</param>
/// <param name="Live">The live branches with every track kept whole, as indices into <see cref="Network.Branches"/>, in order.</param>
/// <param name="IsShort">True when contacts alone join tip and sleeve.</param>
public sealed record Situation(ImmutableArray<int> Positions, ImmutableArray<int> Live, bool IsShort)
{
    /// <summary>The position of a control that makes no difference.</summary>
    public const int Any = -1;

    /// <summary>True when a control may stand at that position here.</summary>
    public bool Allows(int control, int position) => Positions[control] == Any || Positions[control] == position;

    /// <summary>True when the state, one position for each control, belongs to this situation.</summary>
    public bool Holds(ReadOnlySpan<int> state)
    {
        for (var control = 0; control < state.Length; control++)
        {
            if (!Allows(control, state[control]))
            {
                return false;
            }
        }

        return true;
    }
}
