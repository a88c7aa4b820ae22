using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Text;

namespace WireText.Checks.Batteries;

/// <summary>Finds batteries that are drawn from with no plug in.</summary>
public sealed class BatteryDrain : IStudyCheck
{
    /// <summary>The position of a jack with nothing in it.</summary>
    private const string NoPlug = "no-plug";

    public CheckDescription Description { get; } =
        new(
            Id: "battery-drain",
            Title: "a battery is drawn from without a plug",
            Severity: Severity.Error,
            Group: FindingGroup.Supply,
            Why: """
            The loop through the battery and what it feeds is closed with nothing in the jack: the battery is flat within
            weeks, mostly on the day of the show.
            """,
            Bad: """
            pickup  neck single-coil
            preamp  pre  buffer
            battery [|cell|] 9V
            jack    out  stereo
            wire    neck.hot to pre.in white
            wire    neck.ground to pre.common black
            wire    pre.common to out.sleeve black
            wire    pre.out to out.tip white
            wire    cell.plus to pre.plus red
            wire    cell.minus to out.sleeve black
            """,
            Good: """
            pickup  neck single-coil
            preamp  pre  buffer
            battery cell 9V
            jack    out  stereo
            wire    neck.hot to pre.in white
            wire    neck.ground to pre.common black
            wire    pre.common to out.sleeve black
            wire    pre.out to out.tip white
            wire    cell.plus to pre.plus red
            wire    cell.minus to out.ring black
            """,
            Mend: """
            Let the plug switch it: minus of the battery to the ring of a stereo jack, the common of what it feeds to the
            sleeve. A mono plug then joins the two.
            """
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Network is not { } network)
        {
            yield break;
        }

        var rest = Unplugged(context.Circuit);
        foreach (var battery in context.Circuit.Elements.OfType<Battery>())
        {
            var isDrawn = IsDrawn(network, battery, rest);
            var switches = context
                .Circuit.Controls.Where(control => !control.IsPlug && Decides(network, battery, rest, control, isDrawn))
                .ToList();
            if (isDrawn || switches.Count > 0)
            {
                yield return Report(context, battery, switches);
            }
        }
    }

    private static State Unplugged(Circuit circuit)
    {
        var state = State.Rest(circuit);
        foreach (var plug in circuit.Controls.Where(control => control.IsPlug))
        {
            var none = plug.Positions.Select(position => position.Name).ToList().IndexOf(NoPlug);
            state = none < 0 ? state : state.At(plug.Index, none);
        }

        return state;
    }

    private static bool IsDrawn(Network network, Battery battery, State state) =>
        BatteryLoop.IsClosed(network, state, battery);

    /// <summary>True when some position of a control closes or opens the loop, the others at rest.</summary>
    private static bool Decides(Network network, Battery battery, State rest, Control control, bool isDrawnAtRest) =>
        Enumerable
            .Range(0, control.Positions.Length)
            .Any(position => IsDrawn(network, battery, rest.At(control.Index, position)) != isDrawnAtRest);

    private Finding Report(StudyContext context, Battery battery, List<Control> switches)
    {
        var circuit = context.Circuit;
        var part = circuit.Parts[battery.Part];
        var ring = circuit.Outputs[0].Ring;
        var help = ring is { } lug
            ? "let the plug switch it: "
                + WireLines.Line(circuit.NameOf(battery.Minus), circuit.NameOf(lug), WireLines.GroundColour)
                + ", and to nothing else"
            : "let the plug switch it: take a stereo jack, its ring to the battery's minus";
        return switches.Count == 0
            ? Description.At(part.NameAt, $"'{part.Name}' is drawn from with no plug in", help, Subject.Part(part.Name))
            : Description.At(
                Severity.Note,
                part.NameAt,
                $"'{part.Name}' is switched by {Listing.Of(switches.Select(control => control.Name))} alone: forgotten, it is drawn from with no plug in",
                help,
                Subject.Part(part.Name)
            );
    }
}
