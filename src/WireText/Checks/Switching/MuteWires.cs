using WireText.Electrical.Mutes;

namespace WireText.Checks.Switching;

/// <summary>The lugs of a mute, and the lines that wire it right.</summary>
internal static class MuteWires
{
    /// <summary>A lug of the control on each of its two nets; the one on the sleeve's net, if any, is the ground.</summary>
    public static (string Signal, string Ground) LugsOn(StudyContext context, Mute mute)
    {
        var sleeve = context.Study.Network.Sleeve;
        var (signal, ground) =
            mute.Pair.Low == sleeve ? (mute.Pair.High, mute.Pair.Low) : (mute.Pair.Low, mute.Pair.High);
        return (
            context.Circuit.NameOf(LugOn(context, mute, signal)),
            context.Circuit.NameOf(LugOn(context, mute, ground))
        );
    }

    /// <summary>The first lug of the control on a net.</summary>
    public static int LugOn(StudyContext context, Mute mute, int net) =>
        context
            .Circuit.Controls[mute.Control]
            .Positions.SelectMany(position => position.Closed)
            .SelectMany(group => group)
            .First(lug => context.Circuit.Nets.OneNet[lug] == net);

    /// <summary>
    /// Lines that join what a control opens now and put the control across tip and sleeve. Two wires that meet at the
    /// control become one; where more do, each is carried over.
    /// </summary>
    public static IReadOnlyList<string> AcrossTheJack(StudyContext context, Mute mute)
    {
        var circuit = context.Circuit;
        var (first, second) = (LugOn(context, mute, mute.Pair.Low), LugOn(context, mute, mute.Pair.High));
        var (before, after) = (FarEnds(context, first), FarEnds(context, second));
        var lines = new List<string>();
        foreach (var wire in before.Concat(after.Skip(1)).Where(_ => after.Count > 0))
        {
            var to = wire.End == after[0].End ? before[0].End : after[0].End;
            lines.Add(WireLines.Line(circuit.NameOf(wire.End), circuit.NameOf(to), wire.Colour));
        }

        var output = circuit.Outputs[0];
        lines.Add(WireLines.Line(circuit.NameOf(first), circuit.NameOf(output.Tip), WireLines.SignalColour));
        lines.Add(WireLines.Line(circuit.NameOf(second), circuit.NameOf(output.Sleeve), WireLines.GroundColour));
        return lines;
    }

    private static List<(int End, string Colour)> FarEnds(StudyContext context, int lug) =>
        [
            .. context
                .WiresAt(lug)
                .Select(wire =>
                    (End: wire.From == lug ? wire.To : wire.From, WireLines.ColourOf(wire, WireLines.SignalColour))
                )
                .Where(end => end.End >= 0 && end.End != lug),
        ];
}
