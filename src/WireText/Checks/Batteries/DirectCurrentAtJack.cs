using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Batteries;

/// <summary>Finds a direct voltage on the tip.</summary>
public sealed class DirectCurrentAtJack : IJackCheck
{
    /// <summary>Situations looked at. Chosen.</summary>
    internal const int SituationLimit = 4_096;

    /// <summary>A part is on the way when without it less than this share of the voltage is left. Chosen: more than rounding.</summary>
    private const double LeadingShare = 0.999;

    public CheckDescription Description { get; } =
        new(
            Id: "dc-at-jack",
            Title: "a direct voltage stands at the jack",
            Severity: Severity.Error,
            Group: FindingGroup.Supply,
            Why: """
            The battery, or the idle voltage of an amplifier, comes to the tip without a capacitor between. Plugging in gives
            a bang, pots crackle, and some inputs do not bear it.
            """,
            Bad: """
            pickup   neck single-coil
            preamp   pre  buffer
            battery  cell 9V
            jack     [|out|]  stereo
            resistor led  10k from pre.plus to out.tip
            wire     neck.hot to pre.in white
            wire     neck.ground to pre.common black
            wire     pre.common to out.sleeve black
            wire     pre.out to out.tip white
            wire     cell.plus to pre.plus red
            wire     cell.minus to out.ring black
            """,
            Good: """
            pickup   neck single-coil
            preamp   pre  buffer
            battery  cell 9V
            jack     out  stereo
            resistor led  10k from pre.plus to pre.common
            wire     neck.hot to pre.in white
            wire     neck.ground to pre.common black
            wire     pre.common to out.sleeve black
            wire     pre.out to out.tip white
            wire     cell.plus to pre.plus red
            wire     cell.minus to out.ring black
            """,
            Mend: "Take the way out that leads from the battery to the tip, or put a capacitor in it."
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var circuit = context.Circuit;
        if (
            context.Study is not { Network: var network, Situations: { IsComplete: true } tree }
            || !circuit.Elements.Any(element => element is Battery)
        )
        {
            return [];
        }

        var worst = tree
            .Situations.Take(SituationLimit)
            .Select(situation => (situation.State, Volts: DirectVoltage.AtJack(network, situation.State)))
            .Where(found => found.Volts is { } volts && Math.Abs(volts) > Thresholds.JackVolts)
            .OrderByDescending(found => Math.Abs(found.Volts!.Value))
            .FirstOrDefault();
        return worst.Volts is { } volts ? [Report(context, worst.State, volts)] : [];
    }

    private Finding Report(StudyContext context, State state, double volts)
    {
        var circuit = context.Circuit;
        var part = circuit.Parts[circuit.Outputs[0].Part];
        var way = WayOf(context, state, volts);
        var names = Listing.Of(way.Select(one => one.Name));
        return Description.At(
            part.NameAt,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{(volts < 0 ? "−" : "")}{Math.Abs(volts):0.###} V of direct current stand at the tip{context.AtText(state)}, by way of {names}"
            ),
            "put a capacitor in that way, or take it out",
            [Subject.Part(part.Name), .. way.Select(one => Subject.Part(one.Name))]
        );
    }

    /// <summary>
    /// The parts without which less would stand at the tip, in order of declaration: not what lies across the way and takes of
    /// it, as pickups do.
    /// </summary>
    private static List<Part> WayOf(StudyContext context, State state, double volts)
    {
        var network = context.Study.Network;
        var parts = LiveNetwork
            .WithSupplies(network, state, (network.Tip, network.Sleeve), [])
            .Branches.Select(branch => context.Circuit.Elements[branch.Source.Element].Part)
            .Distinct()
            .Order()
            .ToList();
        var leading = parts.Where(part => Math.Abs(VoltsWithout(part)) < LeadingShare * Math.Abs(volts)).ToList();
        return [.. (leading.Count > 0 ? leading : parts).Select(part => context.Circuit.Parts[part])];

        double VoltsWithout(int part) =>
            DirectVoltage.AtJack(
                network,
                state,
                [
                    .. network
                        .Branches.Where(branch => context.Circuit.Elements[branch.Element].Part == part)
                        .Select(branch => branch.Index),
                ]
            ) ?? volts;
    }
}
