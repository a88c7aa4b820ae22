using System.Collections.Immutable;
using WireText.Checks.Controls;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Roles;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Checks.Values;

/// <summary>Finds pots so small that they take half of the signal at rest.</summary>
public sealed class HeavyLoad : IJackCheck
{
    /// <summary>What a track may take of the level at rest, in dB: half of it. Chosen; usual pots take less than one.</summary>
    private const double MostLostDecibels = 6;

    /// <summary>
    /// What a volume's track may take of the treble at rest, in dB. Chosen between what 100k takes behind a pickup of 4.6 H, 7.5,
    /// and what 25k takes behind a single coil of 2.9 H, 9.3, both with a usual cable: behind the latter no resonance is left.
    /// </summary>
    private const double MostTrebleLostDecibels = 8;

    /// <summary>Usual behind a passive pickup. Common practice.</summary>
    private static readonly ImmutableArray<string> BehindAPickup = ["250k", "500k"];

    public CheckDescription Description { get; } =
        new(
            Id: "heavy-load",
            Title: "a pot loads the signal down",
            Severity: Severity.Warning,
            Group: FindingGroup.Values,
            Why: """
            A pickup has some kilohms of its own. A track of the same size across it takes half of the level and all of the
            resonance, with the knob fully up. Mostly a letter or a decimal point is wrong, or a pot that belongs behind a
            buffer is in front of it.
            """,
            Bad: """
            pickup neck single-coil
            pot    [|vol|]  2.5k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: """
            Take the value that is usual there: 250k or 500k behind a passive pickup, 25k behind a buffer. Where the loss is
            wanted, allow it.
            """
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Network is not { } network || context.Circuit.Dials.Length > DialRoles.MostDials)
        {
            yield break;
        }

        var sounding = context.Study.Heard.Sounding.ToList();
        foreach (var dial in context.Circuit.Dials)
        {
            if (sounding.Find(one => TracksIn(network, one, dial).Any()) is not { } heard)
            {
                continue;
            }

            var without = Without(context, network, heard, dial);
            var lost = DialEffect.PowerOf(without) - DialEffect.PowerOf(heard.Sound);
            var treble = DialEffect.TrebleOf(without) - DialEffect.TrebleOf(heard.Sound);
            if (lost > MostLostDecibels)
            {
                yield return Report(context, heard, dial, $"{DialWires.Decibels(lost)} of the level");
            }
            else if (treble > MostTrebleLostDecibels && IsVolume(context, dial))
            {
                yield return Report(context, heard, dial, $"{DialWires.Decibels(treble)} of the treble");
            }
        }
    }

    /// <summary>A tone control is there to take of the treble.</summary>
    private static bool IsVolume(StudyContext context, Dial dial) =>
        context.Study.Roles?.EffectiveOf(dial).Any(effect => effect.Role == DialRole.Volume) ?? false;

    /// <summary>The live sections of a dial's tracks.</summary>
    private static IEnumerable<int> TracksIn(Network network, SituationSound heard, Dial dial) =>
        heard
            .Sound.Live.Branches.Select(branch => branch.Source)
            .Where(branch => network.Circuit.Elements[branch.Element] is Track track && track.Dial == dial.Index)
            .Select(branch => branch.Index);

    /// <summary>What is heard with these sections taken out; what is joined at rest stays joined.</summary>
    private static JackSound Without(StudyContext context, Network network, SituationSound heard, Dial dial) =>
        context.Study.Sounds.Of(
            LiveNetwork.Of(network, heard.State, BranchEdits.None.Open(TracksIn(network, heard, dial)))
        );

    private Finding Report(StudyContext context, SituationSound heard, Dial dial, string lost)
    {
        var part = context.Circuit.Parts[dial.Part];
        var track = context.Circuit.Elements[
            context.Study.Network.Branches[TracksIn(context.Study.Network, heard, dial).First()].Element
        ];
        return Description.At(
            part.NameAt,
            $"'{dial.Name}' ({part.ValueLabel}) takes {lost} at rest",
            "take 250k or 500k behind a passive pickup, 25k behind a buffer, "
                + $"or write: allow heavy-load at {part.Name} \"why\"",
            Subject.Part(part.Name)
        ) with
        {
            Suggestions =
            [
                .. BehindAPickup.Select(label => OtherValue.Of(part, ((Track)track).Ohms, ValueUse.Pot, label)),
            ],
        };
    }
}
