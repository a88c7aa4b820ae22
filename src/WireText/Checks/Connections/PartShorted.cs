using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds a capacitor, resistor, inductor or battery with both leads on one net, and a track with both ends.</summary>
public sealed class PartShorted : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "part-shorted",
            Title: "both leads of a part are joined",
            Severity: Severity.Warning,
            Group: FindingGroup.Connections,
            Why: """
            A part with both leads on one net does nothing at all; a battery is empty within the hour. A pot with both ends of
            its track on one net does the same at 0 and at 10. One of the two joints belongs on another lug.
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
            Silences = [new Silence("unconnected-lug", SilenceReach.SamePart), .. Silence.AllThatIsRead()],
        };

    public IEnumerable<Finding> Find(CheckContext context) =>
        from element in context.Circuit.Elements
        where element is Track || (IsTwoLead(element) && context.Circuit.Parts[element.Part].Elements.Length == 1)
        let ends = EndsOf(element)
        where context.Circuit.Nets.SameNet(ends[0], ends[1]) && !CoilShorted.IsTheShortedOutput(context, ends[0])
        group element by context.Circuit.Nets.OneNet[ends[0]] into joined
        select Report(context, [.. joined]);

    private static bool IsTwoLead(Element element) => element is Resistor or Capacitor or Inductor or Battery;

    private static ImmutableArray<int> EndsOf(Element element) =>
        element is Track track ? [track.Low, track.High] : element.Ends;

    /// <summary>One finding for all whose ends are the same net.</summary>
    private Finding Report(CheckContext context, ImmutableArray<Element> joined)
    {
        var circuit = context.Circuit;
        var parts = joined.Select(element => circuit.Parts[element.Part]).Distinct().ToList();
        var what =
            joined.All(IsTwoLead) ? "leads"
            : joined.All(one => one is Track) ? "ends of the track"
            : "ends";
        var ends = EndsOf(joined[0]).Select(circuit.NameOf).ToList();
        return Description
            .At(
                parts[0].NameAt,
                $"both {what} of {Listing.Of(parts.Select(part => part.Name))} are joined",
                $"move one of the wires: '{ends[0]}' and '{ends[1]}' are one net",
                [
                    .. parts.Select(part => Subject.Part(part.Name)),
                    .. joined
                        .SelectMany(element => EndsOf(element))
                        .SelectMany(lug => Beside(context, lug))
                        .Distinct()
                        .Select(context.Subject),
                ]
            )
            .Seeking(Remedy.Part);
    }

    /// <summary>A lug, and those that its wires go to.</summary>
    private static IEnumerable<int> Beside(CheckContext context, int lug) =>
        context.WiresAt(lug).SelectMany(wire => new[] { wire.From, wire.To }).Where(other => other >= 0).Prepend(lug);
}
