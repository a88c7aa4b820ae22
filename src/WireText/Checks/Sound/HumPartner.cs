using WireText.Circuits;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Sound;

/// <summary>Finds cuts that leave the coil whose hum adds, where the other one would cancel it.</summary>
public sealed class HumPartner : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "hum-partner",
            Title: "a cut leaves the coil that does not cancel hum",
            Severity: Severity.Note,
            Group: FindingGroup.Sound,
            Why: """
            Two coils are heard and their hum adds up. With the other coil of the cut pickup left instead, hum would cancel:
            it is wound the other way.
            """,
            Bad: """
            pickup hb     humbucker-4
            pickup neck   single-coil wind=cw magnet=north
            switch [|cut|]    spdt
            pot    vol    250k audio
            jack   out    mono
            wire   hb.n-start to vol.3 red
            splice link hb.n-finish hb.s-finish
            wire   link to cut.A0 green
            wire   cut.A2 to vol.case black
            wire   hb.s-start to vol.case black
            wire   hb.shield to vol.case bare
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip blue
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup hb     humbucker-4
            pickup neck   single-coil wind=cw magnet=north
            switch cut    spdt
            pot    vol    250k audio
            jack   out    mono
            wire   hb.n-start to vol.3 to cut.A2 red
            splice link hb.n-finish hb.s-finish
            wire   link to cut.A0 green
            wire   hb.s-start to vol.case black
            wire   hb.shield to vol.case bare
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip blue
            wire   vol.case to out.sleeve black
            """,
            Mend: """
            Let the cut short the other coil: its throw goes to the other end of the pickup. Where that coil is meant for its
            sound, allow it, with the reason.
            """
        );

    public IEnumerable<Finding> Find(StudyContext context) =>
        context
            .Study.Heard.Sounding.Where(one =>
                one.Sound.Heard.Skip(1).Any()
                && one.Sound is { IsHumAssumed: false, Hum.ResidueDecibels: > Thresholds.LeftOverDecibels }
            )
            .SelectMany(one => Exchanges(context, one).Take(1).Select(coils => (one, coils.Live, coils.Silent)))
            .GroupBy(found => found.Live.Part)
            .Select(pickup => Report(context, pickup.First().one, pickup.First().Live, pickup.First().Silent));

    /// <summary>Heard coils of two-coil pickups with a silent partner that would cancel the hum in their place.</summary>
    private static IEnumerable<(Coil Live, Coil Silent)> Exchanges(StudyContext context, SituationSound one)
    {
        var circuit = context.Circuit;
        var live = one.Sound.Gains!.Coils.Select(coil => coil.Index).ToHashSet();
        return from heard in one.Sound.Heard
            let coils = circuit.Parts[heard.Coil.Part].Elements.Select(index => circuit.Elements[index]).OfType<Coil>()
            let partners = coils.Where(coil => coil.Index != heard.Coil.Index).ToList()
            where partners.Count == 1 && !live.Contains(partners[0].Index)
            let sign = context
                .Study.Heard.Sounding.Select(both => HumResidue.PartnerSign(both.Sound, heard.Coil, partners[0]))
                .FirstOrDefault(sign => sign is not null)
            where sign is { } found && HumResidue.WithSign(one.Sound, heard.Coil, found) <= Thresholds.CancelledDecibels
            select (heard.Coil, partners[0]);
    }

    private Finding Report(StudyContext context, SituationSound one, Coil live, Coil silent)
    {
        var circuit = context.Circuit;
        var pickup = circuit.Parts[live.Part];
        return Description.At(
            CutOf(circuit, [.. context.Stated(one.State)], pickup) is { } cut ? context.PlaceOf(cut) : pickup.NameAt,
            $"'{live.Name}' is left{context.AtText(one.State)}, and its hum adds to that of the other",
            $"leave '{silent.Name}' instead, which cancels it, or write: allow hum-partner at {pickup.Name} \"why\"",
            [Subject.Part(pickup.Name), .. context.StatedSubjects(one.State)]
        );
    }

    /// <summary>Of the controls that matter, one with a lug on a net of the pickup's leads; null for none.</summary>
    private static Control? CutOf(Circuit circuit, List<Control> stated, Part pickup)
    {
        var nets = pickup.Lugs.Select(lug => circuit.Nets.OneNet[lug]).ToHashSet();
        return stated.Find(control =>
            control
                .Positions.SelectMany(position => position.Closed)
                .SelectMany(group => group)
                .Any(lug =>
                    nets.Contains(circuit.Nets.OneNet[lug]) && circuit.Nets.Members[circuit.Nets.OneNet[lug]].Length > 1
                )
        );
    }
}
