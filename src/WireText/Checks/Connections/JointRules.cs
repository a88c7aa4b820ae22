using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks.Connections;

/// <summary>Why a lug is reported.</summary>
internal enum JointFault
{
    /// <summary>Nothing is soldered to it.</summary>
    NoJoint,

    /// <summary>One of the two ends of a track of which neither is soldered; the other stands beside it.</summary>
    EitherEnd,

    /// <summary>It is soldered, and no position joins it with another that is.</summary>
    DeadEnd,
}

/// <summary>A lug that needs a joint or leads nowhere.</summary>
internal readonly record struct MissingJoint(int Lug, JointFault Fault);

/// <summary>Which lugs of a part must have a joint and have none.</summary>
internal sealed class JointRules(CheckContext context, Part part)
{
    private readonly Circuit circuit = context.Circuit;
    private readonly SortedDictionary<int, JointFault> missing = [];

    public static bool IsSplice(Part part) => string.Equals(part.Kind, "splice", StringComparison.OrdinalIgnoreCase);

    /// <summary>What is missing, in the order of the lugs.</summary>
    public ImmutableArray<MissingJoint> Missing()
    {
        if (IsSplice(part))
        {
            return [];
        }

        var tracks = part.Elements.Select(e => circuit.Elements[e]).OfType<Track>().ToList();
        var onTracks = tracks.SelectMany(track => track.Ends).ToHashSet();
        foreach (
            var lug in part.Lugs.Where(lug => !onTracks.Contains(lug) && MustBeWired(lug) && !context.IsJointed(lug))
        )
        {
            missing.Add(lug, JointFault.NoJoint);
        }

        tracks.ForEach(AddTrack);
        foreach (var pole in Poles())
        {
            AddPole(pole);
        }

        return [.. missing.Select(one => new MissingJoint(one.Key, one.Value))];
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
            missing.TryAdd(track.Wiper, JointFault.NoJoint);
        }
        else if (!context.IsJointed(track.Low) && !context.IsJointed(track.High))
        {
            missing.TryAdd(track.Low, JointFault.EitherEnd);
            missing.TryAdd(track.High, JointFault.EitherEnd);
        }
    }

    /// <summary>Of a pole that has wires, some position must join two of them.</summary>
    private void AddPole(List<int> pole)
    {
        var wired = pole.Where(context.IsJointed).ToHashSet();
        var groups = Groups().Where(group => group.Any(pole.Contains)).ToList();
        if (
            wired.Count == 0
            || pole.Exists(missing.ContainsKey)
            || groups.Exists(group => group.Count(wired.Contains) >= 2)
        )
        {
            return;
        }

        // The common is in every position: without it, or alone, the pole leads nowhere.
        var common = pole.MaxBy(lug => groups.Count(group => group.Contains(lug)));
        if (wired.Contains(common))
        {
            missing.TryAdd(wired.Min(), JointFault.DeadEnd);
        }
        else
        {
            missing.TryAdd(common, JointFault.NoJoint);
        }
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
