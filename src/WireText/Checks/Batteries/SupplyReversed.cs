using System.Globalization;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Batteries;

/// <summary>Finds amplifiers whose supply comes the wrong way round.</summary>
public sealed class SupplyReversed : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "supply-reversed",
            Title: "a supply comes the wrong way round",
            Severity: Severity.Error,
            Group: FindingGroup.Supply,
            Why: """
            The battery's minus comes to the supply and its plus to the common. Few circuits outlive that: a second is enough,
            the time to find out that the clip was turned.
            """,
            Bad: """
            pickup  neck single-coil
            preamp  [|pre|]  buffer
            battery cell 9V
            jack    out  stereo
            wire    neck.hot to pre.in white
            wire    neck.ground to pre.common black
            wire    pre.common to out.sleeve black
            wire    pre.out to out.tip white
            wire    cell.minus to pre.plus black
            wire    cell.plus to out.ring red
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
            Mend: "Exchange the battery's two leads, and mend it before the battery is clipped on."
        )
        {
            Silences =
            [
                Silence.Everywhere("electrolytic-reversed"),
                Silence.Everywhere("no-supply"),
                Silence.Everywhere("battery-drain"),
                Silence.Everywhere("dc-at-jack"),
                .. Silence.AllThatIsRead(),
            ],
        };

    public IEnumerable<Finding> Find(StudyContext context) =>
        from supplied in SuppliedAmplifier.Of(context)
        let volts = supplied.Volts.Min() ?? 0
        where volts < 0
        select Report(context, supplied.Amplifier, volts);

    private Finding Report(StudyContext context, Amplifier amplifier, double volts)
    {
        var circuit = context.Circuit;
        var part = circuit.Parts[amplifier.Part];
        var batteries = circuit.Elements.OfType<Battery>().ToList();
        var leads = batteries.Count == 1 ? Listing.Of(batteries[0].Ends.Select(circuit.NameOf)) : "the battery's leads";
        var supply = circuit.NameOf(amplifier.Supply!.Value);
        return Description.At(
            part.NameAt,
            string.Create(
                CultureInfo.InvariantCulture,
                $"'{part.Name}' gets its supply the wrong way round: −{-volts:0.###} V at '{supply}'"
            ),
            $"exchange {leads}",
            Subject.Lug(supply),
            Subject.Part(part.Name)
        );
    }
}
