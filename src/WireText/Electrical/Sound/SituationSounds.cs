using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Mutes;
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
    public IEnumerable<SituationSound> Sounding => Unmuted.Where(one => one.Sounds);

    public static SituationSounds Of(
        SoundMemo sounds,
        ImmutableArray<Situation> situations,
        ImmutableArray<Mute> mutes,
        CancellationToken cancellation = default
    )
    {
        var budget = new SolveBudget();
        var all = ImmutableArray.CreateBuilder<SituationSound>();
        foreach (var situation in situations.Where(situation => !IsMuted(situation, mutes)))
        {
            cancellation.ThrowIfCancellationRequested();
            all.Add(new SituationSound(situation, budget.Count(sounds.Of(situation.State))));
            if (budget.IsSpent)
            {
                return new SituationSounds([]);
            }
        }

        return new SituationSounds(all.ToImmutable());
    }

    /// <summary>
    /// True when all that sounds here sounds in an edited circuit too, with controls that a situation does not ask at rest. An
    /// edit may tell more or fewer situations apart, so that counts say nothing.
    /// </summary>
    /// <param name="circuit">Either of the two; they have the same controls.</param>
    public bool AreKeptBy(SituationSounds edited, Circuit circuit)
    {
        var sounding = edited.Sounding.Select(one => one.State).ToList();
        return Sounding
            .Select(one => one.State.Settled(circuit))
            .All(state => sounding.Exists(other => other.ControlCount == state.ControlCount && other.Holds(state)));
    }

    internal static bool IsMuted(Situation situation, ImmutableArray<Mute> mutes) =>
        mutes.Any(mute => mute.IsIn(situation.State));
}
