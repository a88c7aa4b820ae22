using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Mutes;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;

namespace WireText.Checks;

/// <summary>A smallest set of positions in which nothing ever sounds, always for one reason, while others sound.</summary>
/// <param name="Positions">One, two or three controls with a position each.</param>
/// <param name="State">One situation of these, to look for a wire to blame in.</param>
internal sealed record SilentPositions(ImmutableArray<(int Control, int Position)> Positions, State State)
{
    /// <summary>More controls than this together are nothing that a person would look for. Chosen.</summary>
    private const int MaxControls = 3;

    /// <summary>Sets of positions tried before the search ends. Chosen.</summary>
    internal const int TriedLimit = 20_000;

    /// <summary>Names that say that silence is meant.</summary>
    private static readonly ImmutableArray<string> SilentNames = ["off", "mute", "standby", "silent", "kill"];

    /// <summary>
    /// Where the signal is shorted, save where a name or a claim says that silence is meant, or by controls in a row across
    /// the jack: a mute that has to be armed.
    /// </summary>
    public static IEnumerable<SilentPositions> Shorted(StudyContext context) =>
        Of(context, IsShorted)
            .Where(silent =>
                !silent.Positions.Any(at => IsNamedSilent(context, at.Control, at.Position))
                && !IsClaimed(context.Circuit, silent.Positions, claim => claim is SilenceClaim)
                && !MuteChain.IsClosedBy(context.Study.Network, silent.Positions)
            );

    /// <summary>
    /// Where no coil reaches the jack, which then floats or hangs on a resistance; not where a battery is switched off by a
    /// position that says so, nor where a claim says that it is dead or open.
    /// </summary>
    public static IEnumerable<SilentPositions> Dead(StudyContext context) =>
        Of(context, IsDead)
            .Where(silent =>
                !IsSwitchedOff(context, silent)
                && !IsClaimed(context.Circuit, silent.Positions, claim => claim is DeadClaim or OpenClaim)
            );

    /// <summary>The sets in order of size, then of the situations.</summary>
    private static IEnumerable<SilentPositions> Of(StudyContext context, Func<SituationOutcomes, int, bool> isSilent)
    {
        if (context.Study.Outcomes is not { } outcomes)
        {
            yield break;
        }

        var unmuted = Enumerable
            .Range(0, outcomes.Situations.Length)
            .Where(i => !IsMuted(context, outcomes.Situations[i]))
            .ToList();
        var silenced = unmuted.Where(i => isSilent(outcomes, i)).ToList();
        var others = unmuted.Where(i => !isSilent(outcomes, i)).ToList();
        if (!others.Exists(i => outcomes.AtTheMiddle[i] == StructuralOutcome.Sounding))
        {
            yield break;
        }

        var tried = new HashSet<string>();
        for (var size = 1; size <= MaxControls; size++)
        {
            // What a smaller set explains needs no larger one.
            foreach (var i in silenced.ToList())
            {
                var state = outcomes.Situations[i].State;
                foreach (var set in SetsOf(context, state, size))
                {
                    if (!silenced.Contains(i) || tried.Count >= TriedLimit || !tried.Add(string.Join(' ', set)))
                    {
                        continue;
                    }

                    if (others.Exists(other => Allows(outcomes.Situations[other], set)))
                    {
                        continue;
                    }

                    silenced.RemoveAll(one => Allows(outcomes.Situations[one], set));
                    yield return new SilentPositions([.. set], state);
                }
            }
        }
    }

    private static bool IsShorted(SituationOutcomes outcomes, int situation) =>
        outcomes.AtTheMiddle[situation] != StructuralOutcome.Sounding
        && outcomes.AtRest[situation] == StructuralOutcome.Short;

    private static bool IsDead(SituationOutcomes outcomes, int situation) =>
        outcomes.AtTheMiddle[situation] != StructuralOutcome.Sounding
        && outcomes.AtRest[situation] != StructuralOutcome.Short;

    private static bool Allows(Situation situation, List<(int Control, int Position)> set) =>
        set.TrueForAll(at => situation.State.Allows(at.Control, at.Position));

    private static bool IsMuted(StudyContext context, Situation situation) =>
        context.Study.Mutes.Any(mute => mute.IsIn(situation.State));

    /// <summary>True when an <c>expect</c> says that it is meant there.</summary>
    private static bool IsClaimed(
        Circuit circuit,
        ImmutableArray<(int Control, int Position)> set,
        Func<Claim, bool> isMeant
    ) =>
        circuit
            .ExpectationsHere()
            .Any(expectation =>
                expectation.Claims.Any(isMeant)
                && set.All(at => expectation.State.Allows(at.Control, at.Position))
                && set.Any(at => expectation.State[at.Control] == at.Position)
            );

    private static bool IsSwitchedOff(StudyContext context, SilentPositions silent) =>
        silent.Positions.Any(at => IsNamedSilent(context, at.Control, at.Position))
        && Supply.PoweredAmplifiers(context.Study.Network, silent.State).Count
            < context.Circuit.Elements.Count(element => element is Amplifier);

    private static bool IsNamedSilent(StudyContext context, int control, int position) =>
        SilentNames.Contains(
            context.Circuit.Controls[control].Positions[position].Name,
            StringComparer.OrdinalIgnoreCase
        );

    /// <summary>Every choice of so many of the positions that a situation states, plugs and mutes left out.</summary>
    private static IEnumerable<List<(int Control, int Position)>> SetsOf(StudyContext context, State state, int size)
    {
        var stated = state
            .Stated.Where(at =>
                !context.Circuit.Controls[at.Control].IsPlug && context.Study.MuteOf(at.Control) is null
            )
            .ToList();
        return Choose(stated, size, from: 0);
    }

    private static IEnumerable<List<(int Control, int Position)>> Choose(
        List<(int Control, int Position)> stated,
        int size,
        int from
    )
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        for (var i = from; i < stated.Count; i++)
        {
            foreach (var rest in Choose(stated, size - 1, i + 1))
            {
                yield return [stated[i], .. rest];
            }
        }
    }
}
