using System.Collections.Immutable;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;

namespace WireText.Checks.Switching;

/// <summary>A control on its way between two positions that both sound.</summary>
/// <param name="Before">What is heard in the one, the other controls as they stand.</param>
/// <param name="After">What is heard in the other.</param>
internal sealed record Passage(Transition Transition, SituationSound Before, SituationSound After)
{
    /// <summary>With more situations than this no passages are looked at. Chosen.</summary>
    private const int SituationLimit = 256;

    /// <summary>A position for each control that both situations share.</summary>
    public ImmutableArray<int> Positions =>
        [
            .. Before.Positions.Select(
                (position, control) => position == Situation.Any ? After.Positions[control] : position
            ),
        ];

    /// <summary>The passages of the controls that switch over in one way, in order of declaration.</summary>
    public static IEnumerable<Passage> Of(CheckContext context, Parts.SwitchOver between)
    {
        var controls = context
            .Circuit.Controls.Where(control => !control.IsPlug && control.Between == between)
            .ToList();
        if (controls.Count == 0)
        {
            return [];
        }

        var sounding = context.Heard.Sounding.ToList();
        return sounding.Count > SituationLimit
            ? []
            : from control in controls
            from transition in Transition.Of(control)
            from before in sounding
            where before.Situation.Allows(control.Index, transition.From)
            from after in sounding
            where after.Situation.Allows(control.Index, transition.To)
            where AreBeside(before.Positions, after.Positions, control.Index)
            select new Passage(transition, before, after);
    }

    /// <summary>True when some state belongs to both but for the control's own position.</summary>
    private static bool AreBeside(ImmutableArray<int> one, ImmutableArray<int> other, int control) =>
        Enumerable
            .Range(0, one.Length)
            .All(i => i == control || one[i] == other[i] || one[i] == Situation.Any || other[i] == Situation.Any);
}
