using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Grounds;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Text;

namespace WireText.Checks.Grounding;

/// <summary>Finds metal, or a coil's return, that has no sure way to the sleeve.</summary>
public sealed class FloatingGround : IStudyCheck
{
    /// <summary>Of metal that makes pickups silent, so many names stand beside theirs where all are too many to read. Chosen.</summary>
    private const int ShownBesideSilence = 3;

    public CheckDescription Description { get; } =
        new(
            Id: "floating-ground",
            Title: "a ground does not reach the sleeve",
            Severity: Severity.Error,
            Group: FindingGroup.Grounding,
            Why: """
            Metal that is not grounded hums when it is touched, and screens nothing. Metal pressed on metal is a ground until
            the first nut works loose: it needs a wire as well. A coil whose return does not reach the sleeve is silent.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    [|tone|] 250k audio
            cap    dark 22n from tone.1 to vol.case
            jack   out  mono
            wire   neck.hot to vol.3 to tone.2 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    dark 22n from tone.1 to vol.case
            jack   out  mono
            wire   neck.hot to vol.3 to tone.2 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case to tone.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Solder a wire from it to a grounded case or to the sleeve."
        )
        {
            Silences = [.. Silence.WhatIsRead()],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        // With no wire on the sleeve no ground has a way to it: the loose sleeve is the cause, and reported.
        if (context.Study.Network is not { } network || !context.IsJointed(context.Circuit.Outputs[0].Sleeve))
        {
            yield break;
        }

        // What is grounded at the sleeve of one jack is grounded.
        var floating = context
            .Study.Metal.Where(IsFloating)
            .Where(metal =>
                context.Study.Jacks.All(jack => jack.Metal.Any(other => other.Net == metal.Net && IsFloating(other)))
            )
            .ToList();
        var silent = new SilentCoils(context, network);
        var returns = ReturnNets(context.Circuit);
        foreach (var metal in floating)
        {
            yield return ReportMetal(context, metal, silent.ReturningTo(metal.Net), returns.Contains(metal.Net));
        }

        foreach (var cable in LooseBraids.Of(context, network))
        {
            yield return ReportBraid(context, cable);
        }

        foreach (var (coil, end) in silent.WithoutReturn(floating.Select(metal => metal.Net)))
        {
            yield return ReportReturn(context, coil, end);
        }
    }

    private static bool IsFloating(MetalNet metal) =>
        !metal.IsSoldered
        && metal.Hot is null
        && metal.Contact.Relation is ContactRelation.Never or ContactRelation.Sometimes or ContactRelation.OneNet;

    private Finding ReportMetal(StudyContext context, MetalNet metal, IReadOnlyList<Part> silenced, bool isOnReturn)
    {
        var names = metal.Lugs.Select(context.Circuit.NameOf).ToList();
        var (is_, has) = metal.Lugs.Length == 1 ? ("is", "has") : ("are", "have");
        var message = metal.Contact.Relation switch
        {
            ContactRelation.OneNet => $" {is_} grounded by touching metal alone",
            ContactRelation.Sometimes => $" {has} no way to the sleeve at {Apart(context, metal.Contact)}",
            _ => $" {is_} not grounded",
        };
        var silence =
            silenced.Count > 0
                ? $", and {Listing.Of(silenced.Select(part => part.Name))} {(silenced.Count == 1 ? "is" : "are")} silent"
                : "";
        var counted = string.Create(CultureInfo.InvariantCulture, $", and {silenced.Count} pickups are silent");
        var line = GroundPlaces.Line(context, metal);
        return Description.At(
            silenced.Count > 0 || (isOnReturn && metal.Contact.Relation != ContactRelation.OneNet)
                ? Severity.Error
                : Severity.Warning,
            Places.Of(context, metal.Lugs[0]),
            ShortMessage.FirstOf(
                Listing.Of(names) + message + silence,
                Listing.Of(names, ShownBesideSilence) + message + silence,
                Listing.Of(names, ShownBesideSilence) + message + counted
            ),
            $"solder a ground wire: {line}",
            [.. metal.Lugs.Select(context.Subject), .. silenced.Select(part => Subject.Part(part.Name))]
        ) with
        {
            Edits = IsBareAlone(context, metal) ? WireLines.Added(context.Circuit, line) : [],
        };
    }

    /// <summary>
    /// True when nothing but metal lies on the net. Where a lug does, its wire may be the one that went astray, and moving it the
    /// mend: that is for a person to see.
    /// </summary>
    private static bool IsBareAlone(StudyContext context, MetalNet metal) =>
        context.Circuit.Nets.Members[metal.Net].All(lug => context.Circuit.Lugs[lug].IsMetal);

    private Finding ReportBraid(StudyContext context, Cable cable)
    {
        var circuit = context.Circuit;
        var (core, braid) = (circuit.Wires[cable.Cores[0]], circuit.Wires[cable.Braid!.Value]);
        var to = GroundPlaces.Nearest(context, core.To >= 0 ? core.To : core.From);
        var lug = Math.Max(braid.From, braid.To);
        return Description.At(
            Severity.Warning,
            braid.DeclaredAt,
            $"the braid round {WireLines.Ends(circuit, core)} is not grounded",
            lug < 0
                ? $"solder one end of it to ground: braid cut to {to}"
                : $"take it off '{circuit.NameOf(lug)}' and solder it to ground: braid cut to {to}",
            [
                .. new[] { braid.From, braid.To, core.From, core.To }
                    .Where(lug => lug >= 0)
                    .Distinct()
                    .Select(context.Subject),
            ]
        );
    }

    /// <summary>The nets over which a coil, a track or an amplifier reaches ground: with these not the screen only is lost.</summary>
    private static HashSet<int> ReturnNets(Circuit circuit) =>
        [
            .. circuit
                .Elements.Where(element => element is Coil or Track or Amplifier)
                .SelectMany(element => element.Ends)
                .Select(lug => circuit.Nets.OneNet[lug]),
        ];

    private static string Apart(StudyContext context, ContactReport contact) =>
        contact.Apart is { } apart
            ? string.Join(
                " ",
                apart
                    .Stated.Where(at => contact.Controls.Contains(at.Control))
                    .Select(at => context.PositionName(at.Control, at.Position))
            )
            : "";

    /// <summary>The switches that a coil's end comes to without the coil, or else the pots: one of their lugs may lack its wire.</summary>
    private static IEnumerable<Subject> ControlsOn(StudyContext context, Coil coil, int end)
    {
        var circuit = context.Circuit;
        var reached = new Reach(context.Study.Network).From(circuit.Nets.OneNet[end], without: coil.Index);
        var passed = circuit
            .Parts.Where(part => part.Lugs.Any(lug => reached.Contains(circuit.Nets.OneNet[lug])))
            .ToList();
        var switches = passed.FindAll(part => !part.Controls.IsEmpty);
        return (switches.Count > 0 ? switches : passed.FindAll(part => !part.Dials.IsEmpty)).Select(part =>
            Subject.Part(part.Name)
        );
    }

    private Finding ReportReturn(StudyContext context, Coil coil, int end)
    {
        var name = context.Circuit.NameOf(end);
        var start = context
            .Circuit.Nets.Members[context.Circuit.Nets.OneNet[end]]
            .FirstOrDefault(lug => !context.Circuit.Lugs[lug].IsLead, end);
        var line = WireLines.Line(
            context.Circuit.NameOf(start),
            GroundPlaces.Nearest(context, end),
            WireLines.GroundColour
        );
        return Description.At(
            Places.Of(context, end),
            $"nothing leads from '{name}' back to the sleeve: '{coil.Name}' has no return",
            $"solder a ground wire: {line}",
            [
                context.Subject(end),
                Subject.Part(context.Circuit.Parts[coil.Part].Name),
                .. ControlsOn(context, coil, end),
            ]
        );
    }
}
