using System.Globalization;
using WireText.Circuits;

namespace WireText.Checks.Controls;

/// <summary>The tracks that a dial turns, and how findings speak of them.</summary>
internal static class DialWires
{
    public static IEnumerable<Track> TracksOf(Circuit circuit, Dial dial) =>
        circuit
            .Parts[dial.Part]
            .Elements.Select(index => circuit.Elements[index])
            .OfType<Track>()
            .Where(track => track.Dial == dial.Index);

    /// <summary>True when the author says that the pot is meant to turn the other way.</summary>
    public static bool TurnsBack(Circuit circuit, Dial dial) => circuit.Parts[dial.Part].HasTrait("turns-back");

    /// <summary>What to do with the wires of a track so that it works the other way round.</summary>
    public static string Exchange(CheckContext context, Track track)
    {
        var (low, high) = (context.Circuit.NameOf(track.Low), context.Circuit.NameOf(track.High));
        return (context.IsJointed(track.Low), context.IsJointed(track.High)) switch
        {
            (true, false) => $"move what is on '{low}' to '{high}'",
            (false, true) => $"move what is on '{high}' to '{low}'",
            _ => $"exchange what is on '{low}' and '{high}'",
        };
    }

    /// <summary>A level with one decimal and its unit.</summary>
    public static string Decibels(double value) =>
        value.ToString("0.0", CultureInfo.InvariantCulture).Replace('-', '−') + " dB";
}
