using WireText.Circuits;

namespace WireText.Electrical.Faults;

/// <summary>What goes wrong where the lead is plugged in, in screened cables, and in the lead itself.</summary>
internal static class JackFaults
{
    public static IEnumerable<Fault> Of(Instrument instrument) =>
        [
            .. instrument.Jacks.SelectMany(plugged => In(instrument, plugged)),
            .. instrument.Right.Cables.SelectMany(cable => InCable(instrument, cable)),
            .. instrument.Jacks.Take(1).SelectMany(InLead),
        ];

    private static IEnumerable<Fault> In(Instrument instrument, PluggedJack plugged)
    {
        var (jack, name) = (plugged.Jack, instrument.Right.Parts[plugged.Jack.Part].Name);
        yield return Fault.Of(
            FaultKind.TipSpring,
            $"tip spring of {name} does not meet the plug",
            new FaultEdit.LeaveOut(plugged.TipSpring)
        );
        yield return Fault.Of(
            FaultKind.SleeveSpring,
            $"sleeve of {name} does not meet the plug",
            new FaultEdit.LeaveOut(plugged.SleeveSpring)
        );
        if (instrument.JointsOn(jack.Tip).Any() && instrument.JointsOn(jack.Sleeve).Any())
        {
            yield return Fault.Of(
                FaultKind.JackReversed,
                $"tip and sleeve of {name} are exchanged",
                new FaultEdit.ExchangeLugs(jack.Tip, jack.Sleeve)
            );
        }
    }

    private static IEnumerable<Fault> InCable(Instrument instrument, Cable cable)
    {
        if (cable.Braid is not { } wire)
        {
            return [];
        }

        var braid = RunOf(instrument, wire);
        return from core in cable.Cores.Select(core => RunOf(instrument, core))
            where !instrument.Right.Nets.SameNet(braid.Node, core.Node)
            select Fault.Of(
                FaultKind.BraidOnCore,
                $"{braid.Words} touches {core.Words}",
                new FaultEdit.Bridge(braid.Node, core.Node)
            ) with
            {
                Lugs = (braid.Lugs[0], core.Lugs[0]),
            };
    }

    private static IEnumerable<Fault> InLead(PluggedJack plugged) =>
        [
            Fault.Of(FaultKind.LeadOpen, "the lead is open", new FaultEdit.LeaveOut(plugged.TipSpring)),
            Fault.Of(FaultKind.LeadShorted, "the lead is shorted", new FaultEdit.Bridge(plugged.Tip, plugged.Sleeve)),
        ];

    private static Run RunOf(Instrument instrument, int wire) => instrument.Runs.First(run => run.Wires.Contains(wire));
}
