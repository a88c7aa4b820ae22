using System.Collections.Immutable;

namespace WireText.Circuits;

/// <summary>Circuits with the names of positions in another order: the same wires, and other states meant by a name.</summary>
public static class Renaming
{
    /// <summary>
    /// The control's names in a new order. What is expected at a named position moves with the name, and so does a rest that
    /// was given by name.
    /// </summary>
    /// <param name="order">For each position the index of the position whose name it takes; a permutation.</param>
    public static Circuit WithPositionNames(this Circuit circuit, int control, ImmutableArray<int> order)
    {
        var old = circuit.Controls[control];
        var renamed = old with
        {
            Positions =
            [
                .. old.Positions.Select((position, i) => position with { Name = old.Positions[order[i]].Name }),
            ],
            Rest = old.IsRestNamed ? order.IndexOf(old.Rest) : old.Rest,
        };
        return circuit with
        {
            Controls = circuit.Controls.SetItem(control, renamed),
            Expectations = [.. circuit.Expectations.Select(Moved)],
        };

        Expectation Moved(Expectation expectation) =>
            expectation.State is var state && state[control] is { } position
                ? expectation with
                {
                    State = state
                        .At(control, state.Names(old.Name) ? order.IndexOf(position) : renamed.Rest)
                        .Saying(state.Named),
                }
                : expectation;
    }
}
