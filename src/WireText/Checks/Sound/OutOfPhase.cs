using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Sound;

/// <summary>Finds coils that are heard together and always against each other.</summary>
public sealed class OutOfPhase : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "out-of-phase",
            Title: "pickups are out of phase",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            Two coils that are heard together work against each other: thin and weak. One of them has its leads exchanged,
            or a magnet or a winding the other way than the rest. What a phase switch does is no mistake.
            """,
            Bad: """
            pickup neck   single-coil wind=cw magnet=north
            pickup [|bridge|] single-coil wind=ccw magnet=south
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   bridge.ground to vol.3 yellow
            wire   neck.ground to vol.case black
            wire   bridge.hot to vol.case black
            wire   vol.2 to out.tip blue
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Good: """
            pickup neck   single-coil wind=cw magnet=north
            pickup bridge single-coil wind=ccw magnet=south
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   bridge.hot to vol.3 yellow
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.2 to out.tip blue
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Mend: """
            Exchange the two leads of the pickup named; not those of one whose cover is joined with its ground lead. Where
            hum cancelled before, turn its magnet instead, or hum comes back. Where out of phase is meant, claim it:
            expect rest: reversed neck parallel bridge.
            """
        )
        {
            Silences = [Silence.Everywhere("hum-partner")],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var together = context.Study.Heard.Sounding.Where(one => one.Sound.Heard.Skip(1).Any()).ToList();
        var inPhase = together.Where(one => !PhaseGroups.Of(one.Sound).AreSplit).Select(HeardKey).ToHashSet();
        var against = together
            .Where(one => PhaseGroups.Of(one.Sound).AreSplit)
            .Where(one => !inPhase.Contains(HeardKey(one)) && !IsClaimed(context.Circuit, one))
            .DistinctBy(HeardKey)
            .ToList();
        return against.Count == 0 ? [] : [Report(context, against)];
    }

    private static string HeardKey(SituationSound one) => string.Join(' ', one.HeardCoils);

    /// <summary>True when an expectation that may hold there says that something is reversed.</summary>
    private static bool IsClaimed(Circuit circuit, SituationSound one) =>
        circuit
            .ExpectationsHere()
            .Any(expectation =>
                expectation.Claims.Any(claim => claim is CoilsClaim coils && HasReversed(coils.Coils))
                && CheckContext.Covers(expectation, one.Situation)
            );

    private static bool HasReversed(ClaimedCoils coils) =>
        coils.IsReversed || (coils is ClaimedJoin join && join.Parts.Any(HasReversed));

    private Finding Report(StudyContext context, List<SituationSound> against)
    {
        var circuit = context.Circuit;
        var flipped = PhaseFlip.Find([.. against.Select(one => PhaseGroups.Of(one.Sound))]);
        var sound = against[0].Sound;
        var blamed = flipped.IsEmpty ? [PhaseGroups.Of(sound).Minority[^1]] : flipped;
        var names = CoilNames.Of(circuit, blamed);
        ImmutableArray<Coil> others =
        [
            .. sound.Heard.Select(heard => heard.Coil).Where(coil => !blamed.Contains(coil)),
        ];
        var assumed = against.Exists(one => one.Sound.IsPhaseAssumed)
            ? ", as far as can be told: wind= or magnet= is not stated everywhere"
            : "";
        return Description.At(
            circuit.Parts[blamed[0].Part].NameAt,
            $"{Listing.Of(names)} {(names.Length == 1 ? "is" : "are")} out of phase with {Listing.Of(CoilNames.Of(circuit, others))}{context.AtText(against[0].State)}{assumed}",
            Help(context, against, blamed, names),
            [.. blamed.Concat(others).Select(coil => Subject.Part(circuit.Parts[coil.Part].Name)).Distinct()]
        );
    }

    private static string Help(
        StudyContext context,
        List<SituationSound> against,
        ImmutableArray<Coil> blamed,
        ImmutableArray<string> names
    )
    {
        var claim = $"or write: allow out-of-phase at {context.Circuit.Parts[blamed[0].Part].Name} \"why\"";
        var cancels = against.TrueForAll(one => one.Sound.Hum is { Word: HumWord.Cancelled });
        var addsThen = against.TrueForAll(one =>
            HumResidue.WithReversed(one.Sound, blamed) > Thresholds.LeftOverDecibels
        );
        if (cancels && addsThen)
        {
            return $"turn the magnet of {Listing.Of(names)}, not the leads: with these exchanged hum would no longer cancel; {claim}";
        }

        return LeadsOf(context.Circuit, blamed[0]) is [var one, var other]
            ? $"exchange '{one}' and '{other}', {claim}"
            : $"exchange the leads of {Listing.Of(names)}, {claim}";
    }

    /// <summary>What can be exchanged to turn a coil round: its own leads, or those of the pickup that has it inside.</summary>
    private static List<string> LeadsOf(Circuit circuit, Coil coil) =>
        [
            .. circuit
                .Elements.OfType<Coil>()
                .Where(other => other == coil || (HasInnerEnd(circuit, coil) && other.Part == coil.Part))
                .SelectMany(other => other.Ends)
                .Where(lug => !circuit.Lugs[lug].IsInner)
                .Distinct()
                .Select(circuit.NameOf),
        ];

    private static bool HasInnerEnd(Circuit circuit, Coil coil) => coil.Ends.Any(lug => circuit.Lugs[lug].IsInner);
}
