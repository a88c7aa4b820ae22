using System.Globalization;
using WireText.Circuits;

namespace WireText.Electrical.Faults;

/// <summary>What goes wrong in a pickup: a coil open, shorted or shorted in part, and leads that changed places.</summary>
internal static class CoilFaults
{
    /// <summary>What is left of a coil whose turns are shorted: equal steps from 10 to 60 %.</summary>
    private static readonly FaultSteps TurnsLeft = new(0.87, 0.80, 0.72, 0.64, 0.56, 0.46);

    public static IEnumerable<Fault> Of(Instrument instrument) =>
        [
            .. instrument.Right.Elements.OfType<Coil>().SelectMany(In),
            .. instrument.Right.Parts.SelectMany(part => Exchanged(instrument, part)),
        ];

    private static IEnumerable<Fault> In(Coil coil) =>
        new[]
        {
            Fault.Of(FaultKind.CoilOpen, $"coil {coil.Name} is open", new FaultEdit.LiftEnd(coil.Index, 1)),
            Fault.Of(
                FaultKind.CoilShorted,
                $"coil {coil.Name} is shorted",
                new FaultEdit.Bridge(coil.Start, coil.Finish)
            ),
            Fault.Of(
                FaultKind.ShortedTurns,
                $"coil {coil.Name} has shorted turns",
                TurnsLeft.Scaling(coil.Index, left => Percent(1 - left) + " of them")
            ),
        }.Select(fault => fault with { Element = coil.Index });

    private static string Percent(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"some {share * 100:0} %");

    private static IEnumerable<Fault> Exchanged(Instrument instrument, Part part)
    {
        var right = instrument.Right;
        var coils = part.Elements.Select(element => right.Elements[element]).OfType<Coil>().ToList();
        if (coils.Count == 0)
        {
            yield break;
        }

        var outside = part.Lugs.Where(lug => right.Lugs[lug] is { IsInner: false, IsMetal: false }).ToList();
        foreach (var one in outside)
        {
            foreach (var other in outside.Where(other => other > one && !right.Nets.SameNet(one, other)))
            {
                if (ExchangeOf(instrument, one, other) is not { } edit)
                {
                    continue;
                }

                var turned = coils.Find(coil => coil.Ends.Contains(one) && coil.Ends.Contains(other));
                var isOnlyCoil = coils.Count == 1 || turned is not null;
                yield return Fault.Of(
                    isOnlyCoil ? FaultKind.CoilTurned : FaultKind.LeadsExchanged,
                    $"{right.NameOf(one)} and {right.NameOf(other)} are exchanged",
                    edit
                ) with
                {
                    Lugs = (one, other),
                    Element = turned?.Index,
                };
            }
        }
    }

    /// <summary>Two leads change places, or what is soldered to two lugs does; null where one of them is free.</summary>
    private static FaultEdit? ExchangeOf(Instrument instrument, int one, int other)
    {
        var lugs = instrument.Right.Lugs;
        return lugs[one].IsLead && lugs[other].IsLead && HasRun(one) && HasRun(other)
                ? new FaultEdit.ExchangeNodes(one, other)
            : !lugs[one].IsLead && instrument.JointsOn(one).Any() && instrument.JointsOn(other).Any()
                ? new FaultEdit.ExchangeLugs(one, other)
            : null;

        bool HasRun(int lead) => instrument.Runs.Any(run => run.Node == lead);
    }
}
