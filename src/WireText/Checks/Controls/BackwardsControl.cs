using WireText.Circuits;
using WireText.Electrical.Roles;
using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Finds pots that do at 0 what is expected at 10.</summary>
public sealed class BackwardsControl : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "backwards-control",
            Title: "a control works backwards",
            Severity: Severity.Warning,
            Group: FindingGroup.Switching,
            Why: """
            A volume is loudest at 10 and a tone brightest at 10. The outer lugs of the track are exchanged, which is easily
            done with the pot seen from behind.
            """,
            Bad: """
            pickup neck single-coil
            pot    [|vol|]  250k linear
            jack   out  mono
            wire   neck.hot to vol.1 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.3 to vol.case bare
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
            Exchange the wires on the outer lugs; where only one of them is wired, move its wire to the other. A pot that is
            meant to turn the other way says so: pot vol 250k linear turns-back.
            """
        )
        {
            Silences =
            [
                Silence.Of("bleed-misplaced"),
                Silence.Everywhere("inert-control"),
                Silence.Everywhere("controls-unlike"),
            ],
            YieldsToErrorsAlone = true,
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Roles is not { } roles)
        {
            yield break;
        }

        foreach (var dial in context.Circuit.Dials.Where(dial => !DialWires.TurnsBack(context.Circuit, dial)))
        {
            var effects = roles.AgreedOn(
                dial,
                DialRole.VolumeBackwards,
                DialRole.BlendBackwards,
                DialRole.ToneBackwards
            );
            if (effects.Count > 0)
            {
                yield return Report(context, dial, effects);
            }
        }
    }

    private Finding Report(StudyContext context, Dial dial, IReadOnlyList<DialEffect> effects)
    {
        var part = context.Circuit.Parts[dial.Part];
        var track = DialWires.TracksOf(context.Circuit, dial).First();
        var what = effects.All(effect => effect.Role == DialRole.ToneBackwards)
            ? "is brightest at 0"
            : "is loudest at 0";
        return Description.At(
            RestSound.OfDials(context).Silencing == dial ? Severity.Error : Severity.Warning,
            part.NameAt,
            $"'{dial.Name}' works backwards: it {what}",
            $"{DialWires.Exchange(context, track)}, or write turns-back behind the pot's values if it is meant",
            Subject.Part(part.Name)
        );
    }
}
