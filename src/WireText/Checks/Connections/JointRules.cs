using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks.Connections;

/// <summary>Which lugs of a part must have a joint and have none.</summary>
internal sealed class JointRules(CheckContext context, Part part)
{
    private readonly Circuit circuit = context.Circuit;
    private readonly SortedSet<int> missing = [];

    public static bool IsSplice(Part part) => string.Equals(part.Kind, "splice", StringComparison.OrdinalIgnoreCase);

    /// <summary>Lugs without a joint that need one, in order; a lug of a pole that leads nowhere is among them though it is wired.</summary>
    public ImmutableArray<int> Missing()
    {
        if (IsSplice(part))
        {
            return [];
        }

        var tracks = part.Elements.Select(e => circuit.Elements[e]).OfType<Track>().ToList();
        var onTracks = tracks.SelectMany(track => track.Ends).ToHashSet();
        missing.UnionWith(
            part.Lugs.Where(lug => !onTracks.Contains(lug) && MustBeWired(lug) && !context.IsJointed(lug))
        );
        tracks.ForEach(AddTrack);
        foreach (var pole in Poles())
        {
            AddPole(pole);
        }

        return [.. missing];
    }

    private bool MustBeWired(int lug)
    {
        var terminal = circuit.Lugs[lug];

        // Bare metal without a joint floats: the grounding checks say so, unless a coil ends on it.
        return !terminal.IsInner && !terminal.Terminal.IsSpare && (!terminal.IsMetal || IsElementEnd(lug));
    }

    private bool IsElementEnd(int lug) => part.Elements.Any(e => circuit.Elements[e].Ends.Contains(lug));

    /// <summary>A track needs its wiper and one end, unless all three are free.</summary>
    private void AddTrack(Track track)
    {
        if (!track.Ends.Any(context.IsJointed))
        {
            return;
        }

        if (!context.IsJointed(track.Wiper))
        {
            missing.Add(track.Wiper);
        }
        else if (!context.IsJointed(track.Low) && !context.IsJointed(track.High))
        {
            missing.Add(track.Low);
            missing.Add(track.High);
        }
    }

    /// <summary>Of a pole that has wires, some position must join two of them.</summary>
    private void AddPole(List<int> pole)
    {
        var wired = pole.Where(context.IsJointed).ToHashSet();
        var groups = Groups().Where(group => group.Any(pole.Contains)).ToList();
        if (wired.Count == 0 || groups.Exists(group => group.Count(wired.Contains) >= 2))
        {
            return;
        }

        // The common is in every position: without it, or alone, the pole leads nowhere.
        var common = pole.MaxBy(lug => groups.Count(group => group.Contains(lug)));
        missing.Add(wired.Contains(common) ? wired.Min() : common);
    }

    private IEnumerable<ImmutableArray<int>> Groups() =>
        part
            .Controls.Select(index => circuit.Controls[index])
            .Where(control => !control.IsPlug)
            .SelectMany(control => control.Positions)
            .SelectMany(position => position.Closed);

    /// <summary>Lugs that positions join with each other, directly or by way of others.</summary>
    private List<List<int>> Poles()
    {
        var lugs = Groups().SelectMany(group => group).Distinct().Order().ToList();
        var sets = new DisjointSets(circuit.Lugs.Length);
        foreach (var group in Groups())
        {
            foreach (var lug in group)
            {
                sets.Unite(group[0], lug);
            }
        }

        return [.. lugs.GroupBy(sets.Find).Select(pole => pole.ToList())];
    }
}
