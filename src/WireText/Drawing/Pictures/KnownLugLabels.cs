using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace WireText.Drawing.Pictures;

/// <summary>
/// The places that were found for the names of lugs, part by part, with what was around: a part around which all is the same has
/// its names in the same places. An edit disturbs few parts, and finding places is most of the work of a picture.
/// </summary>
/// <remarks>Safe to ask from several threads: what two find at once is the same, and one of them is kept.</remarks>
internal sealed class KnownLugLabels
{
    /// <summary>Surroundings kept of each part, the latest: a part stands in the drawing and in its close-up, now and before an edit. Chosen.</summary>
    internal const int MostKept = 4;

    private readonly ConcurrentDictionary<string, ImmutableArray<Known>> byPart;

    /// <summary>Nothing is known yet.</summary>
    public KnownLugLabels()
        : this([]) { }

    private KnownLugLabels(IEnumerable<KeyValuePair<string, ImmutableArray<Known>>> known) =>
        byPart = new ConcurrentDictionary<string, ImmutableArray<Known>>(known, StringComparer.Ordinal);

    /// <summary>What is known of some parts, by id; to go on with after an edit, so that nothing is kept of a part that is gone.</summary>
    public KnownLugLabels Of(IReadOnlySet<string> parts) => new(byPart.Where(part => parts.Contains(part.Key)));

    /// <summary>The places of the names of a part's lugs: those that are known, or else those that are found now.</summary>
    public ImmutableArray<LugLabels.Spot> Of(
        string part,
        ImmutableArray<LugSurroundings> lugs,
        Func<ImmutableArray<LugLabels.Spot>> find
    )
    {
        var known = byPart.GetValueOrDefault(part, []);
        foreach (var one in known)
        {
            if (one.Lugs.Length == lugs.Length && one.Lugs.Zip(lugs).All(pair => pair.First.IsSame(pair.Second)))
            {
                return one.Spots;
            }
        }

        var found = new Known(lugs, find());
        byPart[part] = [found, .. known.Take(MostKept - 1)];
        return found.Spots;
    }

    private sealed record Known(ImmutableArray<LugSurroundings> Lugs, ImmutableArray<LugLabels.Spot> Spots);
}
