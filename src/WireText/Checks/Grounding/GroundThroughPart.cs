using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Grounding;

/// <summary>Finds a ground that goes through a capacitor or a resistor.</summary>
public sealed class GroundThroughPart : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "ground-through-part",
            Title: "a ground goes through a part",
            Severity: Severity.Warning,
            Group: FindingGroup.Grounding,
            Why: """
            A capacitor or a resistor stands between ground and something that belongs to ground. In the signal's way it
            works the same and is easier to follow; between metal and ground it screens only in part. Some instruments
            ground their strings through such parts on purpose: allow it then, with the reason.
            """,
            Bad: """
            pickup neck single-coil
            cap    [|lo|] 100n from vol.1 to vol.case
            splice back neck.ground
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   back to vol.1 black
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            cap    lo   100n from neck.hot to vol.3
            pot    vol  250k audio
            jack   out  mono
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Wire the ground side straight to ground, and put the part in the signal's way; or allow it."
        )
        {
            Silences = [Silence.Of("floating-ground")],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Network is not { } network)
        {
            yield break;
        }

        foreach (var element in context.Circuit.Elements.Where(element => element is Capacitor or Resistor))
        {
            var nets = element.Ends.Select(lug => context.Circuit.Nets.OneNet[lug]).ToList();
            if (nets.Contains(network.Sleeve) == nets.TrueForAll(net => net == network.Sleeve))
            {
                continue;
            }

            var other = nets.Find(net => net != network.Sleeve);
            var ground = context.Circuit.Nets.Members[other].FirstOrDefault(context.Sides.IsGroundLike, -1);
            if (ground >= 0)
            {
                yield return Report(context, element, ground);
            }
        }
    }

    private Finding Report(StudyContext context, Element element, int ground)
    {
        var part = context.Circuit.Parts[element.Part];
        var name = context.Circuit.NameOf(ground);
        return Description.At(
            part.NameAt,
            $"'{part.Name}' stands between '{name}' and ground",
            $"{Mend(context, ground)}, or write: allow ground-through-part at {part.Name} \"why\"",
            Subject.Part(part.Name),
            context.Subject(ground)
        );
    }

    /// <summary>A lead is taken from where it is, for a wire besides could short what is there.</summary>
    private static string Mend(StudyContext context, int ground)
    {
        var (name, nearest) = (context.Circuit.NameOf(ground), GroundPlaces.Nearest(context, ground));
        return context.Circuit.Lugs[ground].IsLead
            && context.WiresAt(ground).ToList() is [var lead]
            && Advice.MovedToGround(context, lead, ground, WireLines.GroundColour) is { } line
                ? $"move the lead: {line}"
            : context.Circuit.FindLug(nearest) is { } lug
            && Advice.KeepsTheSound(context, new AddWire(ground, lug.Index))
                ? $"join '{name}' with '{nearest}'"
            : $"see what '{name}' is soldered to: it belongs on ground";
    }
}
