using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Situations;

/// <summary>All situations of a network: they share no state and leave none out. Plugs stand at rest in all of them.</summary>
/// <param name="Situations">Ordered by the positions of the controls as declared; any comes first. Empty when there were too many.</param>
/// <param name="Crowding">
/// Empty, or the controls that together make more situations than the limit, in order of declaration.
/// </param>
public sealed record SituationTree(ImmutableArray<Situation> Situations, ImmutableArray<Control> Crowding)
{
    /// <summary>How many situations are looked at; beyond it the controls that make them are named instead. Chosen.</summary>
    public const int Limit = 65_536;

    /// <summary>
    /// How many branches a live part may have; beyond it no situation is looked at. Chosen: a pot is two of them, the largest
    /// example has less than forty.
    /// </summary>
    public const int MostLive = 4_000;

    /// <summary>Branches of the largest live part, where those are too many; null elsewhere.</summary>
    public int? TooManyLive { get; private init; }

    /// <summary>False when there were too many situations to list, or one of them is too large.</summary>
    public bool IsComplete => Crowding.IsEmpty && TooManyLive is null;

    /// <summary>
    /// Starts with the plugs in and every other control open, and asks only the controls that could change the live part,
    /// those nearest to the tip first: a selector before what hangs behind it.
    /// </summary>
    public static SituationTree Of(Network network, CancellationToken cancellation = default)
    {
        // All tracks stay resistances: with a pot turned up, a switch from its lug 2 to its lug 3 would look inert.
        var search = new ContactSearch(network, network.Branches, (network.Tip, network.Sleeve), Limit);
        var leaves = search.Run(State.Open(network.Circuit), cancellation);
        if (leaves is null)
        {
            return new SituationTree([], search.Crowding);
        }

        var largest = leaves.Select(leaf => leaf.Live.Length).DefaultIfEmpty().Max();
        if (largest > MostLive)
        {
            return new SituationTree([], []) { TooManyLive = largest };
        }

        leaves.Sort((a, b) => State.Compare(a.State, b.State));
        return new SituationTree([.. leaves.Select(leaf => new Situation(leaf.State, leaf.Live, leaf.IsJoined))], []);
    }
}
