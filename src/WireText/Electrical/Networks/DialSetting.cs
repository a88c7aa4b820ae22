using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Networks;

/// <summary>What a dial setting makes of a branch.</summary>
public enum SectionState
{
    /// <summary>It is an element like any other.</summary>
    Kept,

    /// <summary>A track section so small that its ends are one node.</summary>
    Joined,

    /// <summary>The wiper has left the track: nothing is there.</summary>
    Absent,
}

/// <summary>Where every dial stands, as far as it joins or opens track sections.</summary>
public sealed class DialSetting
{
    /// <summary>A section below this is a join, not a resistance, in ohms. Chosen; a solder joint has as much.</summary>
    public const double JoinOhms = 0.01;

    private readonly ImmutableArray<SectionState> states;

    private DialSetting(ImmutableArray<double> travels, ImmutableArray<SectionState> states)
    {
        Travels = travels;
        this.states = states;
    }

    /// <summary>For each dial, 0 to 10; empty when all tracks are kept whole.</summary>
    public ImmutableArray<double> Travels { get; }

    /// <summary>No dial stands anywhere: every track section is a resistance, whatever its taper.</summary>
    public static DialSetting Undecided(Network network) =>
        new([], [.. network.Branches.Select(_ => SectionState.Kept)]);

    /// <param name="travels">For each dial, 0 to 10. Tracks of one dial share it.</param>
    public static DialSetting At(Network network, ImmutableArray<double> travels) =>
        new(
            travels,
            [.. network.Branches.Select(branch => StateAt(network.Circuit.Elements[branch.Element], branch, travels))]
        );

    public SectionState StateOf(Branch branch) => states[branch.Index];

    /// <summary>The resistance of the low and the high section of a track, in ohms, not looking at <c>free-at</c>.</summary>
    public static (double Low, double High) Sections(Track track, double travel)
    {
        var fraction = track.Taper.FractionAt(travel);
        return (fraction * track.Ohms, (1 - fraction) * track.Ohms);
    }

    /// <summary>True when the wiper has left the track and rests on the high lug.</summary>
    /// <remarks>The track is cut at one end of the travel: at 10 in the usual case, so from that point to the end it is free.</remarks>
    public static bool IsFree(Track track, double travel) =>
        track.FreeAt is { } freeAt && (freeAt >= 5 ? travel >= freeAt : travel <= freeAt);

    private static SectionState StateAt(Element element, Branch branch, ImmutableArray<double> travels)
    {
        if (element is not Track track)
        {
            return SectionState.Kept;
        }

        var travel = travels[track.Dial];
        var isLow = branch.Kind == BranchKind.TrackLow;
        if (IsFree(track, travel))
        {
            return isLow ? SectionState.Absent : SectionState.Joined;
        }

        var (low, high) = Sections(track, travel);
        return (isLow ? low : high) < JoinOhms ? SectionState.Joined : SectionState.Kept;
    }
}
