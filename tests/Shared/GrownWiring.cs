using System.Globalization;
using System.Text;

namespace WireText.Testing;

/// <summary>
/// Invented circuits of any size, as text: a row of like channels on one output (pickup, terminal strip, volume, tone, tone
/// capacitor), wired within themselves and each to the next, five wires a part as in a crowded guitar. One selector feeds the
/// jack, so the number of situations stays the same while the wires grow.
/// </summary>
public static class GrownWiring
{
    private const int PartsAChannel = 5;
    private const int WiresAChannel = 25;

    /// <param name="wires">How many stretches of wire, the two of the jack included; at least 10.</param>
    public static string Of(int wires)
    {
        var channels = ((wires - 2) + WiresAChannel - 1) / WiresAChannel;
        var text = new StringBuilder(Head);
        for (var channel = 1; channel <= channels; channel++)
        {
            text.Append(Parts(channel));
        }

        text.Append("wire sel.A0 to out.tip white\nwire vol1.case to out.sleeve black\n");
        for (var channel = 1; channel <= channels; channel++)
        {
            foreach (var wire in Wires(channel, channels).Take(wires - 2 - ((channel - 1) * WiresAChannel)))
            {
                text.Append(wire);
            }
        }

        return text.ToString();
    }

    /// <summary>How many parts such a circuit has, selector and jack included.</summary>
    public static int PartsOf(int wires) => 2 + (PartsAChannel * (((wires - 2) + WiresAChannel - 1) / WiresAChannel));

    private const string Head = """
        circuit "bench"
        define strip eight
            body   box 46,16
            lugs   a -21,-6  b -7,-6  c 7,-6  d 21,-6  e -21,6  f -7,6  g 7,6  h 21,6
            spare  a b c d e f g h
        switch sel lever-3way
        jack out mono

        """;

    private static string Parts(int n) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"""
            pickup p{n} humbucker-4 dcr=8k l=4.5H c=40p
            strip s{n} eight
            pot vol{n} 500k audio
            pot tone{n} 500k audio
            cap dark{n} 22n from tone{n}.2 to tone{n}.case

            """
        );

    private static IEnumerable<string> Wires(int n, int channels)
    {
        var isLast = n == channels;
        var (hot, ground) = isLast ? ("sel.A1", "sel.A3") : ($"s{n + 1}.e", $"vol{n + 1}.case");
        string[] ends =
        [
            $"p{n}.n-start to s{n}.a red",
            $"s{n}.a to vol{n}.3 yellow",
            $"vol{n}.2 to s{n}.h blue",
            $"vol{n}.1 to vol{n}.case bare",
            $"s{n}.h to {hot} white",
            $"vol{n}.case to {ground} black",
            $"p{n}.s-start to vol{n}.case green",
            $"p{n}.n-finish to s{n}.b grey",
            $"p{n}.s-finish to s{n}.b violet",
            $"p{n}.shield to vol{n}.case bare",
            $"vol{n}.case to tone{n}.case black",
            $"vol{n}.3 to tone{n}.3 white",
            $"tone{n}.1 to s{n}.d orange",
            $"tone{n}.3 to s{n}.c brown",
            $"s{n}.g to vol{n}.case black",
            $"s{n}.f to tone{n}.case black",
            $"s{n}.f to s{n}.g black",
            $"s{n}.e to s{n}.h white",
            $"s{n}.a to s{n}.c red",
            $"vol{n}.2 to s{n}.e pink",
            $"s{n}.d to tone{n}.3 grey",
            $"vol{n}.1 to tone{n}.case black",
            $"p{n}.shield to tone{n}.case bare",
            $"s{n}.c to vol{n}.3 orange",
            isLast ? "sel.A0 to sel.A2 white" : $"s{n}.g to s{n + 1}.f black",
        ];
        return ends.Select(line => $"wire {line}\n");
    }
}
