using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Editing;

/// <summary>What the words say that a line starts with, in a sentence each.</summary>
internal static class StatementWords
{
    private static readonly ImmutableDictionary<string, string> Meanings = new Dictionary<string, string>
    {
        ["wire"] = "a run of wire: wire LUG to LUG [to LUG…] COLOUR [sleeved] [length=] [awg=]",
        ["cable"] = "cores that run together: cable LUG to LUG COLOUR [and …] (twisted | braid END to END)",
        ["splice"] = "leads soldered together in the air: splice NAME LEAD… [sleeved]",
        ["touch"] = "metal pressed on metal without solder: touch LUG LUG…",
        ["expect"] = "what must be true of a state: expect [JACK:] STATE: CLAIM, …",
        ["positions"] = "your own words for the positions of a control: positions CONTROL WORD…",
        ["rest"] = "where controls and dials rest: rest CONTROL=POSITION…",
        ["arrange"] = "where parts stand on the page, a row of names a line below it",
        ["place"] = "where one part stands: place NAME [at X,Y] [turned DEGREES]",
        ["circuit"] = "the title: circuit \"TITLE\"",
        ["about"] = "a line of the title block: about KEY \"WORDS\"",
        ["remark"] = "words in quotes that stand on the sheet: remark \"WORDS\"",
        ["note"] = "the older word for a remark in quotes",
        ["finish"] = "the finish of the instrument: finish WORD",
        ["colour"] = "a colour of your own: colour NAME CODE #RRGGBB",
        ["load"] = "what the instrument is used with: load cable=470p input=1M",
        ["allow"] = "a finding that is meant: allow CHECK [at LUG] \"REASON\"",
        ["find"] = "controls whose wires are to be found: find CONTROL… [at LUG…]",
        ["found"] = "what was found at the bench: found STATE: reads VALUE, …  found LUG to LUG: reads VALUE",
        ["define"] = "a model of your own: define KIND MODEL, with its lugs and insides below it",
        ["include"] = "definitions from another file: include \"FILE\"",
        ["base"] = "the file that this one changes: base \"FILE\"",
        ["lift"] = "takes wires of the base off a lug: lift LUG [to LUG]",
        ["drop"] = "takes a part or an expectation of the base out: drop NAME, drop expect STATE",
        ["replace"] = "puts another part in the place of one of the base: replace NAME MODEL…",
        ["pickup"] = "a pickup: pickup NAME [MODEL] [dcr=] [l=] [c=] [wind=] [magnet=]",
        ["pot"] = "a pot: pot NAME [MODEL] VALUE [TAPER]",
        ["switch"] = "a switch, which must name its model: switch NAME MODEL",
        ["button"] = "a push button: button NAME MODEL",
        ["jack"] = "an output jack: jack NAME [MODEL]",
        ["cap"] = "a capacitor: cap NAME VALUE [WORD…] [from LUG to LUG]",
        ["resistor"] = "a resistor: resistor NAME VALUE [from LUG to LUG]",
        ["inductor"] = "an inductor: inductor NAME VALUE [dcr=] [from LUG to LUG]",
        ["battery"] = "a battery: battery NAME VALUE",
        ["preamp"] = "a preamplifier: preamp NAME MODEL",
        ["metal"] = "bare metal that must be grounded: metal NAME",
        ["body"] = "the outline in millimetres: body round DIAMETER, body box WIDTH,HEIGHT",
        ["hole"] = "what is drilled: hole round DIAMETER, hole slot WIDTH,HEIGHT",
        ["lugs"] = "solder points with their places from behind: lugs NAME X,Y …",
        ["leads"] = "wires that are fixed to the part: leads NAME X,Y …",
        ["spare"] = "lugs that may stay empty: spare NAME…",
        ["inner"] = "points inside that no wire reaches: inner NAME…",
        ["between"] = "how it switches over: between make-before-break, between break-before-make",
        ["joined"] = "lugs that are one piece: joined A+B …",
        ["coil"] = "a coil from its start to its finish: coil START FINISH [as NAME]",
        ["track"] = "the track of a pot: track LOW WIPER HIGH [as NAME]",
        ["position"] = "what a position joins: position [CONTROL=]NAME A+B …",
        ["amp"] = "an amplifier: amp IN OUT COMMON gain=",
    }.ToImmutableDictionary(Naming.Comparer);

    /// <summary>Null for a word that starts no line.</summary>
    public static string? MeaningOf(string word) => Meanings.GetValueOrDefault(word);
}
