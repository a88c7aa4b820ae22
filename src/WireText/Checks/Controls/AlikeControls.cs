using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Parts;
using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Pots that do the same for different pickups, by their names and values: <c>vol-neck</c> and <c>vol-bridge</c>.</summary>
internal static class AlikeControls
{
    /// <summary>In the order of the dials; a pot that is meant to turn back, or has several tracks, is like none.</summary>
    public static IEnumerable<ImmutableArray<LugPlaces>> Of(StudyContext context)
    {
        var circuit = context.Circuit;
        return from places in LugPlaces.OfAll(context, context.Study.Network)
            where !DialWires.TurnsBack(circuit, circuit.Dials[places.Track.Dial])
            let kind = KindOf(circuit, circuit.Parts[places.Track.Part])
            where kind is not null
            group places by (kind, places.Track.Ohms) into alike
            select alike.ToImmutableArray();
    }

    /// <summary>
    /// The name of a pot without those of pickups: <c>vol</c> of <c>vol-neck</c> and of <c>vol-n</c>. Null where that leaves
    /// nothing, or is all.
    /// </summary>
    private static string? KindOf(Circuit circuit, Part part)
    {
        var words = part.Name.Split('-', '_');
        var rest = words.Where(word => !IsOfAPickup(circuit, word)).ToList();
        return rest.Count == 0 || rest.Count == words.Length ? null : string.Join('-', rest).ToLowerInvariant();
    }

    /// <summary>True for a pickup's name and for its start: <c>b</c> and <c>br</c> are short for <c>bridge</c>.</summary>
    private static bool IsOfAPickup(Circuit circuit, string word) =>
        PickupNames.Of(circuit, word) is not null
        || (
            word.Length > 0
            && circuit.Parts.Any(part =>
                Naming.Alike(part.Kind, PartKinds.Pickup)
                && part.Name.StartsWith(word, StringComparison.OrdinalIgnoreCase)
            )
        );
}
