using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Building;

/// <summary>Finds leads of parts that heat harms where several joints are made at one lug.</summary>
public sealed class Heat : ICheck
{
    /// <summary>Other conductors on the lug that make it a lug to be heated more than once. Common practice.</summary>
    private const int OthersThatHeat = 2;

    public CheckDescription Description { get; } =
        new(
            Id: "heat",
            Title: "a heat-sensitive part shares its lug with other joints",
            Severity: Severity.Note,
            Group: FindingGroup.Building,
            Why: """
            Each wire that is soldered to a lug heats what is on it already. A film, a paper or a plastic-bodied part bears
            that once, briefly, with a clip between joint and body, and not three times over.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    vol    250k audio
            pot    tone   250k audio
            cap    [|dark|]   22n heat-sensitive from vol.3 to tone.2
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   bridge.hot to vol.3 yellow
            wire   vol.2 to out.tip white
            wire   tone.1 to tone.case bare
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to tone.case to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    vol    250k audio
            pot    tone   250k audio
            cap    dark   22n heat-sensitive from tone.1 to tone.case
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   bridge.hot to vol.3 yellow
            wire   vol.3 to tone.2 red
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to tone.case to out.sleeve black
            """,
            Mend: """
            Give it a lug with one other wire at most. Where that cannot be, join the others first and solder its lead last,
            with a clip between the joint and its body.
            """
        );

    public IEnumerable<Finding> Find(CheckContext context) =>
        from part in context.Circuit.Parts
        where part.IsHeatSensitive
        let shared = part.Lugs.SelectMany(lead => JointsOf(context, lead)).Where(lug => IsHot(context, lug)).ToList()
        where shared.Count > 0
        let names = Listing.Of(shared.Select(lug => lug.Name))
        select Description.At(
            part.NameAt,
            $"'{part.Name}' is heat-sensitive and shares {names} with other joints",
            "solder its lead there last, with a clip between joint and body, or give it a lug of its own",
            [Subject.Part(part.Name), .. shared.Select(lug => context.Subject(lug.Index))]
        );

    /// <summary>The lugs that a part's lead is soldered to.</summary>
    private static IEnumerable<Lug> JointsOf(CheckContext context, int lead) =>
        context.Circuit.Lugs[lead].IsLead
            ? context
                .WiresAt(lead)
                .Select(wire => Conductors.OtherEnd(wire, lead))
                .Where(lug => lug >= 0)
                .Select(lug => context.Circuit.Lugs[lug])
            : [];

    /// <summary>True where others are soldered beside it; on a case each joint has its place, and a crowded lug is the greater ill.</summary>
    private static bool IsHot(CheckContext context, Lug lug) =>
        !Conductors.TakesManyJoints(lug)
        && !CrowdedLug.IsCrowded(context, lug)
        && Conductors.At(context, lug.Index).Count > OthersThatHeat;
}
