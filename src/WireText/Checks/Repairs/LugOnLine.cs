using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks.Repairs;

/// <summary>A lug where a line names it: one end of a wire, or the two that meet where a run passes a lug.</summary>
/// <param name="Ends">One or two, on the same lug.</param>
public sealed record LugOnLine(ImmutableArray<WireEnd> Ends)
{
    public int LugIn(Circuit circuit) => Ends[0].LugIn(circuit);

    /// <summary>True when a wire has an end in both.</summary>
    public bool SharesWireWith(LugOnLine other) => Ends.Any(end => other.Ends.Any(theirs => theirs.Wire == end.Wire));

    /// <summary>
    /// All that an author may have written wrong: every wire end whose lug is named on its line, in the order of the wires, each
    /// alone, and after the second of two that meet in a run both together.
    /// </summary>
    /// <remarks>A lead of a splice does not name the splice, and a part's own lead is no choice: such ends stay.</remarks>
    public static IEnumerable<LugOnLine> All(Circuit circuit)
    {
        foreach (var wire in circuit.Wires)
        {
            foreach (var end in Written(circuit, wire))
            {
                yield return new LugOnLine([end]);
                if (end.IsFrom && MeetingEnd(circuit, wire) is { } before)
                {
                    yield return new LugOnLine([before, end]);
                }
            }
        }
    }

    /// <summary>True when the line of the wire names the lug that the end is on.</summary>
    public static bool IsWritten(Circuit circuit, WireEnd end) => end.PlaceIn(circuit) is not null;

    private static IEnumerable<WireEnd> Written(Circuit circuit, Wire wire) =>
        WireEnd.BothOf(wire).Where(end => IsWritten(circuit, end));

    /// <summary>The end of the stretch before, where the run goes on from it over the same lug.</summary>
    private static WireEnd? MeetingEnd(Circuit circuit, Wire wire) =>
        wire is { Kind: WireKind.Wire, Index: > 0 }
        && circuit.Wires[wire.Index - 1] is { Kind: WireKind.Wire } before
        && before.Run == wire.Run
        && before.To == wire.From
            ? new WireEnd(before.Index, IsFrom: false)
            : null;
}
