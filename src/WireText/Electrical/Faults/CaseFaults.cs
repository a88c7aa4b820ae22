using WireText.Circuits;
using WireText.Parts;

namespace WireText.Electrical.Faults;

/// <summary>Lugs that touch the metal around them: the case of their part, or the shielding.</summary>
internal static class CaseFaults
{
    public static IEnumerable<Fault> Of(Instrument instrument) =>
        from part in instrument.Right.Parts
        where part.Kind is PartKinds.Pot or PartKinds.Switch or PartKinds.Button or PartKinds.Jack
        from fault in In(instrument, part)
        select fault;

    private static IEnumerable<Fault> In(Instrument instrument, Part part)
    {
        var right = instrument.Right;
        int? own = part.Lugs.Where(lug => right.Lugs[lug].IsMetal).Cast<int?>().FirstOrDefault();
        if ((own ?? instrument.Jacks.FirstOrDefault()?.Jack.Sleeve) is not { } metal)
        {
            return [];
        }

        var tip = instrument.Jacks.FirstOrDefault(one => one.Jack.Part == part.Index)?.Jack.Tip;
        var touched = own is null ? "the shielding" : right.NameOf(metal);
        return from lug in part.Lugs
            where right.Lugs[lug] is { IsInner: false, IsMetal: false }
            where !IsOnGround(instrument, lug) && !right.Nets.SameNet(lug, metal) && instrument.LeadsSomewhere(lug)
            select Fault.Of(
                lug == tip ? FaultKind.TipOnShield : FaultKind.LugOnCase,
                $"{right.NameOf(lug)} touches {touched}",
                new FaultEdit.Bridge(lug, metal)
            ) with
            {
                Lugs = (lug, metal),
            };
    }

    private static bool IsOnGround(Instrument instrument, int lug) =>
        instrument.Jacks.Any(jack => instrument.Right.Nets.SameNet(lug, jack.Jack.Sleeve));
}
