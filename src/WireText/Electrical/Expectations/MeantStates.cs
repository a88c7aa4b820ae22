using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;

namespace WireText.Electrical.Expectations;

/// <summary>The states that a claim is about, in sets of one live part; those of a battery one by one.</summary>
/// <param name="Sets">When there were too many, those looked at; they can refute a claim and never prove it.</param>
/// <param name="Crowding">The controls at any position that make too many; empty when all states are there.</param>
/// <param name="Limit">How many are looked at.</param>
public sealed record MeantStates(ImmutableArray<State> Sets, ImmutableArray<Control> Crowding, int Limit)
{
    /// <summary>States looked at for a claim on batteries, which contacts far from the jack can decide. Chosen.</summary>
    internal const int BatteryLimit = 4_096;

    public bool IsComplete { get; private init; } = true;

    /// <summary>Found by looking for what changes the live part.</summary>
    public static MeantStates OfSound(Network network, State start, CancellationToken cancellation)
    {
        var tips = (network.Tip, network.Sleeve);
        var search = new ContactSearch(network, network.Branches, tips, SituationTree.Limit);
        return search.Run(start, cancellation) is { } leaves
            ? new MeantStates([.. leaves.Select(leaf => leaf.State)], [], SituationTree.Limit)
            : new MeantStates([], search.Crowding, SituationTree.Limit) { IsComplete = false };
    }

    /// <summary>Every position of every control that is open.</summary>
    public static MeantStates OfBatteries(Network network, State start)
    {
        IEnumerable<State> states = [start];
        var open = network.Circuit.Controls.Where(control => start[control.Index] is null).ToList();
        foreach (var control in open)
        {
            states = states.SelectMany(state =>
                Enumerable.Range(0, control.Positions.Length).Select(position => state.At(control.Index, position))
            );
        }

        var found = states.Take(BatteryLimit + 1).ToImmutableArray();
        return found.Length <= BatteryLimit
            ? new MeantStates(found, [], BatteryLimit)
            : new MeantStates(
                found[..BatteryLimit],
                [.. open.Where(control => control.Positions.Length > 1)],
                BatteryLimit
            )
            {
                IsComplete = false,
            };
    }
}

/// <summary>A claim that is neither proved nor refuted: it means more states than are looked at.</summary>
public sealed record UnjudgedClaim(Claim Claim, MeantStates States);
