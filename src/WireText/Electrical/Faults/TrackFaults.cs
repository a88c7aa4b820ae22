using WireText.Circuits;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Electrical.Faults;

/// <summary>What goes wrong in a pot: a track or wiper that is open, another value, another law.</summary>
internal static class TrackFaults
{
    /// <summary>What a pot may be of what the text says; within 20 % it is within tolerance.</summary>
    private static readonly FaultSteps Factors = new(0.30, 0.42, 0.56, 0.70, 1.35, 1.6, 2.0);

    public static IEnumerable<Fault> Of(Circuit right)
    {
        var tracks = right.Elements.OfType<Track>().ToList();
        return
        [
            .. tracks.SelectMany(track => In(right, track).Select(fault => fault with { Element = track.Index })),
            .. tracks.Where(track => !track.IsTaperUnknown).Select(track => OtherLaw(right, track)),
        ];
    }

    private static IEnumerable<Fault> In(Circuit right, Track track) =>
        [
            OpenAt(right, track, 0, track.Low),
            OpenAt(right, track, 2, track.High),
            Fault.Of(
                FaultKind.WiperOpen,
                $"wiper {right.NameOf(track.Wiper)} is open",
                new FaultEdit.LiftEnd(track.Index, 1)
            ),
            Fault.Of(
                FaultKind.PotValue,
                $"pot {GangOf(right, track)} is of another value",
                Factors.Scaling(
                    track.Index,
                    factor => "about " + ValueText.Label(Rounded(track.Ohms * factor), Unit.Ohm)
                )
            ),
        ];

    private static Fault OpenAt(Circuit right, Track track, int end, int lug) =>
        Fault.Of(
            FaultKind.TrackOpen,
            $"track {GangOf(right, track)} is open at {right.NameOf(lug)}",
            new FaultEdit.LiftEnd(track.Index, end)
        );

    private static Fault OtherLaw(Circuit right, Track track)
    {
        var other = track.Taper == Taper.Linear ? Taper.Audio : Taper.Linear;
        return Fault.Of(
            FaultKind.PotLaw,
            $"pot {GangOf(right, track)} is {other.Name}, not {track.Taper.Name}",
            new FaultEdit.Law(track.Index, other)
        ) with
        {
            Element = track.Index,
        };
    }

    /// <summary>The pot, or its gang where it has several: what stands before the name of the wiper's lug.</summary>
    private static string GangOf(Circuit right, Track track)
    {
        var wiper = right.NameOf(track.Wiper);
        return wiper.LastIndexOf('.') is > 0 and var dot ? wiper[..dot] : wiper;
    }

    private static double Rounded(double ohms)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(ohms)) - 1);
        return Math.Round(ohms / step) * step;
    }
}
