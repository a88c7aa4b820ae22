using WireText.Circuits;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Checks.Building;

/// <summary>Finds wires in the colours of protective earth.</summary>
public sealed class EarthColour : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "earth-colour",
            Title: "a wire has the colours of protective earth",
            Severity: Severity.Warning,
            Group: FindingGroup.Building,
            Why: """
            Green with yellow marks the protective earth of the mains and nothing else: IEC 60757 and IEC 60445 forbid it for
            any other conductor. A guitar has no protective earth, and its ground must not be taken for one.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   [|vol.case to out.sleeve|] GNYE
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Take wire of another colour. A part's own lead keeps the colour that it came with."
        )
        {
            Silences = [new Silence("colour-habit", SilenceReach.SamePart)],
        };

    public IEnumerable<Finding> Find(CheckContext context) =>
        context
            .Circuit.Wires.Where(wire => wire is { From: >= 0, To: >= 0 } && IsEarth(wire.Colour))
            .Where(wire => !Conductors.IsOwnLead(context.Circuit, wire))
            .DistinctBy(wire => wire.Run)
            .Select(wire => Report(context, wire));

    /// <summary>Which of the two is the stripe makes no difference: the pair is kept.</summary>
    private static bool IsEarth(InsulationColour? colour) =>
        colour is { Base: StandardColour first, Stripe: StandardColour second }
        && (first.Colour, second.Colour) is (ColourCode.GN, ColourCode.YE) or (ColourCode.YE, ColourCode.GN);

    private Finding Report(CheckContext context, Wire wire)
    {
        var circuit = context.Circuit;
        var isGround = context.Study?.Network is { } network && circuit.Nets.OneNet[wire.From] == network.Sleeve;
        var colour = isGround ? WireLines.GroundColour : WireLines.SignalColour;
        return Description.At(
            wire.DeclaredAt,
            $"{wire.Colour!.Name} is kept for protective earth, and this is none",
            $"take another colour: {WireLines.Line(circuit.NameOf(wire.From), circuit.NameOf(wire.To), colour)}",
            context.Subject(wire.From),
            context.Subject(wire.To)
        );
    }
}
