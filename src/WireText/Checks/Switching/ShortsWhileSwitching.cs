using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Parts;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Remarks on switches that short a coil on their way from one position to the next.</summary>
public sealed class ShortsWhileSwitching : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "shorts-while-switching",
            Title: "a pickup is shorted while a switch moves",
            Severity: Severity.Note,
            Group: FindingGroup.Switching,
            Why: """
            A switch that makes before it breaks joins two throws for a moment. Where these are the two ends of a coil, as on
            a phase or a series switch, the coil is shorted meanwhile. That does no harm to it: the sound is gone for as long
            as the switch takes. A switch that breaks before it makes does not do that.
            """,
            Bad: """
            pickup   neck   single-coil wind=cw magnet=north
            pickup   bridge single-coil wind=ccw magnet=south
            switch   [|phase|]  slide-dpdt
            pot      vol    250k audio
            jack     out    mono
            wire     neck.hot to vol.3 white
            wire     neck.ground to vol.case black
            wire     bridge.hot to phase.A0 yellow
            wire     bridge.ground to phase.B0 green
            wire     phase.A1 to phase.B2 to vol.3 orange
            wire     phase.A2 to phase.B1 to vol.case black
            wire     vol.1 to vol.case bare
            wire     vol.2 to out.tip white
            wire     vol.case to out.sleeve black
            """,
            Good: """
            pickup   neck   single-coil wind=cw magnet=north
            pickup   bridge single-coil wind=ccw magnet=south
            switch   phase  dpdt
            pot      vol    250k audio
            jack     out    mono
            wire     neck.hot to vol.3 white
            wire     neck.ground to vol.case black
            wire     bridge.hot to phase.A0 yellow
            wire     bridge.ground to phase.B0 green
            wire     phase.A1 to phase.B2 to vol.3 orange
            wire     phase.A2 to phase.B1 to vol.case black
            wire     vol.1 to vol.case bare
            wire     vol.2 to out.tip white
            wire     vol.case to out.sleeve black
            """,
            Mend: "Nothing needs to be done. To be rid of it, take a switch that breaks before it makes."
        )
        {
            OnlyWhenAsked = true,
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var shorted =
            from passage in Passage.Of(context, SwitchOver.MakeBeforeBreak)
            let nodeOf = passage.Transition.InContact(context.Study.Network, passage.State)
            from coil in passage.Before.HeardCoils.Intersect(passage.After.HeardCoils)
            where IsShorted(context.Circuit, (Coil)context.Circuit.Elements[coil], nodeOf)
            select (passage.Transition, Coil: coil);
        return shorted
            .GroupBy(one => one.Transition.Control.Index)
            .Select(found =>
                Report(
                    context,
                    [.. found.Select(one => one.Transition).Distinct()],
                    [.. found.Select(one => one.Coil).Distinct().Order()]
                )
            );
    }

    private static bool IsShorted(Circuit circuit, Coil coil, int[] nodeOf) =>
        nodeOf[circuit.Nets.OneNet[coil.Start]] == nodeOf[circuit.Nets.OneNet[coil.Finish]];

    private Finding Report(StudyContext context, List<Transition> transitions, List<int> coils)
    {
        var circuit = context.Circuit;
        var control = transitions[0].Control;
        var part = circuit.Parts[control.Part];
        var names = CoilNames.Of(circuit, [.. coils.Select(coil => (Coil)circuit.Elements[coil])]);
        return Description.At(
            context.PlaceOf(control),
            $"'{control.Name}' shorts {Listing.Of(names)} for a moment {PassageText.Of(transitions)}",
            "to be rid of it take a switch that breaks before it makes",
            [Subject.Part(part.Name), .. PassageText.SubjectsOf(transitions)]
        );
    }
}
