using WireText.Circuits;

namespace WireText.Checks;

/// <summary>Which lugs belong to ground, and which to the signal, by what they are called and what they do.</summary>
/// <remarks>For blame and for the jack alone: what sounds is never judged by it.</remarks>
public sealed class Sides
{
    private readonly bool[] groundLike;
    private readonly bool[] hotLike;

    public Sides(Circuit circuit)
    {
        groundLike = [.. circuit.Lugs.Select(lug => lug.IsMetal || IsPickupLead(circuit, lug, "ground"))];
        hotLike =
        [
            .. circuit.Lugs.Select(lug => IsPickupLead(circuit, lug, "hot") || IsPickupLead(circuit, lug, "n-start")),
        ];
        foreach (var output in circuit.Outputs)
        {
            groundLike[output.Sleeve] = true;
            hotLike[output.Tip] = true;
        }

        foreach (var element in circuit.Elements)
        {
            if (element is Amplifier amplifier)
            {
                groundLike[amplifier.Common] = true;
            }
            else if (element is Track track)
            {
                hotLike[track.Wiper] = true;
                hotLike[track.High] = true;
            }
        }
    }

    /// <summary>True for metal, a pickup's ground lead, a sleeve, an amplifier's common.</summary>
    public bool IsGroundLike(int lug) => groundLike[lug];

    /// <summary>True for a pickup's hot lead, a tip, the wiper and the high end of a track.</summary>
    public bool IsHotLike(int lug) => hotLike[lug];

    private static bool IsPickupLead(Circuit circuit, Lug lug, string name) =>
        string.Equals(circuit.PartOf(lug).Kind, "pickup", StringComparison.OrdinalIgnoreCase)
        && string.Equals(lug.Terminal.Name, name, StringComparison.OrdinalIgnoreCase);
}
