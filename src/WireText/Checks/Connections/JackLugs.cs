using WireText.Checks.Repairs;
using WireText.Circuits;

namespace WireText.Checks.Connections;

/// <summary>What is soldered to the output jack, and how to solder it the other way round.</summary>
internal static class JackLugs
{
    /// <summary>Where a jack lug stands on the first wire that ends there; the jack's name when none does.</summary>
    public static Text.SourceLocation PlaceOf(CheckContext context, int lug) => Places.Of(context, lug);

    /// <summary>
    /// What to do so that the wires of two lugs are on the other. Where only some of what is on the first belongs to the second,
    /// that alone is moved; where a sound is lost by it, it is left to the reader.
    /// </summary>
    /// <param name="belongs">True for the other end of a wire that belongs on the second lug.</param>
    public static string Exchanged(StudyContext context, int first, int second, Func<int, bool> belongs)
    {
        var onFirst = context.WiresAt(first).ToList();
        var wrong = onFirst.Where(wire => belongs(OtherEnd(wire, first))).ToList();
        var isPart = wrong.Count > 0 && wrong.Count < onFirst.Count;
        var moves = (isPart ? wrong : onFirst)
            .Select(wire => (Wire: wire, From: first, To: second))
            .Concat(
                context
                    .WiresAt(second)
                    .Where(wire => !belongs(OtherEnd(wire, second)))
                    .Select(wire => (Wire: wire, From: second, To: first))
            )
            .ToList();
        var edit = new MoveEnds([
            .. moves.Select(move => (new WireEnd(move.Wire.Index, IsFrom: move.Wire.From == move.From), move.To)),
        ]);
        return Advice.KeepsTheSound(context, edit)
            ? "exchange them: "
                + string.Join("; ", moves.Select(move => Moved(context.Circuit, move.Wire, move.From, move.To)))
            : $"sort out what is on '{context.Circuit.NameOf(first)}' and on '{context.Circuit.NameOf(second)}'";
    }

    private static int OtherEnd(Wire wire, int lug) => wire.From == lug ? wire.To : wire.From;

    private static string Moved(Circuit circuit, Wire wire, int from, int to)
    {
        var other = OtherEnd(wire, from);
        var otherName = other < 0 ? "cut" : circuit.NameOf(other);
        var colour = WireLines.ColourOf(wire, WireLines.SignalColour);
        return wire.Kind is WireKind.Wire
            ? WireLines.Line(otherName, circuit.NameOf(to), colour)
            : $"{otherName} to {circuit.NameOf(to)}";
    }
}
