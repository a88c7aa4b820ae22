namespace WireText.Tests.Electrical;

/// <summary>
/// Thirty-five circuits that were worked out by hand and by two solvers besides ours, ngspice one of them, before this code
/// was written: gains within 1e-6, readings exact.
/// </summary>
internal static class RightVerdicts
{
    private const string V = "vol.2 ~ out.tip; vol.1 ~ vol.case; vol.case ~ out.sleeve";
    private const string N = "neck.hot ~ vol.3; neck.ground ~ vol.case";
    private const string B = "bridge.hot ~ vol.3; bridge.ground ~ vol.case";
    private const string H = "hb.n-start ~ vol.3; hb.n-finish ~ hb.s-finish; hb.s-start ~ vol.case";

    private static readonly (string Name, string Line)[] Kit =
    [
        ("neck", "pickup neck single-coil dcr=6.4k l=2.2H c=110p wind=cw magnet=north"),
        ("bridge", "pickup bridge single-coil dcr=7.2k l=2.7H c=120p wind=ccw magnet=south"),
        ("hb", "pickup hb humbucker-4 n.dcr=4k n.l=2.3H n.c=90p s.dcr=4k s.l=2.3H s.c=90p"),
        ("hx", "pickup hx humbucker-4 n.dcr=4.4k n.l=2.6H n.c=95p s.dcr=4.4k s.l=2.6H s.c=95p"),
        ("vol", "pot vol 250k linear"),
        ("tone", "pot tone 250k linear"),
    ];

    public const int Count = 35;

    /// <summary>The circuits by their number; parts that none of its wires names are absent.</summary>
    public static Bench Of(int number) => Bench.Of(StatementsOf(number));

    /// <summary>The wiring text of a circuit with a line added.</summary>
    public static string TextWith(int number, string line) => Bench.Expand($"{StatementsOf(number)}\n{line}");

    private static string StatementsOf(int number)
    {
        var text = TextOf(number);
        var used = Kit.Where(part => text.Contains(part.Name + ".", StringComparison.Ordinal))
            .Select(part => part.Line);
        var jack = number == 35 ? "jack out stereo" : "jack out";
        return string.Join("; ", [.. used, jack, text]);
    }

    private static string TextOf(int number) =>
        number switch
        {
            1 => $"button mute momentary; {V}; {N}; mute.1 ~ out.tip; mute.2 ~ out.sleeve",
            2 =>
                $"button mute momentary-nc; {N}; vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ mute.1; mute.2 ~ out.tip",
            3 => $"button mute momentary; {V}; {N}; mute.1 ~ neck.hot; mute.2 ~ neck.ground",
            4 => $"button mute momentary-nc; {V}; {N}; mute.1 ~ out.tip; mute.2 ~ out.sleeve",
            5 =>
                $"switch sel spdt-on-off-on; {V}; neck.hot ~ sel.A1; bridge.hot ~ sel.A2; sel.A0 ~ vol.3; neck.ground ~ bridge.ground ~ vol.case",
            6 =>
                "switch sel spdt-on-off-on; neck.hot ~ sel.A1; bridge.hot ~ sel.A2; sel.A0 ~ out.tip; neck.ground ~ bridge.ground ~ out.sleeve",
            7 =>
                $"switch sel lever-3way; {V}; neck.hot ~ sel.A1; bridge.hot ~ sel.A2; sel.A3 ~ out.sleeve; sel.A0 ~ vol.3; neck.ground ~ bridge.ground ~ vol.case",
            8 => SeriesParallel("dpdt-on-on-on-b-first"),
            9 => SeriesParallel("dpdt-on-on-on-bridging"),
            10 =>
                $"pickup bri2 single-coil dcr=7.2k l=2.7H c=120p wind=cw magnet=south; {V}; {N}; bri2.hot ~ vol.3; bri2.ground ~ vol.case",
            11 => $"{V}; {N}; {B}",
            12 => $"{V}; {N}; bridge.ground ~ vol.3; bridge.hot ~ vol.case",
            13 =>
                $"switch ph dpdt; switch sel toggle-3way; {V}; neck.hot ~ ph.A0; neck.ground ~ ph.B0; ph.A1 ~ ph.B2 ~ sel.A1; ph.A2 ~ ph.B1 ~ vol.case; bridge.hot ~ sel.B1; sel.A0 ~ sel.B0 ~ vol.3; bridge.ground ~ vol.case",
            14 =>
                $"pickup cov single-coil-cover dcr=6.4k l=2.2H c=110p wind=cw magnet=north; switch ph dpdt; {V}; cov.cover ~ cov.ground; cov.hot ~ ph.A0; cov.ground ~ ph.B0; ph.A1 ~ ph.B2 ~ vol.3; ph.A2 ~ ph.B1 ~ vol.case; {B}",
            15 => $"switch cut spdt; {V}; {H}; cut.A0 ~ hb.n-finish; cut.A2 ~ vol.case",
            16 =>
                $"switch cut spdt; {V}; hb.n-start ~ vol.3; vol.3 ~ cut.A2; hb.n-finish ~ cut.A1; cut.A0 ~ hb.s-finish; hb.s-start ~ vol.case",
            17 => $"resistor part 4.7k from hb.n-finish to vol.case; {V}; {H}",
            18 => $"cap part 22n from hb.n-finish to vol.case; {V}; {H}",
            19 =>
                "pot v2 250k linear; neck.hot ~ vol.3; bridge.hot ~ v2.3; vol.2 ~ v2.2 ~ out.tip; neck.ground ~ bridge.ground ~ vol.case ~ vol.1 ~ v2.1 ~ v2.case ~ out.sleeve",
            20 =>
                "pot v2 250k linear; neck.hot ~ vol.2; bridge.hot ~ v2.2; vol.3 ~ v2.3 ~ out.tip; neck.ground ~ bridge.ground ~ vol.case ~ vol.1 ~ v2.1 ~ v2.case ~ out.sleeve",
            21 =>
                $"pot t2 250k linear; resistor ra 22k from neck.hot to vol.3; resistor rb 22k from bridge.hot to vol.3; cap c 22n from tone.2 to vol.case; {V}; neck.hot ~ tone.1; bridge.hot ~ t2.1; t2.2 ~ tone.2; neck.ground ~ bridge.ground ~ vol.case",
            22 => $"{V}; {H}; hx.n-start ~ vol.3; hx.n-finish ~ hx.s-finish ~ hb.n-finish; hx.s-start ~ vol.case",
            23 => Bridge("5k", "9k", "8k", "6k"),
            24 => $"{V}; {N}; bridge.hot ~ bridge.ground ~ vol.3",
            25 => $"cap lo 100n from neck.hot to vol.3; {V}; neck.ground ~ vol.case",
            26 => $"metal saddle; {N}; vol.2 ~ out.sleeve; vol.1 ~ vol.case; vol.case ~ out.tip; saddle ~ vol.case",
            27 => $"{V}; {N}; tone.case ~ vol.case; tone.1 ~ vol.case; tone.2 ~ vol.3",
            28 => $"cap c 22n from tone.2 to vol.case; {V}; {N}; tone.case ~ vol.case; tone.3 ~ vol.3",
            29 => "neck.hot ~ vol.3; vol.2 ~ out.tip; neck.ground ~ vol.case; vol.case ~ out.sleeve",
            30 => "neck.hot ~ vol.1; vol.2 ~ out.tip; neck.ground ~ vol.3 ~ vol.case; vol.case ~ out.sleeve",
            31 =>
                $"pickup dummy single-coil dcr=6.4k l=2.2H c=110p wind=ccw magnet=none; {V}; neck.hot ~ vol.3; neck.ground ~ dummy.hot; dummy.ground ~ vol.case",
            32 => $"pot mix 250k linear; {V}; {B}; neck.hot ~ mix.3; mix.2 ~ vol.3; neck.ground ~ vol.case",
            33 => $"cap c1 4.7n from bridge.hot to vol.3; {V}; {N}; bridge.ground ~ vol.case",
            34 =>
                $"switch sel lever-3way; cap dark 47n from sel.B3 to vol.case; {V}; neck.hot ~ sel.A2 ~ sel.A3; bridge.hot ~ sel.A1; sel.A0 ~ sel.B0 ~ vol.3; neck.ground ~ bridge.ground ~ vol.case",
            35 =>
                "preamp pre buffer; battery bat 9V; neck.hot ~ pre.in; neck.ground ~ pre.common; pre.common ~ out.sleeve; pre.out ~ out.tip; bat.plus ~ pre.plus; bat.minus ~ out.sleeve",
            _ => throw new ArgumentOutOfRangeException(nameof(number)),
        };

    private static string SeriesParallel(string model) =>
        $"switch sp {model}; {V}; neck.hot ~ vol.3; neck.ground ~ sp.A0; bridge.hot ~ sp.B0; bridge.ground ~ vol.case; sp.A1 ~ sp.B1; sp.A2 ~ vol.case; sp.B2 ~ vol.3";

    /// <summary>Circuit 23: five coils of which one lies across the middle.</summary>
    public static Bench BridgeOf(string a, string b, string c, string d) =>
        Bench.Of($"pot vol 250k linear; jack out; {Bridge(a, b, c, d)}");

    private static string Bridge(string a, string b, string c, string d) =>
        $"{Five("a", a)}; {Five("b", b)}; {Five("c", c)}; {Five("d", d)}; {Five("e", "7k")}; {V}; "
        + "a.hot ~ c.hot ~ vol.3; a.ground ~ e.hot; b.hot ~ a.ground; c.ground ~ e.ground; d.hot ~ c.ground; b.ground ~ d.ground ~ vol.case";

    private static string Five(string name, string dcr) =>
        $"pickup {name} single-coil dcr={dcr} l=2.2H c=110p wind=cw magnet=north";
}
