using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Pictures;
using WireText.Electrical.Networks;
using WireText.Electrical.Traces;

namespace WireText.Pages;

/// <summary>What lies on the way of the signal in a state, by its places in the lists of the circuit.</summary>
/// <param name="Bars">The contacts it goes through, by their places among those of the page.</param>
internal sealed record LiveParts(
    ImmutableArray<int> Wires,
    ImmutableArray<int> Lugs,
    ImmutableArray<int> Parts,
    ImmutableArray<int> Bars
)
{
    /// <summary>The same for sets of the same things.</summary>
    public string Printed =>
        string.Join('|', new[] { Wires, Lugs, Parts, Bars }.Select(places => string.Join(',', places)));

    public static LiveParts Of(Circuit circuit, Trace trace, Numbered<ContactBar> bars) =>
        new(
            Places(trace.Wires),
            Places(trace.Lugs),
            [.. circuit.Parts.Where(trace.Holds).Select(part => part.Index)],
            [.. trace.Contacts.SelectMany(group => BarsOf(group, bars))]
        );

    /// <summary>The bars through lugs that are joined, each from one to the next.</summary>
    public static ImmutableArray<int> BarsOf(ImmutableArray<int> joined, Numbered<ContactBar> bars) =>
        [.. joined.Skip(1).Select((lug, before) => bars.PlaceOf(new ContactBar(joined[before], lug)))];

    /// <summary>What a trace depends on besides the positions: which sections of tracks the dials join or open.</summary>
    public static string SettingOf(Network network, State state)
    {
        var dials = network.DialsOf(state);
        return string.Concat(network.Branches.Select(branch => (char)('0' + (int)dials.StateOf(branch))));
    }

    private static ImmutableArray<int> Places(ImmutableArray<bool> isLive) =>
        [.. Enumerable.Range(0, isLive.Length).Where(place => isLive[place])];
}
