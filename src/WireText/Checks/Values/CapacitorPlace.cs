using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Checks.Values;

/// <summary>What a capacitor is there for, and between which values it makes sense.</summary>
/// <param name="Role">In words, after "as".</param>
/// <param name="LeastFarads">Nothing smaller is used.</param>
/// <param name="MostFarads">Nothing larger is used.</param>
internal sealed record CapacitorPlace(string Role, double LeastFarads, double MostFarads)
{
    // The limits are chosen, wide round what is in use: 10 to 100 nF in tone controls, 100 pF to 2 nF in bleeds, from
    // bass cuts of 1 nF to output capacitors of 10 µF in series (common practice).
    private static readonly CapacitorPlace Tone = new("a tone capacitor", 100e-12, 1e-6);
    private static readonly CapacitorPlace Bleed = new("a treble bleed", 10e-12, 22e-9);
    private static readonly CapacitorPlace Series = new("a capacitor in series", 50e-12, 50e-6);

    /// <summary>What the capacitor is by where it lies. In series is what neither of the others is.</summary>
    public static CapacitorPlace Of(Network network, Capacitor capacitor)
    {
        var nets = network.Circuit.Nets.OneNet;
        var (a, b) = (nets[capacitor.A], nets[capacitor.B]);
        var tracks = network.Circuit.Elements.OfType<Track>().ToList();
        return LeadsToSleeve(network, a) || LeadsToSleeve(network, b) ? Tone
            : tracks.Exists(track => IsAcross(nets[track.Wiper], nets[track.Low], nets[track.High])) ? Bleed
            : tracks.Exists(track => IsRheostat(network, track, a) || IsRheostat(network, track, b)) ? Tone
            : Series;

        bool IsAcross(int wiper, int low, int high) =>
            (a == wiper && b == low || a == wiper && b == high) || (b == wiper && a == low || b == wiper && a == high);
    }

    public bool Holds(double farads) => farads >= LeastFarads && farads <= MostFarads;

    /// <summary>The sleeve itself, or what one contact joins with it.</summary>
    private static bool LeadsToSleeve(Network network, int net) =>
        net == network.Sleeve
        || network.Contacts.Any(contacts => contacts.Possible.Contains(NetPair.Of(net, network.Sleeve)));

    /// <summary>True when a net leads on through a track of which one other lug alone is wired, and that to the sleeve.</summary>
    private static bool IsRheostat(Network network, Track track, int net)
    {
        var circuit = network.Circuit;
        var wired = track
            .Ends.Select(lug => circuit.Nets.OneNet[lug])
            .Distinct()
            .Where(other => circuit.Nets.Members[other].Length > 1)
            .ToList();
        return wired.Count == 2 && wired.Contains(net) && wired.Contains(network.Sleeve);
    }
}
