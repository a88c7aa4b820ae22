using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Mutes;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Roles;

/// <summary>What every dial of a circuit does, situation by situation; muted ones are left out.</summary>
public sealed class DialRoles
{
    /// <summary>
    /// Dials beyond which none is turned: with each the whole network is solved anew. Chosen: no instrument has so many.
    /// </summary>
    public const int MostDials = 128;

    private readonly ImmutableArray<ImmutableArray<DialEffect>> effects;

    private DialRoles(ImmutableArray<ImmutableArray<DialEffect>> effects, bool isComplete) =>
        (this.effects, IsComplete) = (effects, isComplete);

    /// <summary>False when there was too much to solve; then nothing is told of any dial.</summary>
    public bool IsComplete { get; }

    /// <summary>What a dial does in each situation in which its track is live, in order; empty when it is nowhere.</summary>
    public ImmutableArray<DialEffect> EffectsOf(Dial dial) => effects[dial.Index];

    public static DialRoles Of(
        SoundMemo sounds,
        ImmutableArray<Situation> situations,
        ImmutableArray<Mute> mutes,
        CancellationToken cancellation = default
    )
    {
        var network = sounds.Network;
        if (network.Circuit.Dials.Length > MostDials)
        {
            return Nothing(network.Circuit);
        }

        var unmuted = situations.Where(situation => !SituationSounds.IsMuted(situation, mutes)).ToList();
        var budget = new SolveBudget();
        var all = ImmutableArray.CreateBuilder<ImmutableArray<DialEffect>>();
        foreach (var dial in network.Circuit.Dials)
        {
            var found = ImmutableArray.CreateBuilder<DialEffect>();
            foreach (var situation in unmuted.Where(situation => IsLive(network, situation, dial)))
            {
                cancellation.ThrowIfCancellationRequested();
                if (budget.IsSpent)
                {
                    return Nothing(network.Circuit);
                }

                if (DialEffect.Of(sounds, dial, situation.State, budget) is { } effect)
                {
                    found.Add(effect);
                }
            }

            all.Add(found.ToImmutable());
        }

        return new DialRoles(all.ToImmutable(), true);
    }

    /// <summary>The effects of a dial where it has any; empty when it is inert everywhere.</summary>
    public IReadOnlyList<DialEffect> EffectiveOf(Dial dial) =>
        [.. EffectsOf(dial).Where(effect => effect.Role != DialRole.Inert)];

    /// <summary>The effects of a dial when it has one of some roles wherever it has any; else empty.</summary>
    public IReadOnlyList<DialEffect> AgreedOn(Dial dial, params ReadOnlySpan<DialRole> roles)
    {
        var effective = EffectiveOf(dial);
        foreach (var effect in effective)
        {
            if (!roles.Contains(effect.Role))
            {
                return [];
            }
        }

        return effective;
    }

    private static DialRoles Nothing(Circuit circuit) =>
        new([.. circuit.Dials.Select(_ => ImmutableArray<DialEffect>.Empty)], isComplete: false);

    private static bool IsLive(Network network, Situation situation, Dial dial) =>
        situation.Live.Any(branch =>
            network.Circuit.Elements[network.Branches[branch].Element] is Track track && track.Dial == dial.Index
        );
}
