using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Finds a lone volume with the pickup on its wiper.</summary>
public sealed class FedOnTheWiper : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "fed-on-the-wiper",
            Title: "a lone volume is fed on its wiper",
            Severity: Severity.Warning,
            Group: FindingGroup.Switching,
            Why: """
            With the pickup on the wiper and the jack on the end of the track, turning down shorts the pickup more and more: its
            treble goes first. So are volumes wired that share an output, for then one does not silence the other; a lone one
            has no other to spare. Lugs 2 and 3 are exchanged.
            """,
            Bad: """
            pickup neck  single-coil
            pot    [|vol|]   250k audio
            jack   out   mono
            wire   neck.hot to vol.2 white
            wire   vol.3 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck  single-coil
            pot    vol   250k audio
            jack   out   mono
            wire   neck.hot to vol.3 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            """,
            Mend: "Put what comes from the pickup on the end of the track, and what goes to the jack on the wiper."
        )
        {
            Silences = [Silence.Everywhere("inert-control")],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var volumes = LugPlaces.OfAll(context, context.Study.Network).Where(places => places.IsVolume).ToList();
        if (volumes is [{ Places: [_, LugPlace.Pickup, _] } lone] && !HasALike(context, lone))
        {
            yield return Report(context, lone);
        }
    }

    /// <summary>True for a volume whose twin is no volume by its wires: then that one is wrong.</summary>
    private static bool HasALike(StudyContext context, LugPlaces volume) =>
        AlikeControls.Of(context).Any(alike => alike.Length > 1 && alike.Any(one => one.Track == volume.Track));

    private Finding Report(StudyContext context, LugPlaces volume)
    {
        var circuit = context.Circuit;
        var (track, part) = (volume.Track, circuit.Parts[volume.Track.Part]);
        var end = circuit.NameOf(volume.Places[0] == LugPlace.Jack ? track.Low : track.High);
        return Description.At(
            part.NameAt,
            $"'{part.Name}' has the pickup on its wiper: turned down, it shorts the pickup and takes its treble first",
            $"exchange what is on '{circuit.NameOf(track.Wiper)}' and '{end}', or write: allow {Description.Id} at {part.Name} \"why\"",
            Subject.Part(part.Name)
        );
    }
}
