using WireText.Circuits;
using WireText.Quantities;

namespace WireText.Electrical.Faults;

/// <summary>What goes wrong in a part of two leads.</summary>
internal static class ElementFaults
{
    /// <summary>What a capacitor that leaks comes to, in ohms.</summary>
    private static readonly FaultSteps Leaks = new(5e3, 15e3, 50e3, 200e3, 1e6);

    public static IEnumerable<Fault> Of(Circuit right) =>
        right.Elements.SelectMany(element =>
            In(element, right.Elements.Length).Select(fault => fault with { Element = element.Index })
        );

    private static IEnumerable<Fault> In(Element element, int elements) =>
        element switch
        {
            Capacitor cap =>
            [
                Shorted(FaultKind.CapacitorShorted, "capacitor", cap),
                Fault.Of(
                    FaultKind.CapacitorLeaky,
                    $"capacitor {cap.Name} leaks",
                    Leaks.Adding(
                        elements,
                        ohms => new FaultEdit.Bridge(cap.A, cap.B, ohms),
                        ohms => ValueText.Label(ohms, Unit.Ohm)
                    )
                ),
                Open(FaultKind.CapacitorOpen, "capacitor", cap),
            ],
            Resistor => TwoEnds("resistor", element),
            Inductor => TwoEnds("choke", element),
            Battery battery =>
            [
                Fault.Of(
                    FaultKind.BatteryFlat,
                    $"battery {battery.Name} is flat",
                    new FaultEdit.LiftEnd(battery.Index, 0)
                ),
            ],
            _ => [],
        };

    private static IEnumerable<Fault> TwoEnds(string kind, Element element) =>
        [Open(FaultKind.ResistorOpen, kind, element), Shorted(FaultKind.ResistorShorted, kind, element)];

    private static Fault Open(FaultKind fault, string kind, Element element) =>
        Fault.Of(fault, $"{kind} {element.Name} is open", new FaultEdit.LiftEnd(element.Index, 1));

    private static Fault Shorted(FaultKind fault, string kind, Element element) =>
        Fault.Of(fault, $"{kind} {element.Name} is shorted", new FaultEdit.Bridge(element.Ends[0], element.Ends[1]));
}
