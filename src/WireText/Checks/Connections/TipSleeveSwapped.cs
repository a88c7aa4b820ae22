using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds an output jack whose tip carries the ground side.</summary>
public sealed class TipSleeveSwapped : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "tip-sleeve-swapped",
            Title: "two wires of the output jack are exchanged",
            Severity: Severity.Error,
            Group: FindingGroup.Connections,
            Why: """
            With ground on the tip and the signal on the sleeve a guitar still sounds and still reads right on a meter. But
            its cases, bridge and strings are then the signal: it hums when touched, and the amplifier's ground is on the
            wrong side. On a jack with a ring the battery's minus belongs on the ring, never on the tip.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.sleeve white
            wire   vol.case to [|out.tip|] black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Exchange the two wires at the jack."
        )
        {
            // Every ground looks hot and every signal grounded now: what else is found is a shadow of this.
            Silences = [Silence.EverythingBut("wire-to-itself", "wire-twice")],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Network is not { } network || network.Tip == network.Sleeve)
        {
            yield break;
        }

        var output = context.Circuit.Outputs[0];
        var onTip = GroundLike(context, network.Tip, output);
        if (onTip > 0 && onTip > GroundLike(context, network.Sleeve, output))
        {
            yield return Swapped(
                context,
                output.Tip,
                output.Sleeve,
                "carries the ground side",
                lug => lug >= 0 && context.Sides.IsGroundLike(lug)
            );
        }
        else if (output.Ring is { } ring && IsBatteryOnTip(context, network.Tip, ring))
        {
            yield return Swapped(
                context,
                output.Tip,
                ring,
                "carries the battery",
                lug => lug >= 0 && IsOfABattery(context, lug)
            );
        }
    }

    private Finding Swapped(StudyContext context, int tip, int other, string what, Func<int, bool> belongs) =>
        Description.At(
            JackLugs.PlaceOf(context, tip),
            $"'{context.Circuit.NameOf(tip)}' {what}: it is exchanged with '{context.Circuit.NameOf(other)}'",
            JackLugs.Exchanged(context, tip, other, belongs),
            context.Subject(tip),
            context.Subject(other)
        ) with
        {
            Related = [new RelatedPlace(JackLugs.PlaceOf(context, other), "exchanged with this")],
        };

    private static int GroundLike(StudyContext context, int net, OutputJack output) =>
        context
            .Circuit.Nets.Members[net]
            .Count(lug => context.Sides.IsGroundLike(lug) && context.Circuit.Lugs[lug].Part != output.Part);

    private static bool IsOfABattery(StudyContext context, int lug) =>
        context.Circuit.Elements.OfType<Battery>().Any(battery => battery.Part == context.Circuit.Lugs[lug].Part);

    private static bool IsBatteryOnTip(StudyContext context, int tip, int ring)
    {
        var nets = context.Circuit.Nets;
        return context
                .Circuit.Elements.OfType<Battery>()
                .Any(battery => battery.Ends.Any(lug => nets.OneNet[lug] == tip))
            && nets.Members[nets.OneNet[ring]].Any(context.Sides.IsHotLike);
    }
}
