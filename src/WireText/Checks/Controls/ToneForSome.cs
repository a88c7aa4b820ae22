using WireText.Circuits;
using WireText.Electrical.Roles;
using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Finds the only tone control where it works on some of the pickups.</summary>
public sealed class ToneForSome : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "tone-for-some",
            Title: "the only tone control does nothing for one pickup",
            Severity: Severity.Note,
            Group: FindingGroup.Switching,
            Why: """
            The tone control hangs on the throw of one pickup, before the selector, where all the others are heard without it.
            So are tone controls wired that are meant for one pickup, often beside another; a lone one mostly hangs on the volume.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    toggle-3way
            pot    vol    250k audio
            pot    [|tone|]   250k audio
            cap    dark   22n from tone.2 to tone.case
            jack   out    mono
            positions sel neck both bridge
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.B1 yellow
            wire   sel.A0 to sel.B0 to vol.3 red
            wire   sel.B1 to tone.1 orange
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   sel.case to vol.case to tone.case to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    toggle-3way
            pot    vol    250k audio
            pot    tone   250k audio
            cap    dark   22n from tone.2 to tone.case
            jack   out    mono
            positions sel neck both bridge
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.B1 yellow
            wire   sel.A0 to sel.B0 to vol.3 red
            wire   vol.3 to tone.1 orange
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   sel.case to vol.case to tone.case to out.sleeve black
            """,
            Mend: "Take it from the lug that all pickups come to. Where it is meant for one pickup, allow it."
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Roles is not { } roles)
        {
            yield break;
        }

        var tones = context.Circuit.Dials.Where(dial => roles.EffectsOf(dial).Any(IsTone)).ToList();
        if (tones is not [var tone])
        {
            yield break;
        }

        var works = roles.EffectsOf(tone).Where(IsTone).Select(effect => effect.State).ToHashSet();
        var without = context.Study.Heard.Unmuted.FirstOrDefault(one => one.Sounds && !works.Contains(one.State));
        if (without is not null)
        {
            yield return Report(context, context.Circuit.Parts[tone.Part], without.State);
        }
    }

    private static bool IsTone(DialEffect effect) => effect.Role is DialRole.Tone or DialRole.ToneBackwards;

    private Finding Report(StudyContext context, Part part, State state) =>
        Description.At(
            part.NameAt,
            $"'{part.Name}' does nothing{context.AtText(state)}, and no other tone control is there",
            $"take it from the lug that all pickups come to, or write: allow {Description.Id} at {part.Name} \"why\"",
            [Subject.Part(part.Name), .. context.StatedSubjects(state)]
        );
}
