using WireText.Circuits;
using WireText.Electrical;
using WireText.Text;

namespace WireText.Checks.Grounding;

/// <summary>Finds metal, or a coil's return, that has no sure way to the sleeve.</summary>
public sealed class FloatingGround : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "floating-ground",
            Title: "a ground does not reach the sleeve",
            Severity: Severity.Error,
            Group: CheckGroup.Grounding,
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
            Silences = [Silence.Everywhere("no-sound") with { OnlyByErrors = true }],
        };

    public IEnumerable<Finding> Find(CheckContext context)
    {
        foreach (var metal in context.Metal.Where(IsFloating))
        {
            yield return ReportMetal(context, metal);
        }

        if (context is { Network: { } network, Tree: { IsComplete: true } tree })
        {
            foreach (var coil in ReturnsThatFloat(context, network, tree))
            {
                yield return ReportReturn(context, coil);
            }
        }
    }

    private static bool IsFloating(MetalNet metal) =>
        !metal.IsSoldered
        && metal.Hot is null
        && metal.Contact.Relation is ContactRelation.Never or ContactRelation.Sometimes or ContactRelation.OneNet;

    private Finding ReportMetal(CheckContext context, MetalNet metal)
    {
        var names = Listing.Of(metal.Lugs.Select(context.Circuit.NameOf));
        var (is_, has) = metal.Lugs.Length == 1 ? ("is", "has") : ("are", "have");
        var message = metal.Contact.Relation switch
        {
            ContactRelation.OneNet => $"{names} {is_} grounded by touching metal alone",
            ContactRelation.Sometimes => $"{names} {has} no way to the sleeve at {Apart(context, metal.Contact)}",
            _ => $"{names} {is_} not grounded",
        };
        return Description.At(
            Severity.Warning,
            Places.Of(context, metal.Lugs[0]),
            message,
            $"solder a ground wire: {GroundPlaces.Line(context, metal)}",
            [.. metal.Lugs.Select(context.Subject)]
        );
    }

    private static string Apart(CheckContext context, ContactReport contact) =>
        string.Join(
            " ",
            contact
                .Controls.Where(control => contact.Apart!.Value[control] != Situation.Any)
                .Select(control => context.PositionName(control, contact.Apart!.Value[control]))
        );

    /// <summary>Coils that are live nowhere and whose ground end reaches the sleeve over nothing; one a pickup, the nearest to ground.</summary>
    private static IEnumerable<(Coil Coil, int End)> ReturnsThatFloat(
        CheckContext context,
        Network network,
        SituationTree tree
    )
    {
        var live = tree
            .Situations.SelectMany(situation => situation.Live)
            .Select(branch => network.Branches[branch].Element)
            .ToHashSet();
        var reach = new Reach(network);
        return from coil in context.Circuit.Elements.OfType<Coil>()
            where !live.Contains(coil.Index) && network.Tip != network.Sleeve
            let end = GroundEnd(context, coil)
            let reached = reach.From(context.Circuit.Nets.OneNet[end], without: coil.Index)
            where !reached.Contains(network.Sleeve) && context.IsJointed(end)
            group (coil, end, reached.Count) by coil.Part into pickup
            let nearest = pickup.MinBy(one => one.Count)
            select (nearest.coil, nearest.end);
    }

    /// <summary>The end of a coil that belongs to ground: one that is called so, else the start unless that is the hot one.</summary>
    private static int GroundEnd(CheckContext context, Coil coil) =>
        context.Sides.IsGroundLike(coil.Start) ? coil.Start
        : context.Sides.IsGroundLike(coil.Finish) || context.Sides.IsHotLike(coil.Start) ? coil.Finish
        : coil.Start;

    private Finding ReportReturn(CheckContext context, (Coil Coil, int End) floating)
    {
        var name = context.Circuit.NameOf(floating.End);
        var start = context
            .Circuit.Nets.Members[context.Circuit.Nets.OneNet[floating.End]]
            .FirstOrDefault(lug => !context.Circuit.Lugs[lug].IsLead, floating.End);
        var line = WireLines.Line(
            context.Circuit.NameOf(start),
            GroundPlaces.Nearest(context, floating.End),
            WireLines.GroundColour
        );
        return Description.At(
            Places.Of(context, floating.End),
            $"nothing leads from '{name}' back to the sleeve: '{floating.Coil.Name}' has no return",
            $"solder a ground wire: {line}",
            context.Subject(floating.End),
            Subject.Part(context.Circuit.Parts[floating.Coil.Part].Name)
        );
    }
}
