using WireText.Circuits;
using WireText.Electrical.Roles;
using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Finds tone controls that lead to ground without a capacitor.</summary>
public sealed class ToneWithoutCapacitor : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "tone-without-capacitor",
            Title: "a tone control has no capacitor",
            Severity: Severity.Warning,
            Group: FindingGroup.Switching,
            Why: """
            A pot from the signal straight to ground, wired by its wiper and one end, takes of everything and not of the
            treble: at the end of its turn it shorts the signal. With a capacitor in its way it would be a tone control.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k linear
            pot    [|tone|] 250k linear
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   tone.1 to tone.case bare
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   tone.case to vol.case black
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k linear
            pot    tone 250k linear
            cap    dark 22n from tone.1 to tone.case
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   tone.case to vol.case black
            wire   vol.case to out.sleeve black
            """,
            Mend: "Put the capacitor between the pot's end and ground, or between the signal and the wiper."
        )
        {
            Silences =
            [
                new Silence("backwards-control", SilenceReach.SamePart),
                new Silence("volumes-linked", SilenceReach.SamePart),
            ],
        };

    public IEnumerable<Finding> Find(StudyContext context) =>
        context.Study.Roles is { } roles
            ? from dial in context.Circuit.Dials
            let effects = roles.AgreedOn(dial, DialRole.Volume, DialRole.VolumeBackwards)
            where effects.Count > 0
            let tracks = DialWires.TracksOf(context.Circuit, dial).ToList()
            where tracks.TrueForAll(track => LeadsToGround(context, track))
            select Report(context, dial, tracks[0])
            : [];

    private Finding Report(StudyContext context, Dial dial, Track track)
    {
        var part = context.Circuit.Parts[dial.Part];
        var bridged = BridgedEnd(context, dial, track);
        return Description
            .At(
                part.NameAt,
                $"'{dial.Name}' shorts the signal at the end of its turn: it leads to ground without a capacitor",
                bridged is not null
                    ? $"take wiper and end apart: as the volume it has the pickup on '{bridged}', the jack on '{context.Circuit.NameOf(track.Wiper)}'"
                    : CapacitorInItsWay(context, GroundEnd(context, track)),
                Subject.Part(part.Name)
            )
            .Seeking(bridged is null ? Remedy.Told : Remedy.Part);
    }

    /// <summary>
    /// The end that is soldered to the wiper, of what is no tone control but the volume with a wire astray: there is no other.
    /// </summary>
    private static string? BridgedEnd(StudyContext context, Dial dial, Track track)
    {
        var circuit = context.Circuit;
        var bridged = new[] { track.High, track.Low }.FirstOrDefault(
            end => context.IsJointed(end) && circuit.Nets.SameNet(end, track.Wiper),
            -1
        );
        var isTheOnly = LugPlaces
            .OfAll(context, context.Study.Network)
            .All(other => other.Track.Dial == dial.Index || !other.IsVolume);
        return bridged >= 0 && isTheOnly ? circuit.NameOf(bridged) : null;
    }

    /// <summary>True when only the wiper and one end are used, and one of them is soldered to the sleeve.</summary>
    private static bool LeadsToGround(StudyContext context, Track track)
    {
        var nets = context.Circuit.Nets;
        var ends = new[] { track.Low, track.High }
            .Where(end => context.IsJointed(end) && !nets.SameNet(end, track.Wiper))
            .ToList();
        return ends.Count == 1
            && context.IsJointed(track.Wiper)
            && IsGrounded(context, ends[0]) != IsGrounded(context, track.Wiper);
    }

    private static int GroundEnd(StudyContext context, Track track) =>
        track.Ends.First(lug => context.IsJointed(lug) && IsGrounded(context, lug));

    /// <summary>A capacitor in place of the one wire that brings the ground; without a line where there is none, or several.</summary>
    private static string CapacitorInItsWay(StudyContext context, int lug)
    {
        var (circuit, sleeve) = (context.Circuit, context.Circuit.Outputs[0].Sleeve);
        var brings = context
            .WiresAt(lug)
            .Where(wire => wire is { From: >= 0, To: >= 0 })
            .Where(wire => !circuit.Without(wire.Index).Nets.SameNet(lug, sleeve))
            .Select(wire => wire.From == lug ? wire.To : wire.From)
            .Take(2)
            .ToList();
        return brings is [var other]
            ? $"put a capacitor in its way: cap dark 22n from {circuit.NameOf(lug)} to {circuit.NameOf(other)}"
            : $"put a capacitor in its way, between '{circuit.NameOf(lug)}' and ground";
    }

    private static bool IsGrounded(StudyContext context, int lug) =>
        context.Circuit.Nets.OneNet[lug] == context.Study.Network.Sleeve;
}
