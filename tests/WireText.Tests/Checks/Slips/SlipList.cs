namespace WireText.Tests.Checks.Slips;

/// <summary>
/// Slips as they come back to a bench, each a small edit of a right circuit of our own. What each does, whether it harms and what
/// mends it is written by hand, from how the circuit works, before the program was asked.
/// </summary>
internal static class SlipList
{
    public static IReadOnlyList<Slip> All { get; } =
    [
        // ---- one pickup ----
        Harm("one", "the volume's lug 1 left without its ground", "- wire vol.1 to vol.case", "wire vol.1 to vol.case"),
        Harm(
            "one",
            "tip and sleeve exchanged at the jack",
            """
            - wire vol.2 to out.tip
            + wire vol.2 to out.sleeve red
            - wire vol.case to out.sleeve
            + wire vol.case to out.tip black
            """,
            "exchange the wires on tip and sleeve"
        ),
        Harm("one", "the strings not grounded", "- wire plate to vol.case", "wire plate to vol.case"),
        Harm("one", "no ground wire to the jack", "- wire vol.case to out.sleeve", "wire vol.case to out.sleeve"),
        Harm("one", "no wire to the tip", "- wire vol.2 to out.tip", "wire vol.2 to out.tip"),
        Harm(
            "one",
            "the pickup's ground left off",
            "- wire bridge.ground to vol.case",
            "wire bridge.ground to vol.case"
        ),
        Harm("one", "the pickup's hot left off", "- wire bridge.hot to vol.3", "wire bridge.hot to vol.3"),
        Harm(
            "one",
            "lugs 1 and 3 of the volume exchanged",
            """
            - wire bridge.hot to vol.3
            + wire bridge.hot to vol.1 white
            - wire vol.3 to tone.1
            + wire vol.1 to tone.1 yellow
            - wire vol.1 to vol.case
            + wire vol.3 to vol.case bare
            """,
            "exchange what is on vol.1 and vol.3"
        ),
        Harm(
            "one",
            "the volume fed on its wiper",
            """
            - wire bridge.hot to vol.3
            + wire bridge.hot to vol.2 white
            - wire vol.3 to tone.1
            + wire vol.2 to tone.1 yellow
            - wire vol.2 to out.tip
            + wire vol.3 to out.tip red
            """,
            "exchange what is on vol.2 and vol.3"
        ),
        Harm(
            "one",
            "the tone's case without ground, its capacitor with it",
            "- wire vol.case to tone.case",
            "wire vol.case to tone.case"
        ),
        Harm("one", "the tone's capacitor bridged by a wire", "+ wire tone.2 to tone.case bare", "take the wire out"),
        Harm(
            "one",
            "the capacitor across the whole tone pot",
            """
            - cap dark 22n film from tone.2 to tone.case
            + cap dark 22n film from tone.1 to tone.case
            """,
            "hang the capacitor on tone.2"
        ),
        Harm(
            "one",
            "both leads of the capacitor on the case",
            """
            - cap dark 22n film from tone.2 to tone.case
            + cap dark 22n film from tone.case to tone.case
            """,
            "hang one lead on tone.2"
        ),
        Harm(
            "one",
            "the tone fed on lug 3: it works backwards",
            """
            - wire vol.3 to tone.1
            + wire vol.3 to tone.3 yellow
            """,
            "move the wire to tone.1"
        ),
        Harm("one", "solder between tip and sleeve", "+ wire out.tip to out.sleeve bare", "take the bridge off"),
        Harm("one", "solder from the wiper to the case", "+ wire vol.2 to vol.case bare", "take the bridge off"),
        Harm("one", "solder from lug 3 to the case", "+ wire vol.3 to vol.case bare", "take the bridge off"),
        Harm("one", "solder from the wiper to lug 3", "+ wire vol.2 to vol.3 bare", "take the bridge off"),
        Harm("one", "solder from the wiper to lug 1", "+ wire vol.2 to vol.1 bare", "take the bridge off"),
        Harm(
            "one",
            "the jack fed from before the volume",
            """
            - wire vol.2 to out.tip
            + wire vol.3 to out.tip red
            """,
            "take the jack's wire from vol.2"
        ),
        Harm(
            "one",
            "the string ground on the hot",
            """
            - wire plate to vol.case
            + wire plate to vol.3 black
            """,
            "move it to vol.case"
        ),
        Harm(
            "one",
            "the string ground on the wiper",
            """
            - wire plate to vol.case
            + wire plate to vol.2 black
            """,
            "move it to vol.case"
        ),
        Harm(
            "one",
            "the pickup's ground on the tone's wiper",
            """
            - wire bridge.ground to vol.case
            + wire bridge.ground to tone.2 black
            """,
            "move it to a case"
        ),
        Harm(
            "one",
            "the pickup's hot on the volume's case",
            """
            - wire bridge.hot to vol.3
            + wire bridge.hot to vol.case white
            """,
            "move it to vol.3"
        ),
        Harm(
            "one",
            "a 25k volume behind a passive pickup",
            """
            - pot vol 250k audio
            + pot vol 25k audio
            """,
            "take 250k"
        ),
        Harm(
            "one",
            "22u for 22n on the tone",
            """
            - cap dark 22n film from tone.2 to tone.case
            + cap dark 22u film from tone.2 to tone.case
            """,
            "take 22n"
        ),
        Harm(
            "one",
            "both ends of the string ground on the volume",
            """
            - wire plate to vol.case
            + wire vol.1 to vol.case black
            """,
            "solder one end to the plate"
        ),
        Fine(
            "one",
            "a lone pickup turned round",
            """
            - wire bridge.hot to vol.3
            + wire bridge.hot to vol.case white
            - wire bridge.ground to vol.case
            + wire bridge.ground to vol.3 black
            """
        ),
        Fine("one", "a second ground wire between the pots", "+ wire tone.case to out.sleeve black"),
        Fine("one", "one wire soldered twice", "+ wire vol.2 to out.tip red"),
        Fine(
            "one",
            "the string ground on the grounded lug of the volume",
            """
            - wire plate to vol.case
            + wire plate to vol.1 black
            """
        ),
        Fine(
            "one",
            "the capacitor's ground lead on the other pot",
            """
            - cap dark 22n film from tone.2 to tone.case
            + cap dark 22n film from tone.2 to vol.case
            """
        ),
        Fine(
            "one",
            "the capacitor's leads the other way round",
            """
            - cap dark 22n film from tone.2 to tone.case
            + cap dark 22n film from tone.case to tone.2
            """
        ),
        // ---- two pickups on a toggle ----
        Harm(
            "two",
            "the two hots exchanged on the toggle",
            """
            - wire neck.hot to sel.A1
            + wire neck.hot to sel.B1 white
            - wire bridge.hot to sel.B1
            + wire bridge.hot to sel.A1 yellow
            """,
            "exchange neck.hot and bridge.hot"
        ),
        Harm(
            "two",
            "one of two pickups turned round",
            """
            - wire neck.hot to sel.A1
            + wire neck.hot to vol.case white
            - wire neck.ground to vol.case
            + wire neck.ground to sel.A1 black
            """,
            "exchange neck.hot and neck.ground"
        ),
        Harm("two", "the jumper between the commons left out", "- wire sel.A0 to sel.B0", "wire sel.A0 to sel.B0"),
        Harm("two", "the neck's hot left off", "- wire neck.hot to sel.A1", "wire neck.hot to sel.A1"),
        Harm("two", "the cover not grounded", "- wire neck.cover to vol.case", "wire neck.cover to vol.case"),
        Harm(
            "two",
            "the cover on the hot",
            """
            - wire neck.cover to vol.case
            + wire neck.cover to sel.A1 bare
            """,
            "move it to vol.case"
        ),
        Harm("two", "the toggle's frame not grounded", "- wire sel.case to vol.case", "wire sel.case to vol.case"),
        Harm(
            "two",
            "both hots on one throw",
            """
            - wire bridge.hot to sel.B1
            + wire bridge.hot to sel.A1 yellow
            """,
            "move it to sel.B1"
        ),
        Harm(
            "two",
            "a hot on the common: always heard",
            """
            - wire bridge.hot to sel.B1
            + wire bridge.hot to sel.B0 yellow
            """,
            "move it to sel.B1"
        ),
        Harm("two", "solder between the two throws", "+ wire sel.A1 to sel.B1 bare", "take the bridge off"),
        Harm(
            "two",
            "input and output of the volume exchanged",
            """
            - wire sel.B0 to vol.3
            + wire sel.B0 to vol.2 red
            - wire vol.3 to tone.1
            + wire vol.2 to tone.1 orange
            - wire vol.2 to out.tip
            + wire vol.3 to out.tip blue
            """,
            "exchange what is on vol.2 and vol.3"
        ),
        Harm(
            "two",
            "the neck's ground on the other throw",
            """
            - wire neck.ground to vol.case
            + wire neck.ground to sel.B1 black
            """,
            "move it to vol.case"
        ),
        Harm("two", "the cases of the pots not joined", "- wire vol.case to tone.case", "wire vol.case to tone.case"),
        Harm(
            "two",
            "the tone on one pickup's throw alone",
            """
            - wire vol.3 to tone.1
            + wire sel.A1 to tone.1 orange
            """,
            "take it from vol.3"
        ),
        Harm(
            "two",
            "the common left on a throw",
            """
            - wire sel.B0 to vol.3
            + wire sel.B1 to vol.3 red
            """,
            "move it to sel.B0"
        ),
        Harm("two", "the volume's lug 1 left without its ground", "- wire vol.1 to vol.case", "wire vol.1 to vol.case"),
        Harm("two", "no wire from the toggle to the volume", "- wire sel.B0 to vol.3", "wire sel.B0 to vol.3"),
        Harm(
            "two",
            "the toggle's names the wrong way round",
            """
            - positions sel neck both bridge
            + positions sel bridge both neck
            """,
            "write: positions sel neck both bridge"
        ),
        // ---- a humbucker that is cut to one coil ----
        Harm(
            "split",
            "the coils joined the wrong way: out of phase",
            """
            - splice link hb.n-finish hb.s-finish sleeved
            + splice link hb.n-finish hb.s-start sleeved
            - wire hb.s-start to vol.case
            + wire hb.s-finish to vol.case green
            """,
            "exchange hb.s-start and hb.s-finish"
        ),
        Harm(
            "split",
            "the second coil left out of the splice",
            """
            - splice link hb.n-finish hb.s-finish sleeved
            + splice link hb.n-finish sleeved
            """,
            "twist hb.s-finish into the splice"
        ),
        Harm("split", "the screen not grounded", "- wire hb.shield to vol.case", "wire hb.shield to vol.case"),
        Harm(
            "split",
            "the screen on the hot",
            """
            - wire hb.shield to vol.case
            + wire hb.shield to vol.3 bare
            """,
            "move it to vol.case"
        ),
        Harm(
            "split",
            "the cut on the throw that is closed when the knob is in",
            """
            - wire vol.A2 to vol.case
            + wire vol.A1 to vol.case bare
            """,
            "move it to vol.A2"
        ),
        Harm("split", "the cut's throw not grounded", "- wire vol.A2 to vol.case", "wire vol.A2 to vol.case"),
        Harm(
            "split",
            "the second coil's start left off",
            "- wire hb.s-start to vol.case",
            "wire hb.s-start to vol.case"
        ),
        Harm(
            "split",
            "the cut's wire on the other pole",
            """
            - wire link to vol.A0
            + wire link to vol.B0 white
            """,
            "move it to vol.A0"
        ),
        Harm("split", "no wire from the splice to the pull", "- wire link to vol.A0", "wire link to vol.A0"),
        // ---- two volumes ----
        Harm(
            "volumes",
            "one of the two volumes fed on lug 3",
            """
            - wire neck.hot to vol-n.2
            + wire neck.hot to vol-n.3 white
            - wire vol-n.3 to vol-b.3
            + wire vol-n.2 to vol-b.3 red
            """,
            "exchange what is on vol-n.2 and vol-n.3"
        ),
        Harm(
            "volumes",
            "lug 1 of one volume without its ground",
            "- wire vol-b.1 to vol-b.case",
            "wire vol-b.1 to vol-b.case"
        ),
        Harm(
            "volumes",
            "one pickup turned round",
            """
            - wire neck.hot to vol-n.2
            + wire neck.hot to vol-n.case white
            - wire neck.ground to vol-n.case
            + wire neck.ground to vol-n.2 black
            """,
            "exchange neck.hot and neck.ground"
        ),
        Harm("volumes", "the two volumes not joined", "- wire vol-n.3 to vol-b.3", "wire vol-n.3 to vol-b.3"),
        Harm(
            "volumes",
            "lugs 1 and 3 of one volume exchanged",
            """
            - wire vol-n.3 to vol-b.3
            + wire vol-n.1 to vol-b.3 red
            - wire vol-n.1 to vol-n.case
            + wire vol-n.3 to vol-n.case bare
            """,
            "exchange what is on vol-n.1 and vol-n.3"
        ),
        Harm(
            "volumes",
            "one volume's case on its own",
            "- wire vol-n.case to vol-b.case",
            "wire vol-n.case to vol-b.case"
        ),
        // ---- a battery ----
        Harm(
            "battery",
            "the battery's minus on the sleeve: never off",
            """
            - wire cell.minus to out.ring
            + wire cell.minus to out.sleeve black
            """,
            "move it to out.ring"
        ),
        Harm(
            "battery",
            "the battery the wrong way round",
            """
            - wire cell.plus to pre.plus
            + wire cell.minus to pre.plus red
            - wire cell.minus to out.ring
            + wire cell.plus to out.ring black
            """,
            "exchange cell.plus and cell.minus"
        ),
        Harm(
            "battery",
            "the board's common not grounded",
            "- wire pre.common to vol.case",
            "wire pre.common to vol.case"
        ),
        Harm(
            "battery",
            "in and out of the board exchanged",
            """
            - wire mid.hot to pre.in
            + wire mid.hot to pre.out white
            - wire pre.out to vol.3
            + wire pre.in to vol.3 violet
            """,
            "exchange what is on pre.in and pre.out"
        ),
        Harm("battery", "the board's plus left off", "- wire cell.plus to pre.plus", "wire cell.plus to pre.plus"),
        Harm("battery", "the battery's minus left off", "- wire cell.minus to out.ring", "wire cell.minus to out.ring"),
        Harm(
            "battery",
            "tip and ring exchanged",
            """
            - wire vol.2 to out.tip
            + wire vol.2 to out.ring blue
            - wire cell.minus to out.ring
            + wire cell.minus to out.tip black
            """,
            "exchange what is on out.tip and out.ring"
        ),
        // ---- a phase slide ----
        Harm(
            "phase",
            "one of the two cross wires left out",
            "- wire phase.A2 to phase.B1",
            "wire phase.A2 to phase.B1"
        ),
        Harm("phase", "the other cross wire left out", "- wire phase.A1 to phase.B2", "wire phase.A1 to phase.B2"),
        Harm(
            "phase",
            "the pickup fed to the throws, not the commons",
            """
            - wire bridge.hot to phase.A0
            + wire bridge.hot to phase.A2 yellow
            """,
            "move it to phase.A0"
        ),
        Harm(
            "phase",
            "the cross wires straight: nothing is turned",
            """
            - wire phase.A1 to phase.B2
            + wire phase.A1 to phase.A2 orange
            - wire phase.A2 to phase.B1
            + wire phase.B2 to phase.B1 violet
            """,
            "cross them: A1 to B2, A2 to B1"
        ),
        // ---- a mute ----
        Harm(
            "mute",
            "the button in the way of the hot",
            """
            - wire vol.2 to out.tip
            + wire vol.2 to mute.1 blue
            - wire mute.1 to out.tip
            - wire mute.2 to out.sleeve
            + wire mute.2 to out.tip red
            """,
            "put it across tip and sleeve"
        ),
        Harm(
            "mute",
            "a button that is closed until pressed",
            """
            - button mute momentary
            + button mute momentary-nc
            """,
            "take one that is open until pressed"
        ),
        Harm(
            "mute",
            "the button across the pickup, before the volume",
            """
            - wire mute.1 to out.tip
            + wire mute.1 to vol.3 red
            """,
            "move it to out.tip"
        ),
        Harm("mute", "one leg of the button left off", "- wire mute.2 to out.sleeve", "wire mute.2 to out.sleeve"),
        Harm(
            "mute",
            "both legs of the button on the tip",
            """
            - wire mute.2 to out.sleeve
            + wire mute.2 to out.tip black
            """,
            "move one to out.sleeve"
        ),
        // ---- a treble bleed ----
        Harm("bleed", "lug 1 without its ground behind a bleed", "- wire vol.1 to vol.case", "wire vol.1 to vol.case"),
        Harm(
            "bleed",
            "the bleed's capacitor to ground",
            """
            - cap bright 1n film from vol.3 to vol.2
            + cap bright 1n film from vol.3 to vol.1
            """,
            "hang it from vol.3 to vol.2"
        ),
        Harm(
            "bleed",
            "100n for 1n on the bleed",
            """
            - cap bright 1n film from vol.3 to vol.2
            + cap bright 100n film from vol.3 to vol.2
            """,
            "take 1n"
        ),
        // ---- three pickups ----
        Harm(
            "five",
            "the hots of neck and middle exchanged",
            """
            - wire middle.hot to sel.A2
            + wire middle.hot to sel.A3 white
            - wire neck.hot to sel.A3
            + wire neck.hot to sel.A2 white
            """,
            "exchange neck.hot and middle.hot"
        ),
        Harm(
            "five",
            "the middle pickup turned round",
            """
            - wire middle.hot to sel.A2
            + wire middle.hot to vol.case white
            - wire middle.ground to vol.case
            + wire middle.ground to sel.A2 black
            """,
            "exchange middle.hot and middle.ground"
        ),
        Harm(
            "five",
            "the hot of the middle on the common",
            """
            - wire middle.hot to sel.A2
            + wire middle.hot to sel.A0 white
            """,
            "move it to sel.A2"
        ),
        Harm(
            "five",
            "the common's wire on the other pole",
            """
            - wire sel.A0 to vol.3
            + wire sel.B0 to vol.3 red
            """,
            "move it to sel.A0"
        ),
        Harm(
            "five",
            "the bridge's ground left off",
            "- wire bridge.ground to tone.case",
            "wire bridge.ground to tone.case"
        ),
        // ---- a blend ----
        Harm(
            "blend",
            "both pickups fed on lug 3 of the blend",
            """
            - wire bridge.hot to mix.b.1
            + wire bridge.hot to mix.b.3 yellow
            """,
            "move it to mix.b.1"
        ),
        Harm("blend", "the wipers of the blend not joined", "- wire mix.a.2 to mix.b.2", "wire mix.a.2 to mix.b.2"),
        Harm(
            "blend",
            "a pickup fed on the wiper of the blend",
            """
            - wire neck.hot to mix.a.3
            + wire neck.hot to mix.a.2 white
            """,
            "move it to mix.a.3"
        ),
        Harm(
            "blend",
            "the blend's case without ground, the pickups with it",
            "- wire mix.case to vol.case",
            "wire mix.case to vol.case"
        ),
    ];

    private static Slip Harm(string circuit, string name, string edit, string mend) => new(circuit, name, edit, mend);

    private static Slip Fine(string circuit, string name, string edit) => new(circuit, name, edit, Mend: null);
}
