using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds a sleeve that is joined to the signal and to nothing of the ground.</summary>
public sealed class SleeveOnHot : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "sleeve-on-hot",
            Title: "the sleeve is on the signal",
            Severity: Severity.Error,
            Group: FindingGroup.Connections,
            Why: """
            The sleeve is the ground of everything outside. Here it reaches a hot lead, a wiper or the upper end of a track,
            and none of the guitar's grounds.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.3 to [|out.sleeve|] black
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
            Mend: "Move the sleeve's wire to a grounded case."
        )
        {
            Silences = [Silence.EverythingBut("wire-to-itself", "wire-twice")],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Network is not { } network)
        {
            yield break;
        }

        var sides = context.Sides;
        var sleeve = context.Circuit.Outputs[0].Sleeve;
        var joined = context.Circuit.Nets.Members[network.Sleeve].Where(lug => lug != sleeve).ToList();
        var hot = joined.FirstOrDefault(sides.IsHotLike, -1);
        var ground = Ground(context, sleeve);
        if (hot < 0 || ground < 0 || joined.Exists(sides.IsGroundLike))
        {
            yield break;
        }

        yield return Description.At(
            Places.Of(context, sleeve),
            $"'{context.Circuit.NameOf(sleeve)}' is on '{context.Circuit.NameOf(hot)}' and on no ground",
            Help(context, sleeve, ground),
            context.Subject(sleeve),
            context.Subject(hot)
        );
    }

    /// <summary>Where what sounds now, upside down, would fall silent, more than one wire is astray.</summary>
    private static string Help(StudyContext context, int sleeve, int ground)
    {
        var line = WireLines.Line(
            context.Circuit.NameOf(ground),
            context.Circuit.NameOf(sleeve),
            WireLines.GroundColour
        );
        var ends = context
            .WiresAt(sleeve)
            .Select(wire => (new WireEnd(wire.Index, IsFrom: wire.From != sleeve), ground));
        return Advice.KeepsTheSound(context, new MoveEnds([.. ends]))
            ? $"move its wire: {line}"
            : $"look which wires are astray: the sleeve belongs on '{context.Circuit.NameOf(ground)}', and no hot lug does";
    }

    /// <summary>A lug of the ground side that a wire can be soldered to; a lead is where it is soldered itself. -1 when there is none.</summary>
    private static int Ground(StudyContext context, int sleeve)
    {
        var like = context
            .Circuit.Lugs.Where(lug => lug.Index != sleeve && context.Sides.IsGroundLike(lug.Index))
            .ToList();
        return like.Where(lug => !lug.IsLead)
            .Select(lug => lug.Index)
            .Concat(like.SelectMany(lug => context.WiresAt(lug.Index).SelectMany(wire => new[] { wire.From, wire.To })))
            .Where(lug => lug >= 0 && !context.Circuit.Lugs[lug].IsLead)
            .Concat(like.Select(lug => lug.Index))
            .FirstOrDefault(-1);
    }
}
