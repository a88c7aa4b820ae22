using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Sound;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Checks.Sound;

/// <summary>Finds positions in which no coil reaches the jack and nothing shorts it either.</summary>
public sealed class DeadPosition : IJackCheck
{
    public const string Id = "dead-position";

    /// <summary>Positions that are named; the rest is counted, and all are marked. Chosen: a line of text holds them.</summary>
    private const int MostNamed = 2;

    public CheckDescription Description { get; } =
        new(
            Id: Id,
            Title: "a position is dead",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            No pickup reaches the jack there, and nothing joins tip and sleeve: the jack floats, or only a pot stays on it.
            That is no silence: a floating hot wire hums, and the switch clicks. Mostly a throw was left without its wire.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch [|sel|]    spdt-on-off-on
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to vol.3 red
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to vol.3 red
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Mend: """
            Wire the throw that this position closes, or take a switch without such a position. Where silence is meant, let
            the position join tip and sleeve; where a dead position is meant, claim it with expect, or allow it, with the reason.
            """
        )
        {
            // The wire that is missing there is on another throw, or leaves a pot without its signal.
            Silences =
            [
                new Silence("hanging-coil", SilenceReach.SamePart),
                new Silence("pickup-shorted", SilenceReach.SamePart),
                new Silence("position-name", SilenceReach.SamePart),
                Silence.Everywhere("out-of-phase"),
                Silence.Everywhere("hum-partner"),
                .. Silence.WhatDialsDo(),
            ],
        };

    public IEnumerable<Finding> Find(StudyContext context) =>
        context.Study.Network is { } network
            ? SilentPositions
                .Dead(context)
                .GroupBy(dead => string.Join(' ', dead.Positions.Select(at => at.Control)), StringComparer.Ordinal)
                .Select(dead => Report(context, network, [.. dead]))
            : [];

    /// <summary>One finding for the same controls, with all positions of them that are dead.</summary>
    private Finding Report(StudyContext context, Network network, List<SilentPositions> dead)
    {
        var circuit = context.Circuit;
        var where = dead.ConvertAll(one =>
            string.Join(' ', one.Positions.Select(at => context.PositionName(at.Control, at.Position)))
        );
        var more = where.Count - MostNamed;
        var named = string.Join(" and at ", where.Take(MostNamed));
        return Description
            .At(
                context.PlaceOf(circuit.Controls[dead[0].Positions[0].Control]),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"nothing is heard at {named}{(more > 0 ? $" and {more} more" : "")}: {WhyItIs(context, dead[0])}"
                ),
                Help(context, dead[0]),
                [
                    .. dead.SelectMany(one => one.Positions)
                        .Distinct()
                        .Select(at =>
                            Subject.Position(
                                circuit.Controls[at.Control].Name,
                                circuit.Controls[at.Control].Positions[at.Position].Name
                            )
                        ),
                ]
            )
            .Seeking(Remedy.Any, Allow(circuit.Controls[dead[0].Positions[0].Control]));
    }

    private static string WhyItIs(StudyContext context, SilentPositions dead) =>
        Unpowered(context, dead) is { } amplifier
            ? $"'{context.Circuit.Parts[amplifier.Part].Name}' gets no supply there"
            : WhatIsLeft(context.Study.Network, dead);

    /// <summary>An amplifier that gets its supply elsewhere and not in this position; null for none.</summary>
    private static Amplifier? Unpowered(StudyContext context, SilentPositions dead)
    {
        var network = context.Study.Network;
        var there = Supply.PoweredAmplifiers(network, dead.State);
        return context
            .Circuit.Elements.OfType<Amplifier>()
            .FirstOrDefault(one =>
                !there.Contains(one.Index)
                && context.Study.Heard.Sounding.Any(other =>
                    Supply.PoweredAmplifiers(network, other.State).Contains(one.Index)
                )
            );
    }

    private static string WhatIsLeft(Network network, SilentPositions dead)
    {
        var sound = JackSound.Of(network, dead.State);
        return sound switch
        {
            { Outcome: Outcome.Open } => "the jack floats",
            { SourceOhms: { } ohms } => $"only {ValueText.Figure(ohms, Unit.Ohm)} stays on the jack",
            _ => "no pickup reaches the jack",
        };
    }

    private static string Help(StudyContext context, SilentPositions dead)
    {
        var control = context.Circuit.Controls[dead.Positions[0].Control];
        var allow = Allow(control);
        if (Unpowered(context, dead) is { Supply: { } supply })
        {
            return $"let the battery feed '{context.Circuit.NameOf(supply)}' there, or name the position 'off' where that is meant, {allow}";
        }

        return EmptyThrow(context, dead) is { } lug
            ? $"wire '{lug}' to what is meant to be heard there, {allow}"
            : $"wire what is meant to be heard there, or join tip and sleeve there if silence is meant, {allow}";
    }

    private static string Allow(Control control) => $"or write: allow dead-position at {control.Name} \"why\"";

    /// <summary>A throw without a joint that one of the positions joins to a lug with one.</summary>
    private static string? EmptyThrow(StudyContext context, SilentPositions dead) =>
        dead
            .Positions.SelectMany(at => context.Circuit.Controls[at.Control].Positions[at.Position].Closed)
            .Where(group => group.Any(context.IsJointed))
            .SelectMany(group => group)
            .Where(lug => !context.IsJointed(lug))
            .Select(context.Circuit.NameOf)
            .FirstOrDefault();
}
