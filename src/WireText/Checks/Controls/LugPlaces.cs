using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Checks.Controls;

/// <summary>What a lug of a pot leads to, other than through the pot itself.</summary>
internal enum LugPlace
{
    Nothing,
    Ground,

    /// <summary>Another part that is neither of the others, such as the capacitor of a tone control.</summary>
    Part,
    Pickup,
    Jack,
}

/// <summary>Where the three lugs of a pot lie between pickups, jack and ground.</summary>
/// <param name="Places">Of the low end, the wiper and the high end, in this order.</param>
internal sealed record LugPlaces(Track Track, ImmutableArray<LugPlace> Places)
{
    /// <summary>
    /// The most pots with wires that are looked at: with each the others are gone through again. Chosen: no instrument has so many.
    /// </summary>
    internal const int MostPots = 64;

    /// <summary>Part of what a volume has: it lies from a pickup to ground, and the jack takes of it.</summary>
    private static readonly ImmutableHashSet<LugPlace> OfAVolume = [LugPlace.Ground, LugPlace.Pickup, LugPlace.Jack];

    /// <summary>True for a pot that is a volume by its wires, whichever lugs they are on.</summary>
    public bool IsVolume => OfAVolume.SetEquals(Places);

    /// <summary>Of each pot with one track and a wire, in the order of the dials; none where there are too many.</summary>
    public static ImmutableArray<LugPlaces> OfAll(CheckContext context, Network network)
    {
        var tracks = context
            .Circuit.Dials.Select(dial => DialWires.TracksOf(context.Circuit, dial).ToList())
            .Where(tracks => tracks is [var only] && only.Ends.Any(context.IsJointed))
            .Select(tracks => tracks[0])
            .Take(MostPots + 1)
            .ToList();
        return tracks.Count > MostPots ? [] : [.. tracks.Select(track => Of(network, track))];
    }

    private static LugPlaces Of(Network network, Track track)
    {
        var nets = network.Circuit.Nets.OneNet;
        var joined = JoinedWithout(network, track);
        var coils = network
            .Circuit.Elements.OfType<Coil>()
            .SelectMany(coil => coil.Ends)
            .Select(end => joined.Find(nets[end]))
            .ToHashSet();
        var tips = network.Circuit.Outputs.Select(jack => joined.Find(nets[jack.Tip])).ToHashSet();
        return new LugPlaces(track, [.. track.Ends.Select(PlaceOf)]);

        LugPlace PlaceOf(int lug) =>
            nets[lug] == network.Sleeve ? LugPlace.Ground
            : tips.Contains(joined.Find(nets[lug])) ? LugPlace.Jack
            : coils.Contains(joined.Find(nets[lug])) ? LugPlace.Pickup
            : network.Circuit.Elements.Any(other => other != track && other.Ends.Any(end => nets[end] == nets[lug]))
                ? LugPlace.Part
            : LugPlace.Nothing;
    }

    /// <summary>The nets that some contact joins, or the track of another pot, or an amplifier; ground is passed by nothing.</summary>
    private static NetJoins JoinedWithout(Network network, Track own)
    {
        var nets = network.Circuit.Nets.OneNet;
        var joins = NetJoins.ByContacts(network);
        foreach (var track in network.Circuit.Elements.OfType<Track>().Where(track => track != own))
        {
            Join(nets[track.Low], nets[track.Wiper]);
            Join(nets[track.Wiper], nets[track.High]);
        }

        foreach (var amplifier in network.Circuit.Elements.OfType<Amplifier>())
        {
            Join(nets[amplifier.In], nets[amplifier.Out]);
        }

        return joins;

        void Join(int a, int b)
        {
            if (a != network.Sleeve && b != network.Sleeve)
            {
                joins.Join(a, b);
            }
        }
    }
}
