using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Building;

/// <summary>Finds a ground wire in another colour than nearly all the others.</summary>
public sealed class ColourHabit : IStudyCheck
{
    /// <summary>Other ground wires that make a habit. Chosen.</summary>
    private const int LeastOthers = 4;

    /// <summary>The share of them that has one colour, in percent. Chosen.</summary>
    private const int HabitPercent = 80;

    public CheckDescription Description { get; } =
        new(
            Id: "colour-habit",
            Title: "one ground wire has another colour",
            Severity: Severity.Note,
            Group: FindingGroup.Building,
            Why: """
            Where all grounds but one are of one colour, the one is read as a signal by whoever opens the cavity next. Bare
            wire and the leads of a part keep their colour.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    dark 22n from tone.1 to tone.case
            jack   out  mono
            metal  saddle
            metal  plate
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case white
            wire   vol.1 to vol.case black
            wire   vol.case to tone.case black
            wire   tone.case to out.sleeve black
            wire   saddle to vol.case black
            wire   [|plate to vol.case|] red
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    dark 22n from tone.1 to tone.case
            jack   out  mono
            metal  saddle
            metal  plate
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case white
            wire   vol.1 to vol.case black
            wire   vol.case to tone.case black
            wire   tone.case to out.sleeve black
            wire   saddle to vol.case black
            wire   plate to vol.case black
            """,
            Mend: "Take the colour of the others, or allow it."
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Network is not { } network)
        {
            yield break;
        }

        var grounds = context
            .Circuit.Wires.Where(wire => IsChosenGround(context.Circuit, wire, network.Sleeve))
            .DistinctBy(wire => wire.Run)
            .ToList();
        foreach (var (colour, count) in grounds.CountBy(wire => wire.Colour!))
        {
            foreach (var wire in grounds.Where(wire => wire.Colour != colour && IsHabit(count, grounds.Count - 1)))
            {
                yield return Report(context, wire, colour.Name);
            }
        }
    }

    private static bool IsHabit(int count, int others) => others >= LeastOthers && count * 100 >= others * HabitPercent;

    /// <summary>True for a plain wire on the sleeve's net whose colour was the builder's choice.</summary>
    private static bool IsChosenGround(Circuit circuit, Wire wire, int sleeve) =>
        wire is { Kind: WireKind.Wire, Colour.IsBare: false, From: >= 0, To: >= 0 }
        && circuit.Nets.OneNet[wire.From] == sleeve
        && !Conductors.IsOwnLead(circuit, wire);

    private Finding Report(StudyContext context, Wire wire, string colour)
    {
        var circuit = context.Circuit;
        return Description.At(
            wire.DeclaredAt,
            $"this ground wire is {wire.Colour!.Name}; nearly all others are {colour}",
            $"write: {WireLines.Line(circuit.NameOf(wire.From), circuit.NameOf(wire.To), colour)}",
            context.Subject(wire.From),
            context.Subject(wire.To)
        );
    }
}
