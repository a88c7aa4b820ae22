using System.Collections.Immutable;

namespace WireText.Electrical.Faults;

/// <summary>Every single fault of an instrument, each instance once.</summary>
public static class FaultList
{
    /// <summary>Faults of one instrument. Chosen: a harness of forty wires has some five hundred.</summary>
    public const int MostFaults = 4_000;

    /// <summary>The faults, in the order of their kinds as far as they are found part by part; past the bound the last are left out.</summary>
    public static ImmutableArray<Fault> Of(Instrument instrument)
    {
        IEnumerable<Fault> all =
        [
            .. JointFaults.Of(instrument),
            .. CoilFaults.Of(instrument),
            .. NeighbourFaults.Of(instrument),
            .. ElementFaults.Of(instrument.Right),
            .. ContactFaults.Of(instrument),
            .. TrackFaults.Of(instrument.Right),
            .. CaseFaults.Of(instrument),
            .. JackFaults.Of(instrument),
        ];
        return [.. all.Take(MostFaults).Select((fault, index) => fault with { Index = index })];
    }
}
