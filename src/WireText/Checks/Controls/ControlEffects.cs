using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;

namespace WireText.Checks.Controls;

/// <summary>Whether the positions of a control can be told apart, at the jack or by what they leave hanging.</summary>
internal static class ControlEffects
{
    /// <summary>With more situations than this a control is taken to do something. Chosen.</summary>
    private const int SituationLimit = 256;

    /// <summary>True when all positions give the same with all dials at the middle, whatever the other controls are set to.</summary>
    public static bool IsInert(CheckContext context, Control control)
    {
        if (context.Outcomes is not { Situations: { Length: <= SituationLimit } situations })
        {
            return false;
        }

        var middle = DialSetting.AllAt(context.Network!, SituationOutcomes.Middle);
        return Pairs(situations, control)
            .All(pair => AreSame(context, control.Index, middle, pair.State, pair.First, pair.Second));
    }

    /// <summary>States without the control's own position, and two positions of it to be compared there.</summary>
    private static IEnumerable<(ImmutableArray<int> State, int First, int Second)> Pairs(
        ImmutableArray<Situation> situations,
        Control control
    )
    {
        for (var i = 0; i < situations.Length; i++)
        {
            for (var j = i; j < situations.Length; j++)
            {
                var (one, other) = (situations[i].Positions, situations[j].Positions);

                // Where neither asks the control, each compares it alone.
                var isAskedNowhere = one[control.Index] == Situation.Any && other[control.Index] == Situation.Any;
                if ((i != j && isAskedNowhere) || Common(one, other, control.Index) is not { } state)
                {
                    continue;
                }

                foreach (var first in Allowed(control, one))
                {
                    foreach (var second in Allowed(control, other).Where(second => second != first))
                    {
                        yield return (state, first, second);
                    }
                }
            }
        }
    }

    private static IEnumerable<int> Allowed(Control control, ImmutableArray<int> positions) =>
        positions[control.Index] is >= 0 and var position ? [position] : Enumerable.Range(0, control.Positions.Length);

    /// <summary>What belongs to two sets of states at once, one control left out; null when nothing does.</summary>
    private static ImmutableArray<int>? Common(ImmutableArray<int> one, ImmutableArray<int> other, int control)
    {
        var state = one.ToBuilder();
        for (var i = 0; i < state.Count; i++)
        {
            if (i == control || other[i] == Situation.Any || other[i] == one[i])
            {
                continue;
            }

            if (one[i] != Situation.Any)
            {
                return null;
            }

            state[i] = other[i];
        }

        return state.ToImmutable();
    }

    private static bool AreSame(
        CheckContext context,
        int control,
        DialSetting dials,
        ImmutableArray<int> state,
        int first,
        int second
    ) =>
        ControlTrace
            .Of(context, state.SetItem(control, first), dials)
            .IsSameAs(ControlTrace.Of(context, state.SetItem(control, second), dials));
}
