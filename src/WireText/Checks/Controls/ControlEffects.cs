using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Situations;

namespace WireText.Checks.Controls;

/// <summary>Whether the positions of a control can be told apart, at the jack or by what they leave hanging.</summary>
internal static class ControlEffects
{
    /// <summary>With more situations than this a control is taken to do something. Chosen.</summary>
    internal const int SituationLimit = 256;

    /// <summary>True when all positions give the same with all dials at the middle, whatever the other controls are set to.</summary>
    public static bool IsInert(StudyContext context, Control control)
    {
        if (context.Study.Outcomes is not { Situations: { Length: <= SituationLimit } situations })
        {
            return false;
        }

        return Pairs(situations, control)
            .All(pair => AreSame(context, control.Index, pair.State, pair.First, pair.Second));
    }

    /// <summary>States without the control's own position, and two positions of it to be compared there.</summary>
    private static IEnumerable<(State State, int First, int Second)> Pairs(
        ImmutableArray<Situation> situations,
        Control control
    )
    {
        for (var i = 0; i < situations.Length; i++)
        {
            for (var j = i; j < situations.Length; j++)
            {
                var (one, other) = (situations[i].State, situations[j].State);

                // Where neither asks the control, each compares it alone.
                var isAskedNowhere = one[control.Index] is null && other[control.Index] is null;
                if (
                    (i != j && isAskedNowhere)
                    || one.At(control.Index, null).Common(other.At(control.Index, null)) is not { } state
                )
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

    private static IEnumerable<int> Allowed(Control control, State state) =>
        state[control.Index] is { } position ? [position] : Enumerable.Range(0, control.Positions.Length);

    private static bool AreSame(StudyContext context, int control, State state, int first, int second)
    {
        var middle = state.AtAll(SituationOutcomes.Middle);
        return ControlTrace
            .Of(context, middle.At(control, first))
            .IsSameAs(ControlTrace.Of(context, middle.At(control, second)));
    }
}
