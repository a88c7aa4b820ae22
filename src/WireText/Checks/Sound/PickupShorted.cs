using WireText.Circuits;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Sound;

/// <summary>Finds positions in which a switch shorts a whole pickup while another sounds.</summary>
public sealed class PickupShorted : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "pickup-shorted",
            Title: "a position shorts a pickup",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            The contacts of that position join both ends of a pickup, and nothing says that it is meant to be silent there.
            Shorting half a pickup is a common cut; a whole one is mostly a throw wired to the wrong place.
            """,
            Bad: """
            pickup [|neck|]   single-coil
            pickup bridge single-coil
            switch lift   spdt
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to vol.3 white
            splice link neck.ground bridge.hot
            wire   link to lift.A0 grey
            wire   vol.3 to lift.A2 red
            wire   bridge.ground to vol.case black
            wire   vol.2 to out.tip blue
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch lift   spdt
            positions lift both bridge
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to vol.3 white
            splice link neck.ground bridge.hot
            wire   link to lift.A0 grey
            wire   vol.3 to lift.A2 red
            wire   bridge.ground to vol.case black
            wire   vol.2 to out.tip blue
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Mend: """
            Where it is meant, name the position after what is heard there, or write what is expected of it; else look for
            the throw that joins both ends.
            """
        )
        {
            Silences =
            [
                new Silence("position-name", SilenceReach.SamePart),
                new Silence("out-of-phase", SilenceReach.SamePart),
                .. Silence.WhatDialsDo(),
            ],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var heardAnywhere = context.Study.Heard.Sounding.SelectMany(one => one.HeardCoils).ToHashSet();
        var shorted =
            from one in context.Study.Heard.Sounding
            let coils = CoilPlacement.Of(context.Study.Network, one.State)
            from pickup in coils.GroupBy(coil => coil.Coil.Part)
            where pickup.All(coil => coil.Place == CoilPlace.Shorted)
            where pickup.Any(coil => heardAnywhere.Contains(coil.Coil.Index))
            where !IsMeant(context, one)
            group one by pickup.Key into found
            select Report(context, context.Circuit.Parts[found.Key], found.First().State);
        return shorted;
    }

    /// <summary>True when a position there is named after just the heard pickups, or a claim that covers it names coils.</summary>
    private static bool IsMeant(StudyContext context, SituationSound one)
    {
        var circuit = context.Circuit;
        var heard = one.Sound.Heard.Select(coil => coil.Coil.Part).ToHashSet();
        return circuit.Controls.Any(control =>
                one.State[control.Index] is { } position
                && PositionMeaning.Of(circuit, control.Positions[position].Name) is { IsExact: true } named
                && named.Pickups.SetEquals(heard)
            )
            || circuit
                .ExpectationsHere()
                .Any(expectation =>
                    expectation.Claims.Any(claim => claim is CoilsClaim)
                    && CheckContext.Covers(expectation, one.Situation)
                );
    }

    private Finding Report(StudyContext context, Part pickup, State state)
    {
        return Description.At(
            pickup.NameAt,
            $"'{pickup.Name}' is shorted{context.AtText(state)} while another pickup sounds",
            $"name that position after what is heard there, claim it with expect, or write: allow pickup-shorted at {pickup.Name} \"why\"",
            [Subject.Part(pickup.Name), .. context.StatedSubjects(state)]
        );
    }
}
