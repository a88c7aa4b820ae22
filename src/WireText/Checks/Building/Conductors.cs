using WireText.Circuits;

namespace WireText.Checks.Building;

/// <summary>What is soldered to a lug, as the iron meets it.</summary>
internal static class Conductors
{
    /// <summary>Each conductor that comes to a lug, by its first stretch there. A run that passes is stripped there and is one.</summary>
    public static IReadOnlyList<Wire> At(CheckContext context, int lug) =>
        [.. context.WiresAt(lug).DistinctBy(wire => (wire.Run, wire.Kind))];

    /// <summary>True for bare metal that is no lead: each joint has its own place there.</summary>
    public static bool TakesManyJoints(Lug lug) => lug is { IsMetal: true, IsLead: false };

    /// <summary>True when an end of the wire is fixed to a part: its maker chose its colour.</summary>
    public static bool IsOwnLead(Circuit circuit, Wire wire) => IsLead(circuit, wire.From) || IsLead(circuit, wire.To);

    public static int OtherEnd(Wire wire, int lug) => wire.From == lug ? wire.To : wire.From;

    private static bool IsLead(Circuit circuit, int lug) => lug >= 0 && circuit.Lugs[lug].IsLead;
}
