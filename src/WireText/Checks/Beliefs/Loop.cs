using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Sound;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Checks.Beliefs;

/// <summary>Remarks on wires that close a loop of metal, and on how little that does.</summary>
public sealed class Loop : ICheck
{
    /// <summary>The area taken for a loop in a cavity, in square metres. Assumed: it depends on how the wire lies.</summary>
    private const double AssumedSquareMetres = 5e-4;

    private static readonly double[] MainsHertz = [50, 60];

    public CheckDescription Description { get; } =
        new(
            Id: "loop",
            Title: "a wire closes a loop",
            Severity: Severity.Note,
            Group: FindingGroup.Beliefs,
            Why: """
            A second way for the ground, such as cases that are wired to each other and sit in one plate as well, is called a
            ground loop and blamed for hum. The field of the mains does induce a voltage in it, by its area: nanovolts in a
            cavity, where a coil of thousands of turns picks up ten thousand times as much. Between two devices that are both
            earthed a loop does hum; inside one guitar it is harmless, and it keeps the ground when one joint fails.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    dark 22n from tone.1 to tone.case
            metal  plate
            jack   out  mono
            touch  vol.case tone.case plate
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   [|plate to vol.case|] black
            wire   [|vol.case to tone.case|] black
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    dark 22n from tone.1 to tone.case
            metal  plate
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   plate to vol.case black
            wire   vol.case to tone.case black
            wire   vol.case to out.sleeve black
            """,
            Mend: "Nothing is to be done."
        )
        {
            OnlyWhenAsked = true,
        };

    /// <summary>One finding for each wire between lugs that metal has joined before it, the earlier lines first.</summary>
    public IEnumerable<Finding> Find(CheckContext context)
    {
        var circuit = context.Circuit;
        var joined = new DisjointSets(circuit.Lugs.Length);
        foreach (var join in circuit.Joins.Where(join => join.Wire < 0))
        {
            joined.Unite(join.From, join.To);
        }

        foreach (var wire in circuit.Wires.Where(wire => wire is { From: >= 0, To: >= 0 } && wire.From != wire.To))
        {
            if (joined.Find(wire.From) == joined.Find(wire.To))
            {
                yield return Report(context, wire);
            }

            joined.Unite(wire.From, wire.To);
        }
    }

    private Finding Report(CheckContext context, Wire wire) =>
        Description.At(
            wire.DeclaredAt,
            $"this closes a loop: metal joins {WireLines.Ends(context.Circuit, wire)} already; that is harmless",
            $"nothing is to be done: {Figures()}",
            context.Subject(wire.From),
            context.Subject(wire.To)
        );

    private static string Figures()
    {
        var loop = MainsHertz.Select(hertz => InLoop(hertz)).ToList();
        var coil = MainsHertz.Select(hertz => InCoil(hertz)).ToList();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"an assumed {AssumedSquareMetres * 1e4:0} cm² in a field of {StrayField.UsualTesla * 1e6:0.#} µT picks up {Volts(loop[0])} at 50 Hz and {Volts(loop[1])} at 60 Hz, a coil of {StrayField.UsualCoilTurns:N0} turns {Volts(coil[0])} and {Volts(coil[1])}: {Decibels.Of(coil[0] / loop[0]):0} dB more"
        );

        static string Volts(double volts) => ValueText.Figure(volts, Unit.Volt);
    }

    private static double InLoop(double hertz) =>
        StrayField.InducedVolts(hertz, StrayField.UsualTesla, AssumedSquareMetres);

    private static double InCoil(double hertz) =>
        StrayField.InducedVolts(
            hertz,
            StrayField.UsualTesla,
            StrayField.UsualTurnSquareMetres,
            StrayField.UsualCoilTurns
        );
}
