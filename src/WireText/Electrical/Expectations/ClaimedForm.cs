using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Forms;

namespace WireText.Electrical.Expectations;

/// <summary>Makes a form of what a claim says of coils, and compares it.</summary>
internal static class ClaimedForm
{
    /// <summary>Whether the form that is there is the one claimed.</summary>
    /// <param name="joined">What the state makes of parts at the end of their travel.</param>
    /// <param name="mayNameTraces">True when coils of which only a trace is there may be named as well.</param>
    public static bool Matches(
        Circuit circuit,
        ClaimedCoils claimed,
        HeardForm found,
        JoinedParts joined,
        bool mayNameTraces
    )
    {
        if (Of(circuit, claimed) is not { } said)
        {
            return false;
        }

        var form = WithoutJoined(said, joined);
        if (FormEquality.Matches(found, form))
        {
            return true;
        }

        if (!mayNameTraces)
        {
            return false;
        }

        var withoutTraces = FormNodes.Rebuild(
            form,
            coil => found.Traces.Any(trace => trace.Coil == coil.Coil) ? null : coil
        );
        return withoutTraces is not null && FormEquality.Matches(found, withoutTraces);
    }

    /// <summary>True when the forms differ in what they join; parts that coils are heard through exclude nothing.</summary>
    public static bool AreApart(Circuit circuit, ClaimedCoils a, ClaimedCoils b) =>
        Of(circuit, a) is { } first && Of(circuit, b) is { } second && !FormEquality.JoinAlike(first, second);

    private static FormNode? Of(Circuit circuit, ClaimedCoils claimed)
    {
        var form = claimed switch
        {
            ClaimedPickup pickup => FormNode.InSeries([
                .. pickup.Coils.Select(coil => (FormNode)new CoilForm((Coil)circuit.Elements[coil], 1)),
            ]),
            ClaimedJoin { IsSeries: true } join => FormNode.InSeries([
                .. join.Parts.Select(part => Of(circuit, part)).OfType<FormNode>(),
            ]),
            ClaimedJoin join => FormNode.InParallel([
                .. join.Parts.Select(part => Of(circuit, part)).OfType<FormNode>(),
            ]),
            _ => null,
        };
        return form is null ? null : Through(claimed.IsReversed ? form.Reversed() : form, claimed.Through);
    }

    /// <summary>The form with each of its coils heard through parts.</summary>
    private static FormNode Through(FormNode form, ImmutableArray<int> parts) =>
        FormNodes.Rebuild(
            form,
            coil =>
                coil with
                {
                    Through = coil.Through.AddRange(parts.Select(part => new PlainPart([part], "", IsNamed: true))),
                }
        )!;

    /// <summary>The form without the parts that are a join where the dials stand: what is there does not show them.</summary>
    private static FormNode WithoutJoined(FormNode form, JoinedParts joined) =>
        FormNodes.Rebuild(
            form,
            coil =>
                coil with
                {
                    Through = coil.Through.RemoveAll(one => joined.IsHeardThrough(coil.Coil, one.Parts[0])),
                }
        )!;
}
