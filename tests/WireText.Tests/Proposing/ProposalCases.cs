namespace WireText.Tests.Proposing;

/// <summary>Texts whose wires are to be found, one a kind of circuit. Their joints by hand are those of the trade's usual layout.</summary>
internal static class ProposalCases
{
    private const string TwoSingles = """
        pickup neck   single-coil dcr=6.1k l=2.2H c=110p wind=ccw magnet=south
        pickup bridge single-coil dcr=7.0k l=2.7H c=120p wind=cw magnet=north
        pot    vol    250k audio
        jack   out    mono
        wire   vol.1         to vol.case   bare
        wire   vol.case      to out.sleeve black
        wire   vol.2         to out.tip    blue
        expect sel=bridge: bridge
        expect sel=both:   bridge parallel neck
        expect sel=neck:   neck
        expect vol=0 others=any: silence
        find   sel

        """;

    private const string Grounds = """
        wire   neck.ground   to vol.case black
        wire   bridge.ground to vol.case black

        """;

    private const string WithSeries =
        TwoSingles
        + """
            positions sel bridge both neck series
            expect sel=series: bridge series neck

            """;

    private const string Humbucker = """
        pickup hb  humbucker-4 dcr=8k l=4.4H c=40p
        jack   out mono
        wire   hb.shield  to vol.case   bare
        wire   vol.1      to vol.case   bare
        wire   vol.case   to out.sleeve black
        wire   vol.2      to out.tip    blue
        expect vol=0 others=any: silence

        """;

    private const string Split = """
        pickup neck   humbucker-4 dcr=7.6k l=4.2H c=40p
        pickup middle single-coil dcr=5.9k l=2.2H c=110p wind=ccw magnet=south
        pickup bridge humbucker-4 dcr=8.9k l=5.1H c=36p
        pot    vol    500k audio
        jack   out    mono
        wire   bridge.s-start to vol.case   green
        wire   neck.s-start   to vol.case   green
        wire   bridge.shield  to vol.case   bare
        wire   neck.shield    to vol.case   bare
        wire   middle.ground  to vol.case   black
        wire   vol.1          to vol.case   bare
        wire   vol.case       to out.sleeve black
        wire   vol.2          to out.tip    blue
        expect sel=1: bridge
        expect sel=2: bridge.n parallel middle
        expect sel=3: middle
        expect sel=4: neck.n parallel middle
        expect sel=5: neck
        expect vol=0 others=any: silence
        find   sel

        """;

    private const string Links = """
        splice link-n neck.n-finish neck.s-finish sleeved
        splice link-b bridge.n-finish bridge.s-finish sleeved

        """;

    /// <summary>A switch of one pole and two throws that can stand between them.</summary>
    public const string TooFewThrows =
        TwoSingles + Grounds + "switch sel spdt-on-off-on\npositions sel bridge both neck\n";

    /// <summary>One pole with four throws, asked to do what takes two.</summary>
    public const string TooFewPoles =
        WithSeries
        + """
            wire bridge.ground to vol.case black
            define switch rotary-1x4
                lugs A0 0,0  A1 -9,5  A2 -10,-2  A3 -5,-9  A4 5,-9
                position 1 A0+A1
                position 2 A0+A2
                position 3 A0+A3
                position 4 A0+A4
                between break-before-make
                spare A1 A2 A3 A4
            switch sel rotary-1x4

            """;

    /// <summary>Two humbuckers, each with a switch whose middle position moves one pole alone, and a toggle that is wired.</summary>
    public const string TwoOnOnOn = """
        pickup neck   humbucker-4 dcr=7.6k l=4.2H c=40p
        pickup bridge humbucker-4 dcr=8.9k l=5.1H c=36p
        switch tog    toggle-3way
        switch way-n  dpdt-on-on-on-a-first
        switch way-b  dpdt-on-on-on-a-first
        pot    vol    500k audio
        jack   out    mono
        positions tog   neck both bridge
        positions way-n series single parallel
        positions way-b series single parallel
        wire   neck.shield    to vol.case bare
        wire   bridge.shield  to vol.case bare
        wire   neck.s-start   to vol.case green
        wire   bridge.s-start to vol.case green
        wire   neck.n-start   to tog.A1 red
        wire   bridge.n-start to tog.B1 red
        wire   tog.A0         to tog.B0 to vol.3 red
        wire   tog.case       to vol.case black
        wire   vol.1          to vol.case bare
        wire   vol.case       to out.sleeve black
        wire   vol.2          to out.tip blue
        expect tog=neck   way-n=series   way-b=any: neck.n series neck.s
        expect tog=neck   way-n=single   way-b=any: neck.n
        expect tog=neck   way-n=parallel way-b=any: neck.n parallel neck.s
        expect tog=bridge way-b=series   way-n=any: bridge.n series bridge.s
        expect tog=bridge way-b=single   way-n=any: bridge.n
        expect tog=bridge way-b=parallel way-n=any: bridge.n parallel bridge.s
        expect tog=both way-n=series way-b=series: (neck.n series neck.s) parallel (bridge.n series bridge.s)
        expect tog=both way-n=single way-b=single: neck.n parallel bridge.n
        expect tog=both way-n=series way-b=single: (neck.n series neck.s) parallel bridge.n
        find   way-n way-b

        """;

    /// <summary>Two pickups chosen before a preamp on a battery.</summary>
    public const string Preamp = """
        pickup  neck    single-coil  dcr=6.2k l=2.3H c=110p wind=cw magnet=north
        pickup  bridge  single-coil  dcr=6.8k l=2.6H c=115p wind=ccw magnet=south
        switch  sel     lever-3way
        pot     vol     25k   audio
        preamp  pre     buffer
        battery cell    9V
        jack    out     stereo
        positions sel   bridge both neck
        wire    pre.out        to vol.3      violet
        wire    vol.2          to out.tip    blue
        wire    vol.1          to vol.case   bare
        wire    neck.ground    to vol.case   black
        wire    bridge.ground  to vol.case   black
        wire    vol.case       to out.sleeve black
        wire    pre.common     to vol.case   black
        wire    cell.plus      to pre.plus   red
        wire    cell.minus     to out.ring   black
        expect  sel=bridge: bridge, battery on
        expect  sel=both:   neck parallel bridge
        expect  sel=neck:   neck
        expect  vol=0 others=any: silence
        find    sel

        """;

    /// <summary>Each with the joints of the trade's usual layout; null where there is none.</summary>
    public static IEnumerable<(string Name, string Text, int? ByHand)> Own =>
        [
            (
                "two single coils, 3-way lever",
                TwoSingles + Grounds + "switch sel lever-3way\npositions sel bridge both neck\n",
                6
            ),
            ("three single coils, 5-way lever", ThreeSingles, 4),
            (
                "two single coils, 4-way lever with series, one ground soldered",
                WithSeries + "wire bridge.ground to vol.case black\nswitch sel lever-4way\n",
                9
            ),
            ("the same, four leads free", WithSeries + "switch sel lever-4way\n", 10),
            (
                "humbucker, single coil, humbucker, 5-way lever, half-way stops cut",
                Split + Links + "switch sel lever-5way\n",
                7
            ),
            ("the same on four poles", Split + Links + "switch sel lever-5way-4pole\n", null),
            (
                "one humbucker, on-on-on switch, four leads free",
                Humbucker
                    + """
                    pot    vol 500k audio
                    switch way dpdt-on-on-on-a-first
                    expect way=1: hb.n series hb.s
                    expect way=2: hb.n
                    expect way=3: hb.n parallel hb.s
                    find   way

                    """,
                null
            ),
            (
                "coil cut by a pull, four leads free",
                Humbucker
                    + """
                    pot    vol push-pull 500k audio
                    positions vol.pull full cut
                    expect vol.pull=full: hb
                    expect vol.pull=cut:  hb.n
                    find   vol.pull

                    """,
                5
            ),
            ("two humbuckers, each its on-on-on switch", TwoOnOnOn, null),
            ("two single coils before a preamp, 3-way lever", Preamp, 6),
        ];

    /// <summary>Examples with the wires on some controls taken out.</summary>
    public static IEnumerable<(string Example, string Find)> OfExamples =>
        [
            ("2-two-pickups-mute", "sel"),
            ("2-two-pickups-mute", "mute at out.tip"),
            ("2-two-pickups-mute", "sel mute at out.tip"),
            ("4-three-pickups-5way", "sel at tone-neck.1 tone-mid.1"),
            ("6-series-phase", "join"),
            ("6-series-phase", "phase"),
            ("6-series-phase", "join phase"),
            ("8-twin-coil-cut", "tog"),
            ("8-twin-coil-cut", "vol-n.pull"),
            ("8-twin-coil-cut", "vol-b.pull"),
            ("8-twin-coil-cut", "vol-n.pull vol-b.pull"),
            ("8-twin-coil-cut", "tog vol-n.pull vol-b.pull"),
            ("9-four-pole-lever", "sel"),
        ];

    private const string ThreeSingles = """
        pickup neck   single-coil dcr=5.9k l=2.2H c=110p wind=cw magnet=north
        pickup middle single-coil dcr=6.0k l=2.2H c=110p wind=ccw magnet=south
        pickup bridge single-coil dcr=6.4k l=2.5H c=120p wind=cw magnet=north
        switch sel    lever-5way
        pot    vol    250k audio
        jack   out    mono
        wire   neck.ground   to vol.case black
        wire   middle.ground to vol.case black
        wire   bridge.ground to vol.case black
        wire   vol.1         to vol.case bare
        wire   vol.case      to out.sleeve black
        wire   vol.2         to out.tip blue
        expect sel=1: bridge
        expect sel=2: bridge parallel middle
        expect sel=3: middle
        expect sel=4: middle parallel neck
        expect sel=5: neck
        expect vol=0 others=any: silence
        find   sel

        """;
}
