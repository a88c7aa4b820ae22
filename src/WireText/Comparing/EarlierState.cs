using WireText.Circuits;

namespace WireText.Comparing;

/// <summary>Where everything stood before a change, for where it stands after.</summary>
internal static class EarlierState
{
    /// <summary>
    /// The state of the earlier circuit in which what was there stands as it stands later; the rest is at rest, and a dial that
    /// is not turned later is not turned here.
    /// </summary>
    public static State Of(CircuitComparison circuits, State later)
    {
        var state = State.Rest(circuits.Before);
        foreach (var control in circuits.After.Controls)
        {
            if (
                later[control.Index] is { } position
                && circuits.ControlBefore(control) is { } was
                && position < was.Positions.Length
            )
            {
                state = state.At(was.Index, position);
            }
        }

        foreach (var dial in circuits.After.Dials.Where(dial => later.Travels[dial.Index] != dial.Rest))
        {
            if (circuits.DialBefore(dial) is { } was)
            {
                state = state.At(was, later.Travels[dial.Index]);
            }
        }

        return state;
    }
}
