using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Networks;

/// <summary>Turns elements between lugs into branches between nets.</summary>
internal static class BranchList
{
    public static ImmutableArray<Branch> Of(Circuit circuit)
    {
        var branches = ImmutableArray.CreateBuilder<Branch>();
        foreach (var element in circuit.Elements)
        {
            foreach (var (kind, from, to) in Sections(element))
            {
                var (net, otherNet) = (circuit.Nets.OneNet[from], circuit.Nets.OneNet[to]);
                branches.Add(new Branch(branches.Count, element.Index, kind, net, otherNet));
            }
        }

        return branches.ToImmutable();
    }

    private static IEnumerable<(BranchKind Kind, int From, int To)> Sections(Element element) =>
        element switch
        {
            Coil coil => [(BranchKind.Coil, coil.Start, coil.Finish)],
            Track track =>
            [
                (BranchKind.TrackLow, track.Low, track.Wiper),
                (BranchKind.TrackHigh, track.Wiper, track.High),
            ],
            Resistor resistor => [(BranchKind.Resistor, resistor.A, resistor.B)],
            Capacitor capacitor => [(BranchKind.Capacitor, capacitor.A, capacitor.B)],
            Inductor inductor => [(BranchKind.Inductor, inductor.A, inductor.B)],
            Battery battery => [(BranchKind.Battery, battery.Plus, battery.Minus)],
            Amplifier amplifier =>
            [
                (BranchKind.AmplifierInput, amplifier.In, amplifier.Common),
                (BranchKind.AmplifierOutput, amplifier.Out, amplifier.Common),
            ],
            _ => throw new ArgumentOutOfRangeException(nameof(element), element, "no branch is known for it"),
        };
}
