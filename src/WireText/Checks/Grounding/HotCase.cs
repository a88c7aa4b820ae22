using System.Collections.Immutable;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Electrical.Grounds;
using WireText.Text;

namespace WireText.Checks.Grounding;

/// <summary>Finds a case, cover or screen that carries the signal.</summary>
public sealed class HotCase : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "hot-case",
            Title: "metal that belongs to ground carries the signal",
            Severity: Severity.Error,
            Group: FindingGroup.Grounding,
            Why: """
            A cover, a braid or a case that is part of the signal is an antenna that hums when a hand comes near. A cover
            bonded to the pickup's own ground lead does this as soon as a phase or a series switch lifts that lead.
            """,
            Bad: """
            pickup neck   single-coil-cover
            pickup bridge single-coil
            switch ph     dpdt
            splice bond neck.ground [|neck.cover|]
            jack   out    mono
            wire   bridge.hot to out.tip yellow
            wire   bridge.ground to out.sleeve black
            wire   neck.hot to ph.A0 white
            wire   bond to ph.B0 black
            wire   ph.A1 to ph.B2 to out.tip white
            wire   ph.A2 to ph.B1 to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil-cover
            pickup bridge single-coil
            switch ph     dpdt
            jack   out    mono
            wire   bridge.hot to out.tip yellow
            wire   bridge.ground to out.sleeve black
            wire   neck.hot to ph.A0 white
            wire   neck.ground to ph.B0 black
            wire   neck.cover to out.sleeve bare
            wire   ph.A1 to ph.B2 to out.tip white
            wire   ph.A2 to ph.B1 to out.sleeve black
            """,
            Mend: "Give the metal a ground wire of its own, and part it from the coil's lead."
        )
        {
            Silences =
            [
                Silence.Of("floating-ground"),
                Silence.Of("ground-through-part"),
                Silence.Of("ground-through-contact"),
                .. Silence.AllThatIsRead(),
            ],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        foreach (var metal in context.Study.Metal)
        {
            if (metal.Hot is { } hot)
            {
                yield return Report(context, metal, hot);
            }
        }
    }

    private Finding Report(StudyContext context, MetalNet metal, State hot)
    {
        var circuit = context.Circuit;
        var lug = metal.Lugs[0];
        var positions = OffRest(circuit, hot);
        var where = positions.IsEmpty
            ? ""
            : $" at {string.Join(" ", positions.Select(at => context.PositionName(at.Control, at.Position)))}";
        var isOnTip = circuit.Nets.SameSolder(lug, circuit.Outputs[0].Tip);
        return Description.At(
            isOnTip ? Severity.Error : Severity.Warning,
            Places.Of(context, lug),
            $"'{circuit.NameOf(lug)}' carries the signal{where}",
            Help(context, metal),
            [
                .. metal.Lugs.Select(context.Subject),
                .. positions.Select(at =>
                    Subject.Position(
                        circuit.Controls[at.Control].Name,
                        circuit.Controls[at.Control].Positions[at.Position].Name
                    )
                ),
            ]
        );
    }

    /// <summary>
    /// A cover's or a screen's own lead is soldered elsewhere, and so is the end of the wire that brings the signal to a case: a
    /// ground wire besides would short the signal.
    /// </summary>
    private static string Help(StudyContext context, MetalNet metal)
    {
        var circuit = context.Circuit;
        if (metal.Lugs.FirstOrDefault(lug => !circuit.Lugs[lug].IsLead, -1) < 0)
        {
            return
                context.WiresAt(metal.Lugs[0]).FirstOrDefault() is { } lead
                && Advice.MovedToGround(context, lead, metal.Lugs[0], WireLines.GroundColour) is { } line
                ? $"take the lead off the signal: {line}"
                : $"look which lead of '{circuit.PartOf(circuit.Lugs[metal.Lugs[0]]).Name}' is which: this one belongs on ground";
        }

        return BringsTheSignal(context, metal) is var (wire, end)
            && Advice.MovedToGround(context, wire, end, WireLines.ColourOf(wire, WireLines.GroundColour)) is { } moved
                ? $"move the wire from {WireLines.Ends(circuit, wire)}: {moved}"
            : circuit.FindLug(GroundPlaces.Start(context, metal)) is { } start
            && circuit.FindLug(GroundPlaces.Nearest(context, metal.Lugs[0])) is { } nearest
            && Advice.KeepsTheSound(context, new AddWire(start.Index, nearest.Index))
                ? $"solder a ground wire: {GroundPlaces.Line(context, metal)}"
            : "follow what joins it with the signal: it belongs to ground, and to ground alone";
    }

    /// <summary>The one wire without which the metal is off the signal, and its end on the metal's side; null when there is none.</summary>
    private static (Wire Wire, int End)? BringsTheSignal(StudyContext context, MetalNet metal)
    {
        var circuit = context.Circuit;
        var found =
            from wire in circuit.Wires
            where wire is { Kind: WireKind.Wire, From: >= 0, To: >= 0 } && circuit.Nets.OneNet[wire.From] == metal.Net
            let without = circuit.Without(wire.Index)
            from end in new[] { wire.From, wire.To }
            let side = without.Nets.Members[without.Nets.OneNet[end]]
            where side.Contains(metal.Lugs[0]) && !side.Any(context.Sides.IsHotLike)
            select (wire, end);
        return found.Take(2).ToList() is [var only] ? only : null;
    }

    private static ImmutableArray<(int Control, int Position)> OffRest(Circuit circuit, State state) =>
        [.. state.Stated.Where(at => at.Position != circuit.Controls[at.Control].Rest)];
}
