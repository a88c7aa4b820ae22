using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Sound;

/// <summary>Finds coils that no position lets through, while others are heard.</summary>
public sealed class NeverHeard : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "never-heard",
            Title: "a pickup is heard in no position",
            Severity: Severity.Error,
            Group: FindingGroup.Sound,
            Why: """
            Other coils are heard, this one in no position, with all dials up or with any one of them at 0. One of its leads
            leads nowhere that the signal passes.
            """,
            Bad: """
            pickup neck   single-coil
            pickup [|bridge|] single-coil
            switch sel    dpdt
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 to sel.A2 white
            wire   bridge.hot to vol.case yellow
            wire   sel.A0 to vol.3 red
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to sel.B1 black
            wire   sel.B0 to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to vol.3 red
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Mend: "Follow both leads of the pickup to the switch and on: one must come to the signal, the other to its return."
        )
        {
            Silences = [.. Silence.AllThatIsRead(but: ["no-sound", "never-heard"])],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        List<Coil> coils =
        [
            .. context
                .Circuit.Elements.OfType<Coil>()
                .Where(coil => coil.HearsStrings && coil.Ends.All(context.IsJointed)),
        ];
        var heard = context.Jacks.SelectMany(HeardAtRest).ToHashSet();
        if (coils.TrueForAll(coil => heard.Contains(coil.Index)))
        {
            return [];
        }

        heard.UnionWith(context.Jacks.SelectMany(HeardWithADialAtZero));
        if (heard.Count == 0)
        {
            return [];
        }

        // What a ring brings out is not computed: a pickup may be meant for that.
        heard.UnionWith(context.Jacks.SelectMany(RingSignal.CoilsOn));

        return coils
            .Where(coil => !heard.Contains(coil.Index))
            .GroupBy(coil => coil.Part)
            .Select(pickup => LostSignal.Of(context, [.. pickup]))
            .GroupBy(lost => lost.Key)
            .Select(lost => Report(context, [.. lost]));
    }

    /// <summary>The elements of coils that are heard at a jack in some unmuted situation at rest.</summary>
    private static IEnumerable<int> HeardAtRest(StudyContext context) =>
        context.Study.Heard.Sounding.SelectMany(one => one.HeardCoils);

    /// <summary>The same with one dial at 0.</summary>
    private static IEnumerable<int> HeardWithADialAtZero(StudyContext context) =>
        context.Study.Roles is { } roles
            ? context
                .Circuit.Dials.SelectMany(dial => roles.EffectsOf(dial))
                .Where(effect => effect.AtZero.Outcome == Outcome.Sound)
                .SelectMany(effect => effect.AtZero.Heard)
                .Select(one => one.Coil.Index)
            : [];

    /// <summary>One finding for pickups whose signal ends at the same switches.</summary>
    private Finding Report(StudyContext context, ImmutableArray<LostSignal> lost)
    {
        var names = Listing.Of(lost.Select(one => one.Name));
        var verb = lost.Length == 1 ? "is" : "are";
        var unheard = $"{names} {verb} heard in no position";
        return Description
            .At(
                lost[0].Pickup.NameAt,
                ShortMessage.FirstOf(unheard + WhereItEnds(context, lost), unheard),
                Help(context, lost),
                [
                    .. lost.Select(one => Subject.Part(one.Pickup.Name)),
                    .. lost.Where(one => one.Lead is not null).Select(one => context.Subject(one.Lead!.Value)),
                    .. lost[0].Switches.Select(part => Subject.Part(part.Name)),
                ]
            )
            .Seeking(Remedy.Join);
    }

    private static string WhereItEnds(StudyContext context, ImmutableArray<LostSignal> lost)
    {
        var leads = lost.Where(one => one.Lead is not null)
            .Select(one => context.Circuit.NameOf(one.Lead!.Value))
            .ToList();
        if (leads.Count == 0)
        {
            return "";
        }

        var verb = leads.Count == 1 ? "comes" : "come";
        return lost[0].Switches.IsEmpty
            ? $": '{leads[0]}' comes to nothing that the signal passes"
            : $": {Listing.Of(leads)} {verb} only to {Listing.Of(lost[0].Switches.Select(part => part.Name))}";
    }

    private static string Help(StudyContext context, ImmutableArray<LostSignal> lost)
    {
        var switches = lost[0].Switches;
        return (lost.FirstOrDefault(one => one.Lead is not null)?.Lead, switches.IsEmpty) switch
        {
            ({ } lead, true) =>
                $"wire '{context.Circuit.NameOf(lead)}' to where the signal of '{lost[0].Pickup.Name}' is meant to go",
            (not null, false) =>
                $"look for the wire that is missing behind {Listing.Of(switches.Select(part => part.Name))}",
            (null, false) => $"follow its leads through {Listing.Of(switches.Select(part => part.Name))}",
            _ => "follow its leads, one to the signal and one to its return",
        };
    }
}
