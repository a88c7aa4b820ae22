using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Values;

/// <summary>Finds treble bleeds that hang on the grounded end of a volume's track.</summary>
public sealed class BleedMisplaced : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "bleed-misplaced",
            Title: "a treble bleed takes the treble to ground",
            Severity: Severity.Warning,
            Group: FindingGroup.Values,
            Why: """
            A treble bleed leads from the signal's end of the track to the wiper, past the part of the track that is in the
            way when the volume is turned down. With one lead on the grounded end it does the opposite: it takes the treble
            to ground. Seen from behind the two ends are easily exchanged.
            """,
            Bad: """
            pickup neck    single-coil
            pot    vol     250k audio
            cap    [|bright|]  1n from vol.1 to vol.2
            jack   out     mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck    single-coil
            pot    vol     250k audio
            cap    bright  1n from vol.3 to vol.2
            jack   out     mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Hang it from wiper and the end of the track that carries the signal: mostly lugs 2 and 3."
        )
        {
            Silences = [Silence.Of("bleed-unlike")],
        };

    public IEnumerable<Finding> Find(StudyContext context) =>
        context.Study.Network is { } network
            ? from capacitor in context.Circuit.Elements.OfType<Capacitor>()
            where BleedValues.Holds(capacitor.Farads)
            let joints = JointsOf(context, capacitor)
            where joints.Count == 2
            let track = context
                .Circuit.Elements.OfType<Track>()
                .FirstOrDefault(t => Shunts(context, t, joints, network.Sleeve))
            where track is not null
            select Report(context, capacitor, track)
            : [];

    /// <summary>The lugs that its two leads are soldered to.</summary>
    private static List<int> JointsOf(StudyContext context, Capacitor capacitor) =>
        [
            .. capacitor
                .Ends.Where(lead => context.Circuit.Lugs[lead].IsLead)
                .SelectMany(lead => context.WiresAt(lead), (lead, wire) => wire.From == lead ? wire.To : wire.From)
                .Where(lug => lug >= 0),
        ];

    /// <summary>True for two lugs of the track's own pot, one of them on ground as an end of the track is, the other on the rest of it.</summary>
    private static bool Shunts(StudyContext context, Track track, List<int> joints, int sleeve)
    {
        var (circuit, nets) = (context.Circuit, context.Circuit.Nets.OneNet);
        if (joints.Exists(lug => circuit.Lugs[lug].Part != track.Part))
        {
            return false;
        }

        var grounded = new[] { track.Low, track.High }.Where(end => nets[end] == sleeve).ToList();
        var hot = track.Ends.Select(end => nets[end]).Where(net => net != sleeve).ToList();
        return grounded.Count == 1
            && joints.Count(lug => nets[lug] == sleeve) == 1
            && joints.Exists(lug => hot.Contains(nets[lug]));
    }

    private Finding Report(StudyContext context, Capacitor capacitor, Track track)
    {
        var circuit = context.Circuit;
        var part = circuit.Parts[capacitor.Part];
        var signal = circuit.Nets.OneNet[track.Low] == context.Study.Network.Sleeve ? track.High : track.Low;
        return Description.At(
            part.NameAt,
            $"'{part.Name}' takes the treble to ground: a bleed leads from '{circuit.NameOf(signal)}' to '{circuit.NameOf(track.Wiper)}'",
            $"hang it there: {PartLines.Hung(circuit, part, signal, track.Wiper)}",
            Subject.Part(part.Name),
            Subject.Part(circuit.Parts[track.Part].Name)
        );
    }
}
