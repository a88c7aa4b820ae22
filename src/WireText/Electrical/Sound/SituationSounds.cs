using System.Collections.Immutable;
using WireText.Circuits.States;
using WireText.Electrical.Mutes;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;

namespace WireText.Electrical.Sound;

/// <summary>What is heard in one situation, dials at rest.</summary>
public sealed record SituationSound(Situation Situation, JackSound Sound)
{
    public State State => Situation.State;

    public bool Sounds => Sound.Outcome == Outcome.Sound;

    /// <summary>The elements of the heard coils, in order of declaration.</summary>
    public IEnumerable<int> HeardCoils => Sound.Heard.Select(heard => heard.Coil.Index);
}

/// <summary>What is heard in every situation that no mute silences, dials at rest.</summary>
/// <param name="Unmuted">In the order of the situations; empty when there was too much to solve.</param>
public sealed record SituationSounds(ImmutableArray<SituationSound> Unmuted)
{
    /// <summary>Live parts solved before nothing more is told, so that no input can keep the checks busy. Chosen.</summary>
    internal const int SolveLimit = 8_192;

    public IEnumerable<SituationSound> Sounding => Unmuted.Where(one => one.Sounds);

    public static SituationSounds Of(SoundMemo sounds, ImmutableArray<Situation> situations, ImmutableArray<Mute> mutes)
    {
        var before = sounds.SolvedCount;
        var all = ImmutableArray.CreateBuilder<SituationSound>();
        foreach (var situation in situations.Where(situation => !IsMuted(situation, mutes)))
        {
            all.Add(new SituationSound(situation, sounds.Of(situation.State)));
            if (sounds.SolvedCount - before > SolveLimit)
            {
                return new SituationSounds([]);
            }
        }

        return new SituationSounds(all.ToImmutable());
    }

    internal static bool IsMuted(Situation situation, ImmutableArray<Mute> mutes) =>
        mutes.Any(mute => mute.IsIn(situation.State));
}
