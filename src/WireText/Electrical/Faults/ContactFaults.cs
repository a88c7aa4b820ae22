using WireText.Quantities;

namespace WireText.Electrical.Faults;

/// <summary>What goes wrong in the contacts of switches and jacks: one that never closes, never opens, or is dirty.</summary>
internal static class ContactFaults
{
    /// <summary>What dirt in a contact comes to, in ohms.</summary>
    private static readonly FaultSteps Dirt = new(18, 55, 180, 550);

    public static IEnumerable<Fault> Of(Instrument instrument) =>
        from leaf in instrument.Leaves
        where instrument.LeadsSomewhere(leaf.Common) && instrument.LeadsSomewhere(leaf.Throw)
        from fault in In(instrument, leaf)
        select fault with
        {
            Leaf = leaf.Index,
        };

    private static IEnumerable<Fault> In(Instrument instrument, Leaf leaf)
    {
        var right = instrument.Right;
        var control = right.Controls[leaf.Control];
        if (control.IsPlug && IsRing(instrument, leaf))
        {
            return
            [
                Fault.Of(
                    FaultKind.RingSpring,
                    $"the ring of {control.Name} does not meet the plug",
                    new FaultEdit.NeverCloses(leaf.Index)
                ),
            ];
        }

        var name = $"contact {right.NameOf(leaf.Common)} to {right.NameOf(leaf.Throw)}";
        return
        [
            Fault.Of(FaultKind.ContactOpen, $"{name} does not close", new FaultEdit.NeverCloses(leaf.Index)),
            Fault.Of(
                FaultKind.ContactDirty,
                $"{name} is dirty",
                Dirt.Adding(
                    right.Elements.Length,
                    ohms => new FaultEdit.Resists(leaf.Index, ohms),
                    ohms => ValueText.Label(ohms, Unit.Ohm)
                )
            ),
            Fault.Of(FaultKind.ContactStuck, $"{name} never opens", new FaultEdit.NeverOpens(leaf.Index)),
        ];
    }

    private static bool IsRing(Instrument instrument, Leaf leaf) =>
        instrument.Jacks.Any(jack => jack.Jack.Ring is { } ring && (leaf.Common == ring || leaf.Throw == ring));
}
