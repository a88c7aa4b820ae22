using System.Globalization;
using WireText.Checks.Values;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Batteries;

/// <summary>Finds electrolytic capacitors that a battery, or an amplifier at rest, charges the wrong way round.</summary>
public sealed class ElectrolyticReversed : IStudyCheck
{
    /// <summary>Situations looked at, once for each electrolytic. Chosen.</summary>
    internal const int SituationLimit = 4_096;

    public CheckDescription Description { get; } =
        new(
            Id: "electrolytic-reversed",
            Title: "an electrolytic capacitor is the wrong way round",
            Severity: Severity.Error,
            Group: FindingGroup.Supply,
            Why: """
            Its plus is lead 1, and here a battery, or the idle voltage of an amplifier, makes lead 2 the positive one. The
            oxide in it is then taken down instead of built up: it leaks, warms, empties the battery, and may burst. Under
            half a volt it bears (common practice).
            """,
            Bad: """
            pickup  neck  single-coil
            preamp  pre   buffer
            battery cell  9V
            cap     [|store|] 100u electrolytic from pre.common to pre.plus
            jack    out   stereo
            wire    neck.hot to pre.in white
            wire    neck.ground to pre.common black
            wire    pre.common to out.sleeve black
            wire    pre.out to out.tip white
            wire    cell.plus to pre.plus red
            wire    cell.minus to out.ring black
            """,
            Good: """
            pickup  neck  single-coil
            preamp  pre   buffer
            battery cell  9V
            cap     store 100u electrolytic from pre.plus to pre.common
            jack    out   stereo
            wire    neck.hot to pre.in white
            wire    neck.ground to pre.common black
            wire    pre.common to out.sleeve black
            wire    pre.out to out.tip white
            wire    cell.plus to pre.plus red
            wire    cell.minus to out.ring black
            """,
            Mend: "Exchange its two ends."
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study is not { Network: var network, Situations: { IsComplete: true } tree })
        {
            return [];
        }

        Capacitor[] electrolytics =
        [
            .. context
                .Circuit.Elements.OfType<Capacitor>()
                .Where(capacitor => context.Circuit.Parts[capacitor.Part].HasTrait(Part.Electrolytic))
                .Take(SituationLimit),
        ];
        return from capacitor in electrolytics
            let volts = tree
                .Situations.Take(SituationLimit / electrolytics.Length)
                .Min(situation => VoltsAcross(network, situation.State, capacitor))
            where volts < -Thresholds.ReversedVolts
            select Report(context.Circuit, capacitor, volts.Value);
    }

    /// <summary>The direct voltage of its plus against its minus; null when it is not known.</summary>
    private static double? VoltsAcross(Network network, State state, Capacitor capacitor)
    {
        var nets = network.Circuit.Nets.OneNet;
        return DirectVoltage.Between(network, state, (nets[capacitor.A], nets[capacitor.B]));
    }

    private Finding Report(Circuit circuit, Capacitor capacitor, double volts)
    {
        var part = circuit.Parts[capacitor.Part];
        return Description.At(
            part.NameAt,
            string.Create(
                CultureInfo.InvariantCulture,
                $"'{part.Name}' is the wrong way round: −{-volts:0.##} V at its plus, '{circuit.NameOf(capacitor.A)}'"
            ),
            part.HangsOn is { } on
                ? $"turn it round: {PartLines.Hung(circuit, part, on.Second, on.First)}"
                : $"exchange {Listing.Of(capacitor.Ends.Select(circuit.NameOf))}",
            Subject.Part(part.Name)
        );
    }
}
