using WireText.Checks.Grounding;
using WireText.Checks.Values;
using WireText.Circuits;
using WireText.Electrical.Studies;

namespace WireText.Checks.Repairs;

/// <summary>What is advised is made on a copy first: nobody solders a line that silences a state.</summary>
internal static class Advice
{
    /// <summary>The line that hangs a two-lead part from one lug to another; null where a sound is lost by it.</summary>
    public static string? Hung(StudyContext context, Element element, int from, int to) =>
        KeepsTheSound(context, Hang(context, element, from, to))
            ? PartLines.Hung(context.Circuit, context.Circuit.Parts[element.Part], from, to)
            : null;

    /// <summary>
    /// The line that solders a lead, or an end of a wire, to ground instead of where it is; null where a sound is lost by it.
    /// </summary>
    /// <param name="lug">What goes to ground; the other end of the wire is taken from where it is.</param>
    public static string? MovedToGround(StudyContext context, Wire wire, int lug, string colour)
    {
        var nearest = GroundPlaces.Nearest(context, lug);
        return
            context.Circuit.FindLug(nearest) is { } ground
            && KeepsTheSound(context, new MoveEnds([(new WireEnd(wire.Index, IsFrom: wire.From != lug), ground.Index)]))
            ? WireLines.Line(context.Circuit.NameOf(lug), nearest, colour)
            : null;
    }

    /// <summary>True when what sounded before the change sounds after it.</summary>
    public static bool KeepsTheSound(StudyContext context, params IReadOnlyList<CircuitEdit> edits) =>
        KeepsTheSound(
            context.Study,
            context.Study.Rewired(edits.Aggregate(context.Circuit, (circuit, edit) => edit.Apply(circuit)))
        );

    /// <summary>True when what sounds before at any jack sounds there after; false where there are too many situations to tell.</summary>
    public static bool KeepsTheSound(Study before, Study after) =>
        before.Jacks.All(was =>
            after.At(was.Circuit.Outputs[0].Part) is { Outcomes: not null } now
            && was.Outcomes is not null
            && was.Heard.AreKeptBy(now.Heard, was.Circuit)
        );

    private static MoveEnds Hang(CheckContext context, Element element, int from, int to) =>
        new([.. Lead(context, element.Ends[0], from), .. Lead(context, element.Ends[1], to)]);

    /// <summary>The end of a lead's wire that is not on the lead, and where it is to be.</summary>
    private static IEnumerable<(WireEnd End, int Lug)> Lead(CheckContext context, int lead, int lug) =>
        context.WiresAt(lead).Take(1).Select(wire => (new WireEnd(wire.Index, IsFrom: wire.From != lead), lug));
}
