using WireText.Checks.Connections;
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
                yield return Report(context, battery, switches, rest);
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

    /// <summary>How the plug comes to switch it; where minus is on the ring already, what joins the ring to the sleeve without one.</summary>
    private static string Help(StudyContext context, Battery battery, State rest)
    {
        var circuit = context.Circuit;
        if (circuit.Outputs[0].Ring is not { } ring)
        {
            return "let the plug switch it: take a stereo jack, its ring to the battery's minus";
        }

        var nets = circuit.Nets.OneNet;
        if (nets[battery.Minus] != nets[ring])
        {
            return "let the plug switch it: "
                + WireLines.Line(circuit.NameOf(battery.Minus), circuit.NameOf(ring), WireLines.GroundColour)
                + ", and to nothing else";
        }

        var joining = JoinBlame.Between(context, ring, circuit.Outputs[0].Sleeve, rest);
        return joining.IsEmpty
            ? $"let nothing but the plug join '{circuit.NameOf(ring)}' to the sleeve"
            : $"let the plug switch it, take out: {string.Join("; ", joining.Select(wire => WireLines.Line(circuit, wire)))}";
    }

    private Finding Report(StudyContext context, Battery battery, List<Control> switches, State rest)
    {
        var circuit = context.Circuit;
        var part = circuit.Parts[battery.Part];
        var help = Help(context, battery, rest);
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
