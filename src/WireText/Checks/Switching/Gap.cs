using WireText.Electrical.Networks;
using WireText.Parts;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Remarks on switches that leave the jack on nothing on their way from one position to the next.</summary>
public sealed class Gap : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "gap",
            Title: "the jack hangs on nothing while a switch moves",
            Severity: Severity.Note,
            Group: FindingGroup.Switching,
            Why: """
            A switch that breaks before it makes opens the signal for a moment. With nothing else across the jack the input
            floats meanwhile: a click, and a burst of hum in a noisy room. Many instruments do so and nobody minds; a switch
            that makes before it breaks, or a volume behind it, closes the gap.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch [|sel|]    spdt
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to out.tip red
            wire   neck.ground to out.sleeve black
            wire   bridge.ground to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    toggle-3way
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.B1 yellow
            wire   sel.A0 to sel.B0 to out.tip red
            wire   neck.ground to sel.case black
            wire   bridge.ground to sel.case black
            wire   sel.case to out.sleeve black
            """,
            Mend: "Nothing needs to be done. To close the gap, take a switch that makes before it breaks."
        )
        {
            OnlyWhenAsked = true,
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Network is not { } network)
        {
            return [];
        }

        return Passage
            .Of(context, SwitchOver.BreakBeforeMake)
            .Where(passage => IsOpen(network, passage))
            .Select(passage => passage.Transition)
            .Distinct()
            .GroupBy(transition => transition.Control.Index)
            .Select(found => Report(context, [.. found]));
    }

    /// <summary>True when no element leads from tip to sleeve, and nothing joins them.</summary>
    private static bool IsOpen(Network network, Passage passage)
    {
        var nodeOf = passage.Transition.AtTheDials(network, passage.State);
        return nodeOf[network.Tip] != nodeOf[network.Sleeve]
            && !LivePart
                .Find(
                    network,
                    network.Branches.AsSpan(),
                    nodeOf,
                    network.DialsOf(passage.State),
                    [],
                    (network.Tip, network.Sleeve)
                )
                .Contains(true);
    }

    private Finding Report(StudyContext context, List<Transition> transitions)
    {
        var control = transitions[0].Control;
        return Description.At(
            context.PlaceOf(control),
            $"'{control.Name}' leaves the jack on nothing for a moment {PassageText.Of(transitions)}",
            "to close the gap take a switch that makes before it breaks",
            [Subject.Part(context.Circuit.Parts[control.Part].Name), .. PassageText.SubjectsOf(transitions)]
        );
    }
}
