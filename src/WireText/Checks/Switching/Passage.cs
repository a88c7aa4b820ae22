using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Sound;

namespace WireText.Checks.Switching;

/// <summary>A control on its way between two positions that both sound.</summary>
/// <param name="Before">What is heard in the one, the other controls as they stand.</param>
/// <param name="After">What is heard in the other.</param>
internal sealed record Passage(Transition Transition, SituationSound Before, SituationSound After)
{
    /// <summary>With more situations than this no passages are looked at. Chosen.</summary>
    internal const int SituationLimit = 256;

    /// <summary>What both situations share, but for the control on its way.</summary>
    public State State => Shared(Before.State, After.State, Transition.Control.Index) ?? Before.State;

    /// <summary>The passages of the controls that switch over in one way, in order of declaration.</summary>
    public static IEnumerable<Passage> Of(StudyContext context, Parts.SwitchOver between)
    {
        var controls = context
            .Circuit.Controls.Where(control => !control.IsPlug && control.Between == between)
            .ToList();
        if (controls.Count == 0)
        {
            return [];
        }

        var sounding = context.Study.Heard.Sounding.ToList();
        return sounding.Count > SituationLimit
            ? []
            : from control in controls
            from transition in Transition.Of(control)
            from before in sounding
            where before.State.Allows(control.Index, transition.From)
            from after in sounding
            where after.State.Allows(control.Index, transition.To)
            where Shared(before.State, after.State, control.Index) is not null
            select new Passage(transition, before, after);
    }

    /// <summary>What belongs to both but for one control; null when nothing does.</summary>
    private static State? Shared(State one, State other, int control) =>
        one.At(control, null).Common(other.At(control, null));
}
