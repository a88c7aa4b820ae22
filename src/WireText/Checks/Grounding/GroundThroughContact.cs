using WireText.Circuits;
using WireText.Electrical.Grounds;
using WireText.Electrical.Situations;
using WireText.Text;

namespace WireText.Checks.Grounding;

/// <summary>Finds metal that is grounded in every position, but by switch contacts alone.</summary>
public sealed class GroundThroughContact : IEveryJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "ground-through-contact",
            Title: "a ground goes through a switch",
            Severity: Severity.Warning,
            Group: FindingGroup.Grounding,
            Why: """
            Every position grounds this metal, but only by a contact. Between positions, and when the contact is dirty, it
            is not grounded. A coil's return may go through a switch, as in series and phase wiring: screens and cases may
            not.
            """,
            Bad: """
            pickup neck single-coil
            switch sel  dpdt
            metal  saddle
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   [|saddle|] to sel.A0 black
            wire   sel.A1 to sel.A2 to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            metal  saddle
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   saddle to out.sleeve black
            """,
            Mend: "Solder a wire from it to a grounded case or to the sleeve, past the switch."
        )
        {
            Silences = [Silence.Of("inert-control")],
        };

    public IEnumerable<Finding> Find(StudyContext context) =>
        from metal in context.Study.Metal
        // A loose sleeve is the cause, and reported.
        where context.IsJointed(context.Circuit.Outputs[0].Sleeve)
        where metal.Contact.Relation == ContactRelation.Always && !metal.IsSoldered
        let names = metal.Lugs.Select(context.Circuit.NameOf).ToList()
        let controls = NamesOf(context.Circuit, metal)
        let line = GroundPlaces.Line(context, metal)
        select Description.At(
            Places.Of(context, metal.Lugs[0]),
            $"{Listing.Of(names)} {(names.Count == 1 ? "is" : "are")} grounded through the contacts of {Listing.Of(controls)} alone",
            $"solder a ground wire past the switch: {line}",
            [.. metal.Lugs.Select(context.Subject), .. controls.Select(name => Subject.Part(name.Split('.')[0]))]
        ) with
        {
            Edits = WireLines.Added(context.Circuit, line),
        };

    /// <summary>The controls that join it to the sleeve; where none is ever moved for it, the jacks whose plug does.</summary>
    private static List<string> NamesOf(Circuit circuit, MetalNet metal)
    {
        var moved = metal.Contact.Controls.Select(control => circuit.Controls[control]).ToList();
        var plugs = circuit.Controls.Where(control => control.IsPlug && Closes(control));
        return [.. (moved.Count > 0 ? moved : plugs).Select(control => control.Name)];
    }

    private static bool Closes(Control plug) => !plug.Positions[plug.Rest].Closed.IsEmpty;
}
