using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Studies;

namespace WireText.Output;

/// <summary>What a jack does with another plug than the one at rest, and without one; dials at rest.</summary>
internal static class PlugStates
{
    /// <summary>For each such position the states in which it changes something; where it never does, what is there at rest.</summary>
    public static IEnumerable<ToldState> Of(Study study)
    {
        var open = State.Open(study.Circuit);
        foreach (var plug in study.Circuit.Controls.Where(control => control.IsPlug))
        {
            foreach (var position in Enumerable.Range(0, plug.Positions.Length).Where(at => at != plug.Rest))
            {
                var start = open.At(plug.Index, position);
                var changed = ToldState
                    .Merged(study, start, cube => Tell(study, plug, cube))
                    .Where(told => told.IsChanged)
                    .ToList();
                foreach (var told in changed.DefaultIfEmpty(Tell(study, plug, start) with { MeansAll = false }))
                {
                    yield return told;
                }
            }
        }
    }

    private static ToldState Tell(Study study, Control plug, State cube)
    {
        var state = cube.Settled(study.Circuit);
        var isBare =
            !study.Circuit.Outputs.Skip(1).Any(other => other.Part == plug.Part)
            && plug.Positions[state[plug.Index]!.Value].Name == BareJack.NoPlug;
        var claims = ClaimsIn(state);
        return new ToldState(
            cube,
            claims,
            MeansAll: true,
            !claims.SequenceEqual(ClaimsIn(state.At(plug.Index, plug.Rest)))
        );

        ImmutableArray<string> ClaimsIn(State at) =>
            ToldState.Sure(
                study,
                one =>
                    isBare
                        ? StateClaims.AtBareJack(one.Analyse(at))
                        : StateClaims.Of(one.Circuit, one.Analyse(at), before: null)
            );
    }
}
