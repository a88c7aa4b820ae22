using WireText.Checks.Grounding;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Roles;
using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Finds volumes that leave something to be heard at 0.</summary>
public sealed class VolumeNotSilent : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "volume-not-silent",
            Title: "a volume does not silence at 0",
            Severity: Severity.Warning,
            Group: FindingGroup.Switching,
            Why: """
            Everything comes through the pot's track, and yet at 0 something is left: the track has no end at ground. It then
            is a resistance in series that takes of the treble and next to nothing of the level.
            """,
            Bad: """
            pickup neck single-coil
            pot    [|vol|]  250k linear
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k linear
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            """,
            Mend: """
            Solder lug 1 to ground: mostly it is bent back to the case. A pot that is meant as a resistance in series is
            allowed, with the reason.
            """
        )
        {
            Silences = [Silence.Everywhere("inert-control"), Silence.Everywhere("controls-unlike")],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Roles is not { } roles)
        {
            yield break;
        }

        foreach (var dial in context.Circuit.Dials)
        {
            // Beside another pickup with a way of its own it only blends; what it does alone tells.
            var effects = roles.EffectiveOf(dial);
            var leaking = effects.Where(effect => Leaks(context.Study.Network, roles, effect)).ToList();
            if (leaking.Count > 0 && effects.All(effect => effect.Role != DialRole.Volume))
            {
                yield return Report(context, dial, leaking);
            }
        }

        foreach (var together in VolumesTogether.ThatLeak(context))
        {
            yield return Report(context, together);
        }
    }

    private Finding Report(StudyContext context, VolumesTogether together)
    {
        var parts = together.Tracks.Select(track => context.Circuit.Parts[track.Part]).ToList();
        var allow = $"or write: allow {Description.Id} at {parts[0].Name} \"why\"";
        return Description
            .At(
                parts[0].NameAt,
                $"{Listing.Of(parts.Select(part => part.Name))} do not silence, all at 0: {DialWires.Decibels(together.LeftDecibels)} is left",
                $"ground the ends that they are turned to, {allow}",
                [.. parts.Select(part => Subject.Part(part.Name))]
            )
            .Seeking(Remedy.Join, allow);
    }

    /// <summary>
    /// True where everything comes through the dial, 0 does not silence it, and no other dial is the volume. Beside a volume a pot
    /// with a capacitor across it is a bass cut.
    /// </summary>
    private static bool Leaks(Network network, DialRoles roles, DialEffect effect) =>
        effect.Role == DialRole.VolumeThatLeaks
        || (
            effect.Role is not (DialRole.Volume or DialRole.VolumeBackwards)
            && effect.CarriesAll(network)
            && !network.Circuit.Dials.Any(other =>
                roles
                    .EffectsOf(other)
                    .Any(one =>
                        one.State.Equals(effect.State) && one.Role is (DialRole.Volume or DialRole.VolumeBackwards)
                    )
            )
        );

    private Finding Report(StudyContext context, Dial dial, IReadOnlyList<DialEffect> effects)
    {
        var part = context.Circuit.Parts[dial.Part];
        var track = DialWires.TracksOf(context.Circuit, dial).First();
        var left = effects.Max(effect => DialEffect.PowerOf(effect.AtZero) - DialEffect.PowerOf(effect.AtTen));
        return Description.At(
            part.NameAt,
            $"'{dial.Name}' does not silence at 0: {DialWires.Decibels(left)} is left",
            Help(context, track) + $", or write: allow volume-not-silent at {part.Name} \"why\"",
            Subject.Part(part.Name)
        );
    }

    private static string Help(StudyContext context, Track track) =>
        context.IsJointed(track.Low)
            ? $"join '{context.Circuit.NameOf(track.Low)}' with ground alone"
            : "ground the free end: "
                + WireLines.Line(
                    context.Circuit.NameOf(track.Low),
                    GroundPlaces.Nearest(context, track.Low),
                    WireLines.GroundColour
                );
}
