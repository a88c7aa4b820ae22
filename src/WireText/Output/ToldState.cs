using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Situations;
using WireText.Electrical.Studies;

namespace WireText.Output;

/// <summary>A set of states, and what a line can claim of it.</summary>
/// <param name="State">Controls at any are at rest in what the line says, or at each position; see <paramref name="MeansAll"/>.</param>
/// <param name="Claims">In the words of the language; empty where nothing can be claimed.</param>
/// <param name="MeansAll">True when the claims are true of every position of the controls at any.</param>
/// <param name="IsChanged">True when something else is there than with the dials or the plug at rest.</param>
internal sealed record ToldState(State State, ImmutableArray<string> Claims, bool MeansAll, bool IsChanged)
{
    /// <summary>Sets of states that are told apart within one row. Chosen: a row is one set, or a few.</summary>
    private const int MostSets = 256;

    /// <summary>
    /// The states of a row at a dial setting: one set, or more where a control that does nothing at rest does something there.
    /// </summary>
    public static ImmutableArray<ToldState> Of(Study study, State row)
    {
        var rest = State.Rest(study.Circuit).Travels;
        var isTurned = !row.Travels.SequenceEqual(rest);
        return Merged(
            study,
            row,
            cube =>
            {
                var state = cube.Settled(study.Circuit);
                var (there, before) = (study.Analyse(state), study.Analyse(state.At(rest)));
                var isChanged = StateClaims.Print(study.Circuit, there) != StateClaims.Print(study.Circuit, before);
                return new ToldState(
                    cube,
                    Sure(
                        study,
                        one =>
                            StateClaims.Of(
                                one.Circuit,
                                one.Analyse(state),
                                isTurned ? one.Analyse(state.At(rest)) : null
                            )
                    ),
                    MeansAll: false,
                    isChanged
                );
            }
        );
    }

    /// <summary>What can be claimed whatever a value is that nobody knows.</summary>
    /// <param name="claims">Of the circuit, and of the same with values in place of the unknown.</param>
    public static ImmutableArray<string> Sure(Study study, Func<Study, ImmutableArray<string>> claims) =>
        study.Doubted.Aggregate(
            claims(study),
            (left, variant) => left.IsEmpty ? left : [.. left.Intersect(claims(variant), StringComparer.Ordinal)]
        );

    /// <summary>What is told of each set that a state with controls at any falls into, sets that say the same made one.</summary>
    public static ImmutableArray<ToldState> Merged(Study study, State start, Func<State, ToldState> tell)
    {
        var network = study.Network;
        var search = new ContactSearch(network, network.Branches, (network.Tip, network.Sleeve), MostSets);
        var leaves = start.HasAny ? search.Run(start) : null;
        return leaves is null
            ? [tell(start)]
            : RowMerger.Merge(
                study.Circuit,
                leaves.Select(leaf => tell(leaf.State)),
                told => told.State,
                (told, state) => told with { State = state },
                told => $"{told.IsChanged} {string.Join(',', told.Claims)}"
            );
    }
}
