using WireText.Electrical.Networks;
using WireText.Electrical.Situations;

namespace WireText.Electrical.Roles;

/// <summary>Settings that differ in one dial alone, the others at rest.</summary>
internal sealed record DialTravels(DialSetting Zero, DialSetting Five, DialSetting Ten)
{
    public static DialTravels Of(Network network, int dial)
    {
        var rest = DialSetting.Rest(network).Travels;
        return new DialTravels(At(0), At(SituationOutcomes.Middle), At(Circuits.Dial.FullyUp));

        DialSetting At(double travel) => DialSetting.At(network, rest.SetItem(dial, travel));
    }
}
