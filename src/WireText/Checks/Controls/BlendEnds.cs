using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Finds a gang of a blend that is fed on the end that it leaves at the middle.</summary>
public sealed class BlendEnds : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "blend-end",
            Title: "a gang of a blend is fed on the wrong end",
            Severity: Severity.Warning,
            Group: FindingGroup.Switching,
            Why: """
            Each gang of a blend has one half without resistance. At the middle both wipers lie there, so that both pickups are
            up; from there to either end one of them goes down. A gang that is fed on its other end has its whole track in the
            way at the middle, and comes up where it should go down.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    [|mix|]    blend 500k
            jack   out    mono
            wire   neck.hot to mix.a.3 white
            wire   bridge.hot to mix.b.3 yellow
            wire   mix.a.2 to mix.b.2 to out.tip red
            wire   neck.ground to mix.case black
            wire   bridge.ground to mix.case black
            wire   mix.case to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    mix    blend 500k
            jack   out    mono
            wire   neck.hot to mix.a.3 white
            wire   bridge.hot to mix.b.1 yellow
            wire   mix.a.2 to mix.b.2 to out.tip red
            wire   neck.ground to mix.case black
            wire   bridge.ground to mix.case black
            wire   mix.case to out.sleeve black
            """,
            Mend: "Feed each gang on the end from which its wiper is reached without resistance at the middle."
        )
        {
            Silences = [.. Silence.WhatDialsDo()],
        };

    public IEnumerable<Finding> Find(CheckContext context) =>
        from dial in context.Circuit.Dials
        let tracks = DialWires.TracksOf(context.Circuit, dial).ToList()
        where tracks.Count > 1 && tracks.TrueForAll(track => FullEnd(track, dial) is not null)
        let wrong = tracks.FindAll(track => IsFedOnTheOther(context, track, dial))
        where wrong.Count > 0
        select Report(context, wrong, dial);

    /// <summary>The end that the wiper lies on where the dial rests, of a track that has resistance elsewhere; null for a plain one.</summary>
    private static int? FullEnd(Track track, Dial dial) =>
        track.Taper.Points.IsEmpty
            ? null
            : track.Taper.FractionAt(dial.Rest) switch
            {
                0 => track.Low,
                1 => track.High,
                _ => null,
            };

    /// <summary>True when the end with the wiper is empty and the other has a wire; both have one where the gang is a divider.</summary>
    private static bool IsFedOnTheOther(CheckContext context, Track track, Dial dial)
    {
        var full = FullEnd(track, dial);
        return !context.IsJointed(full!.Value) && context.IsJointed(OtherEnd(track, full.Value));
    }

    private static int OtherEnd(Track track, int end) => end == track.Low ? track.High : track.Low;

    private Finding Report(CheckContext context, List<Track> wrong, Dial dial)
    {
        var (circuit, track) = (context.Circuit, wrong[0]);
        var right = FullEnd(track, dial)!.Value;
        var (name, fed) = (circuit.Parts[dial.Part].Name, circuit.NameOf(OtherEnd(track, right)));
        return Description.At(
            circuit.Parts[dial.Part].NameAt,
            $"'{fed}' of the blend has the whole track in its way at the middle",
            $"move what is on '{fed}' to '{circuit.NameOf(right)}', or write: allow {Description.Id} at {name} \"why\"",
            Subject.Part(name),
            context.Subject(OtherEnd(track, right))
        );
    }
}
