namespace WireText.Electrical.Faults;

/// <summary>What a soldering iron does between lugs that are neighbours: a bridge, a wire on the lug beside, two wires exchanged.</summary>
internal static class NeighbourFaults
{
    public static IEnumerable<Fault> Of(Instrument instrument) =>
        from lug in instrument.Circuit.Lugs
        where lug is { IsLead: false, IsInner: false }
        from beside in NeighbouringLugs.Of(instrument.Circuit, lug.Index)
        where !instrument.Right.Lugs[beside].IsLead && !instrument.Right.Nets.SameNet(lug.Index, beside)
        from fault in Between(instrument, lug.Index, beside)
        select fault;

    private static IEnumerable<Fault> Between(Instrument instrument, int lug, int beside)
    {
        var right = instrument.Right;
        if (lug < beside && (instrument.JointsOn(lug).Any() || instrument.JointsOn(beside).Any()))
        {
            yield return Fault.Of(
                FaultKind.Bridge,
                $"solder bridge from {right.NameOf(lug)} to {right.NameOf(beside)}",
                new FaultEdit.Bridge(lug, beside)
            ) with
            {
                Lugs = (lug, beside),
            };
        }

        foreach (var joint in instrument.JointsOn(lug))
        {
            var run = instrument.Runs[joint.Run];
            if (!run.Lugs.Contains(beside))
            {
                yield return Fault.Of(
                    FaultKind.WireBeside,
                    $"{run.Words} is on {right.NameOf(beside)} instead of {right.NameOf(lug)}",
                    new FaultEdit.MoveTo(joint.Join, beside)
                ) with
                {
                    Joint = joint.Index,
                    Lugs = (run.Lugs.First(end => end != lug), beside),
                };
            }

            foreach (var other in instrument.JointsOn(beside).Where(other => lug < beside && other.Run != joint.Run))
            {
                yield return Fault.Of(
                    FaultKind.WiresExchanged,
                    $"{run.Words} is on {right.NameOf(beside)} and {instrument.Runs[other.Run].Words} on {right.NameOf(lug)}",
                    new FaultEdit.MoveTo(joint.Join, beside),
                    new FaultEdit.MoveTo(other.Join, lug)
                ) with
                {
                    Joint = joint.Index,
                };
            }
        }
    }
}
