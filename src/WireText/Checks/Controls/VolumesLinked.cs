using WireText.Circuits;
using WireText.Electrical.Roles;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Finds volumes of one pickup that silence the others with it at 0.</summary>
public sealed class VolumesLinked : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "volumes-linked",
            Title: "a pickup's volume silences the others too",
            Severity: Severity.Note,
            Group: FindingGroup.Switching,
            Why: """
            Wired with the pickup on lug 3 and the output on the wiper, each volume shorts the common output at 0: turning one
            pickup down turns all of them off. Many instruments are built so, and some players want it.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    [|nv|]     250k linear
            pot    bv     250k linear
            jack   out    mono
            wire   neck.hot to nv.3 white
            wire   bridge.hot to bv.3 yellow
            wire   nv.2 to bv.2 to out.tip white
            wire   neck.ground to nv.case black
            wire   bridge.ground to bv.case black
            wire   nv.1 to nv.case bare
            wire   bv.1 to bv.case bare
            wire   nv.case to bv.case to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    nv     250k linear
            pot    bv     250k linear
            jack   out    mono
            wire   neck.hot to nv.2 white
            wire   bridge.hot to bv.2 yellow
            wire   nv.3 to bv.3 to out.tip white
            wire   neck.ground to nv.case black
            wire   bridge.ground to bv.case black
            wire   nv.1 to nv.case bare
            wire   bv.1 to bv.case bare
            wire   nv.case to bv.case to out.sleeve black
            """,
            Mend: """
            Where each pickup is to have a volume of its own, exchange wiper and lug 3 on each: at 0 the jack then stays on
            the tracks, which is no silence. Where it is meant, allow it, with the reason.
            """
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Roles is not { } roles)
        {
            return [];
        }

        var linked = context.Circuit.Dials.Where(dial => roles.EffectsOf(dial).Any(IsLinked)).ToList();
        return linked.Count == 0 ? [] : [Report(context, linked)];
    }

    /// <summary>True for a volume that belongs to some of the coils by what it does at 5, and yet silences all at 0.</summary>
    private static bool IsLinked(DialEffect effect)
    {
        if (effect.Role != DialRole.Volume || effect.AtTen.Heard.Skip(1).FirstOrDefault() is null)
        {
            return false;
        }

        var falls = effect
            .AtTen.Heard.Select(heard =>
                DialEffect.DecibelsOf(heard.Coil, effect.AtTen) - DialEffect.DecibelsOf(heard.Coil, effect.AtFive)
            )
            .ToList();
        return falls.Max() - falls.Min() >= Thresholds.LinkedDecibels;
    }

    private Finding Report(StudyContext context, List<Dial> linked)
    {
        var circuit = context.Circuit;
        var parts = linked.Select(dial => circuit.Parts[dial.Part]).ToList();
        var (verb, own, each) =
            linked.Count == 1 ? ("silences", "its own", "") : ("each silence", "their own", " of each");
        var at = parts.Count == 1 ? $" at {parts[0].Name}" : "";
        return Description.At(
            parts[0].NameAt,
            $"{Listing.Of(linked.Select(dial => dial.Name))} {verb} every pickup at 0, not only {own}",
            $"exchange what is on wiper and lug 3{each} if that is unwanted, or write: allow volumes-linked{at} \"why\"",
            [.. parts.Select(part => Subject.Part(part.Name))]
        );
    }
}
