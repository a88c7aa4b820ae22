using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Solving;

/// <summary>Turns a branch of the network into what lies between its nodes.</summary>
internal static class TwoPoles
{
    /// <param name="from">The node of the branch's first net.</param>
    /// <param name="to">The node of its second net.</param>
    public static TwoPole Of(Circuit circuit, Branch branch, DialSetting dials, int from, int to) =>
        circuit.Elements[branch.Element] switch
        {
            Coil coil => OfCoil(coil, from, to),
            Track track => TwoPole.Resistance(from, to, SectionOhms(track, branch.Kind, dials)),
            Resistor resistor => TwoPole.Resistance(from, to, resistor.Ohms),
            Capacitor capacitor => TwoPole.Capacitance(from, to, capacitor.Farads),
            Inductor inductor => TwoPole.Winding(from, to, inductor.Ohms, inductor.Henries),
            Battery battery => TwoPole.Resistance(from, to, battery.Ohms),
            Amplifier amplifier => TwoPole.Resistance(
                from,
                to,
                branch.Kind == BranchKind.AmplifierInput ? amplifier.InputOhms : amplifier.OutputOhms
            ),
            var element => throw new ArgumentOutOfRangeException(nameof(branch), element, "nothing is known inside it"),
        };

    private static TwoPole OfCoil(Coil coil, int from, int to)
    {
        var eddy = coil.EddyOhms ?? double.PositiveInfinity;
        var (inside, across) = coil.IsEddyInside ? (eddy, 0) : (double.PositiveInfinity, 1 / eddy);
        return new TwoPole(from, to, coil.Ohms, coil.Henries, inside, coil.Farads, across);
    }

    private static double SectionOhms(Track track, BranchKind kind, DialSetting dials)
    {
        var (low, high) = DialSetting.Sections(track, dials.Travels[track.Dial]);
        return kind == BranchKind.TrackLow ? low : high;
    }
}
