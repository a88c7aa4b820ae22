using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;

namespace WireText.Output;

/// <summary>When batteries are drawn from, over all positions of controls and plugs; dials at rest.</summary>
internal static class BatteryStates
{
    /// <summary>Nothing where there is no battery; where there are too many states, those with a plug and without, all else at rest.</summary>
    public static IEnumerable<ToldState> Of(Network network)
    {
        var circuit = network.Circuit;
        var batteries = circuit.Elements.OfType<Battery>().ToList();
        if (batteries.Count == 0)
        {
            return [];
        }

        var open = State.Open(circuit);
        var plugs = circuit.Controls.Where(control => control.IsPlug).ToList();
        var all = plugs.Aggregate(open, (state, plug) => state.At(plug.Index, null));
        return MeantStates.OfBatteries(network, all) is { IsComplete: true } states
            ? RowMerger.Merge(
                circuit,
                states.Sets.Select(state => Tell(state, meansAll: true)),
                told => told.State,
                (told, state) => told with { State = state },
                told => string.Concat(told.Claims)
            )
            : plugs
                .SelectMany(plug =>
                    Enumerable.Range(0, plug.Positions.Length).Select(position => open.At(plug.Index, position))
                )
                .Prepend(open)
                .Select(state => Tell(state, meansAll: false));

        ToldState Tell(State cube, bool meansAll)
        {
            var state = cube.Settled(circuit);
            var drawn = batteries.Count(battery => BatteryLoop.IsClosed(network, state, battery));
            return new ToldState(
                cube,
                drawn == batteries.Count ? ["battery on"]
                    : drawn == 0 ? ["battery off"]
                    : [],
                meansAll,
                IsChanged: false
            );
        }
    }
}
