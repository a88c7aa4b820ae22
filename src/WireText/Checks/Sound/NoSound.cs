using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Roles;
using WireText.Electrical.Situations;
using WireText.Text;

namespace WireText.Checks.Sound;

/// <summary>Finds a circuit in which no position lets a string be heard.</summary>
public sealed class NoSound : IJackCheck
{
    /// <summary>Lugs listed for one side of the gap.</summary>
    private const int Listed = 4;

    public CheckDescription Description { get; } =
        new(
            Id: "no-sound",
            Title: "no position sounds",
            Severity: Severity.Error,
            Group: FindingGroup.Sound,
            Why: """
            Whatever the controls are set to, no coil has a way to the tip and back to the sleeve. Somewhere between the
            pickups and the jack a joint is missing.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            jack   [|out|] mono
            wire   neck.hot to tone.3 white
            wire   tone.2 to tone.1 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case to tone.case bare
            wire   vol.2 to vol.3 white
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
            Mend: "Follow the signal from the tip: the joint is missing where its lugs end and the pickup's begin."
        )
        {
            Silences = [.. Silence.AllThatIsRead(but: "no-sound")],
            YieldsToErrorsAlone = true,
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var coils = context.Circuit.Elements.OfType<Coil>().Where(coil => coil.HearsStrings).ToList();
        if (context.Study.Network is not { } network || context.Study.Outcomes is not { } outcomes || coils.Count == 0)
        {
            yield break;
        }

        var rest = RestSound.OfDials(context);
        if (outcomes.AtTheMiddle.Contains(StructuralOutcome.Sounding))
        {
            if (!rest.IsHeard && !IsBackwards(context, rest.Silencing))
            {
                yield return AtRest(context, rest.Silencing);
            }

            yield break;
        }

        var output = context.Circuit.Parts[context.Circuit.Outputs[0].Part];
        var reach = new Reach(network);
        var fromTip = Frontier(context, reach.From(network.Tip, network.Sleeve));
        var fromCoil = Frontier(
            context,
            reach.From(coils.Select(coil => context.Circuit.Nets.OneNet[coil.Finish]), network.Sleeve)
        );
        yield return Description
            .At(
                output.NameAt,
                $"no position lets a string be heard at '{output.Name}'",
                $"find the missing joint: the tip reaches {Names(fromTip)}; {(coils.Count == 1 ? $"'{coils[0].Name}' reaches" : "the coils reach")} {Names(fromCoil)}",
                [
                    Subject.Part(output.Name),
                    .. fromTip
                        .Take(Listed)
                        .Concat(fromCoil.Take(Listed))
                        .Select(lug => Subject.Lug(lug.Name))
                        .Distinct(),
                ]
            )
            .Seeking(Remedy.Join);
    }

    /// <summary>True for a volume that only turns the wrong way: <c>backwards-control</c> says it, and how to mend it.</summary>
    private static bool IsBackwards(StudyContext context, Dial? dial) =>
        dial is not null && context.Study.Roles?.AgreedOn(dial, DialRole.VolumeBackwards).Count > 0;

    /// <summary>The circuit has a way for the sound, and the dials as they rest shut it.</summary>
    private Finding AtRest(StudyContext context, Dial? dial)
    {
        var output = context.Circuit.Parts[context.Circuit.Outputs[0].Part];
        return Description.At(
            output.NameAt,
            $"no position lets a string be heard at '{output.Name}', the dials where they rest",
            dial is null
                ? "compare the wires on the lugs of each pot: no dial alone brings the sound back"
                : $"compare the wires on the lugs of '{dial.Name}': turned to 5 it lets the sound through",
            dial is null
                ? [Subject.Part(output.Name)]
                : [Subject.Part(context.Circuit.Parts[dial.Part].Name), Subject.Part(output.Name)]
        );
    }

    /// <summary>The lugs in reach where a wire may be missing: not the jack's own, and leads only where there is nothing else.</summary>
    private static List<Lug> Frontier(StudyContext context, HashSet<int> nets)
    {
        var lugs = context
            .Circuit.Lugs.Where(lug => !lug.IsInner && nets.Contains(context.Circuit.Nets.OneNet[lug.Index]))
            .Where(lug => lug.Part != context.Circuit.Outputs[0].Part)
            .ToList();
        return lugs.Exists(lug => !lug.IsLead) ? lugs.FindAll(lug => !lug.IsLead) : lugs;
    }

    private static string Names(List<Lug> lugs) =>
        lugs.Count == 0 ? "nothing" : Listing.Of(lugs.Select(lug => lug.Name).Take(Listed));
}
