using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Roles;
using WireText.Electrical.Sound;

namespace WireText.Checks.Controls;

/// <summary>Pots of the same name and value, each between a pickup and the jack, and what they leave when all are at 0.</summary>
/// <param name="LeftDecibels">The level that is left against all at 10, in dB.</param>
internal sealed record VolumesTogether(ImmutableArray<Track> Tracks, double LeftDecibels)
{
    /// <summary>Those that are heard at rest and, all at 0, still are. A pot that is a volume by itself needs no other.</summary>
    public static IEnumerable<VolumesTogether> ThatLeak(StudyContext context) =>
        from alike in AlikeControls.Of(context)
        where alike.Length > 1 && alike.All(IsOnTheWay)
        let tracks = alike.Select(places => places.Track).ToImmutableArray()
        let zero = LevelAt(context, tracks, 0)
        where zero >= Thresholds.SilentDecibels
        select new VolumesTogether(tracks, zero - LevelAt(context, tracks, Dial.FullyUp));

    private static bool IsOnTheWay(LugPlaces places) =>
        places.Places.Contains(LugPlace.Pickup) && places.Places.Contains(LugPlace.Jack);

    private static double LevelAt(StudyContext context, ImmutableArray<Track> tracks, double travel) =>
        DialEffect.PowerOf(
            context.Study.Sounds.Of(
                tracks.Aggregate(
                    State.Rest(context.Circuit),
                    (state, track) => state.At(context.Circuit.Dials[track.Dial], travel)
                )
            )
        );
}
