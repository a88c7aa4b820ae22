using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Finds a volume that is wired otherwise than that of another pickup.</summary>
public sealed class ControlsUnlike : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "controls-unlike",
            Title: "a volume is wired otherwise than the one beside it",
            Severity: Severity.Warning,
            Group: FindingGroup.Switching,
            Why: """
            Volumes of the same name and value, one a pickup, are wired alike: the same lug to the pickup, the same to the jack,
            the same to ground. Where one differs, a wire is on the lug beside, and what it does is heard only as it is turned.
            """,
            Bad: """
            pickup neck     single-coil
            pickup bridge   single-coil
            pot    vol-neck   250k linear
            pot    [|vol-bridge|] 250k linear
            jack   out      mono
            wire   neck.hot to vol-neck.2 white
            wire   bridge.hot to vol-bridge.3 yellow
            wire   vol-neck.3 to vol-bridge.2 to out.tip white
            wire   neck.ground to vol-neck.case black
            wire   bridge.ground to vol-bridge.case black
            wire   vol-neck.1 to vol-neck.case bare
            wire   vol-bridge.1 to vol-bridge.case bare
            wire   vol-neck.case to vol-bridge.case to out.sleeve black
            """,
            Good: """
            pickup neck     single-coil
            pickup bridge   single-coil
            pot    vol-neck   250k linear
            pot    vol-bridge 250k linear
            jack   out      mono
            wire   neck.hot to vol-neck.2 white
            wire   bridge.hot to vol-bridge.2 yellow
            wire   vol-neck.3 to vol-bridge.3 to out.tip white
            wire   neck.ground to vol-neck.case black
            wire   bridge.ground to vol-bridge.case black
            wire   vol-neck.1 to vol-neck.case bare
            wire   vol-bridge.1 to vol-bridge.case bare
            wire   vol-neck.case to vol-bridge.case to out.sleeve black
            """,
            Mend: "Wire both alike. Where they are meant to differ, allow it, with the reason."
        )
        {
            Silences = [Silence.Everywhere("volumes-linked")],
        };

    public IEnumerable<Finding> Find(StudyContext context) =>
        AlikeControls.Of(context).Select(alike => Compare(context, alike)).OfType<Finding>();

    private Finding? Compare(StudyContext context, ImmutableArray<LugPlaces> all)
    {
        var usual = all.Where(one => one.IsVolume)
            .GroupBy(one => string.Join(' ', one.Places))
            .OrderByDescending(alike => alike.Count())
            .FirstOrDefault()
            ?.First();
        var odd = all.FirstOrDefault(one => usual is not null && !one.Places.SequenceEqual(usual.Places));
        if (usual is null || odd is null)
        {
            return null;
        }

        var circuit = context.Circuit;
        var part = circuit.Parts[odd.Track.Part];
        var differs = Enumerable.Range(0, odd.Places.Length).First(i => odd.Places[i] != usual.Places[i]);
        var lug = odd.Track.Ends[differs];
        var remedy =
            odd.Places[differs] == LugPlace.Nothing ? Remedy.Join
            : odd.Places.Order().SequenceEqual(usual.Places.Order()) ? Remedy.Exchange
            : Remedy.Any;
        var allow = $"or write: allow {Description.Id} at {part.Name} \"why\"";
        return Description
            .At(
                part.NameAt,
                $"'{circuit.NameOf(lug)}' leads to {Words(odd.Places[differs])}, '{circuit.NameOf(usual.Track.Ends[differs])}' to {Words(usual.Places[differs])}",
                $"wire '{part.Name}' as '{circuit.Parts[usual.Track.Part].Name}' is, {allow}",
                [
                    context.Subject(lug),
                    .. new[] { odd, usual }
                        .Take(remedy == Remedy.Exchange ? 2 : 1)
                        .Select(one => Subject.Part(circuit.Parts[one.Track.Part].Name)),
                ]
            )
            .Seeking(remedy, allow);
    }

    private static string Words(LugPlace place) =>
        place switch
        {
            LugPlace.Ground => "ground",
            LugPlace.Part => "another part",
            LugPlace.Pickup => "a pickup",
            LugPlace.Jack => "the jack",
            _ => "nothing",
        };
}
