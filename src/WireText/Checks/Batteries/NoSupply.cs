using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Batteries;

/// <summary>Finds amplifiers that no position gives a supply with the plug in.</summary>
public sealed class NoSupply : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "no-supply",
            Title: "an amplifier gets no supply",
            Severity: Severity.Error,
            Group: FindingGroup.Supply,
            Why: """
            With the plug in and whatever the switches are set to, no loop of metal leads from its supply through the battery
            back to its common. It stays dead, and so does the jack.
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
            wire    cell.plus to out.ring red
            wire    pre.plus to out.ring red
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
            Mend: "Follow the loop: supply, plus of the battery, minus, the jack's ring, its sleeve, the common."
        )
        {
            Silences =
            [
                Silence.Everywhere("battery-drain"),
                Silence.Everywhere("dc-at-jack"),
                .. Silence.AllThatIsRead(),
            ],
        };

    public IEnumerable<Finding> Find(StudyContext context) =>
        from supplied in SuppliedAmplifier.Of(context)
        where supplied.Volts.All(volts => volts is null or 0)
        select Report(context, supplied.Amplifier);

    private Finding Report(StudyContext context, Amplifier amplifier)
    {
        var part = context.Circuit.Parts[amplifier.Part];
        var (supply, common) = (
            context.Circuit.NameOf(amplifier.Supply!.Value),
            context.Circuit.NameOf(amplifier.Common)
        );
        return Description.At(
            part.NameAt,
            $"'{part.Name}' gets no supply in any position: no way from '{supply}' through a battery to '{common}'",
            $"close the loop from '{supply}' through the battery to '{common}', the plug in",
            [
                Subject.Lug(supply),
                Subject.Part(part.Name),
                .. context
                    .Circuit.Elements.OfType<Battery>()
                    .Select(battery => Subject.Part(context.Circuit.Parts[battery.Part].Name)),
            ]
        );
    }
}
