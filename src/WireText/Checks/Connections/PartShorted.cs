using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds a capacitor, resistor, inductor or battery with both leads on one net.</summary>
public sealed class PartShorted : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "part-shorted",
            Title: "both leads of a part are joined",
            Severity: Severity.Warning,
            Group: CheckGroup.Connections,
            Why: """
            A part with both leads on one net does nothing at all; a battery is empty within the hour. One of the two joints
            belongs on another lug.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    [|dark|] 22n from tone.1 to tone.case
            jack   out  mono
            wire   neck.hot to vol.3 to tone.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case to tone.case bare
            wire   tone.1 to tone.case bare
            wire   tone.2 to vol.3 white
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    dark 22n from tone.1 to tone.case
            jack   out  mono
            wire   neck.hot to vol.3 to tone.2 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case to tone.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Move one of its leads to the lug it was meant for."
        )
        {
            Silences = [.. Silence.WhatIsRead(), Silence.Everywhere("tone-without-capacitor")],
        };

    public IEnumerable<Finding> Find(CheckContext context) =>
        from part in context.Circuit.Parts
        where part.Elements.Length == 1
        let element = context.Circuit.Elements[part.Elements[0]]
        where element is Resistor or Capacitor or Inductor or Battery
        let nets = context.Circuit.Nets
        where
            nets.SameNet(element.Ends[0], element.Ends[1]) && !CoilShorted.IsTheShortedOutput(context, element.Ends[0])
        select Description.At(
            part.NameAt,
            $"both leads of '{part.Name}' are joined",
            $"move one of its leads: '{context.Circuit.NameOf(element.Ends[0])}' and '{context.Circuit.NameOf(element.Ends[1])}' are one net",
            Subject.Part(part.Name)
        );
}
