using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Proposing;

/// <summary>Lists every state of all controls with what is said of it.</summary>
internal static class HarnessStates
{
    /// <summary>States of all controls that are looked at. Chosen: as many as twelve two-way switches have.</summary>
    internal const int Limit = 4_096;

    /// <summary>In the order of the controls as declared and of their positions; null when there are more than the limit.</summary>
    public static ImmutableArray<HarnessState>? Of(Circuit circuit, OpenLugs lugs)
    {
        IEnumerable<State> states = [State.Rest(circuit)];
        foreach (var control in circuit.Controls.Where(control => !control.IsPlug))
        {
            states = states.SelectMany(state =>
                Enumerable.Range(0, control.Positions.Length).Select(position => state.At(control.Index, position))
            );
        }

        var found = states.Take(Limit + 1).ToList();
        return found.Count > Limit ? null : [.. found.Select((state, i) => Of(circuit, lugs, i, state))];
    }

    private static HarnessState Of(Circuit circuit, OpenLugs lugs, int index, State state)
    {
        ImmutableArray<Expectation> claims =
        [
            .. circuit
                .Expectations.Where(one => Means(circuit, one.State, state))
                .Select(one => one with { State = Exactly(circuit, one.State, state) })
                .OrderBy(one => one.State.Travels.AsSpan().SequenceEqual(state.Travels.AsSpan()) ? 0 : 1)
                .ThenBy(one => one.Claims.Max(Weight)),
        ];
        return new HarnessState(
            index,
            state,
            [
                .. Enumerable
                    .Range(0, lugs.Columns.Length)
                    .Where(column => lugs.Columns[column].IsClosedAt(state[lugs.Columns[column].Control]!.Value)),
            ],
            claims
        )
        {
            IsListed = claims.Any(one => one.Claims.Any(claim => claim is CoilsClaim)),
            IsMeantSilent = claims.Any(one =>
                one.State.Equals(state) && one.Claims.Any(claim => claim is SilenceClaim or OpenClaim or DeadClaim)
            ),
            Moved = state.Stated.Count(at => at.Position != circuit.Controls[at.Control].Rest),
        };
    }

    /// <summary>True when an expectation is about a state, plugs and dials not looked at.</summary>
    private static bool Means(Circuit circuit, State expected, State state) =>
        circuit.Controls.All(control => control.IsPlug || expected.Allows(control.Index, state[control.Index]!.Value));

    /// <summary>The state at the dials of an expectation, and at its plugs where it names them.</summary>
    private static State Exactly(Circuit circuit, State expected, State state) =>
        circuit
            .Controls.Where(control => control.IsPlug)
            .Aggregate(
                state.At(expected.Travels),
                (exact, plug) => exact.At(plug.Index, expected[plug.Index] ?? plug.Rest)
            );

    /// <summary>What is quick to refute comes first.</summary>
    private static int Weight(Claim claim) =>
        claim switch
        {
            CoilsClaim or SilenceClaim or OpenClaim or DeadClaim or BatteryClaim => 0,
            HumCancellingClaim => 1,
            ReadsClaim or LevelClaim or LevelAtClaim => 2,
            _ => 3,
        };
}
