using System.Collections.Immutable;
using WireText.Checks.Controls;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Values;

/// <summary>Finds a part of a treble bleed that does not lie across its volume, as its twin lies across the volume of another pickup.</summary>
public sealed class BleedUnlike : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "bleed-unlike",
            Title: "a bleed lies otherwise than that of the other volume",
            Severity: Severity.Warning,
            Group: FindingGroup.Values,
            Why: """
            The volumes of two pickups have the same parts as bleed, and across one of them they lie as they should. Across the
            other a capacitor or a resistor has one lead on a lug that is no end of the bleed: it loads the pickup, or takes its
            treble to ground.
            """,
            Bad: """
            pickup neck     single-coil
            pickup bridge   single-coil
            pot    vol-neck   250k linear
            pot    vol-bridge 250k linear
            cap    c-neck   1n from vol-neck.3 to vol-neck.2
            cap    [|c-bridge|] 1n from vol-bridge.2 to vol-neck.case
            jack   out      mono
            wire   neck.hot to vol-neck.2 white
            wire   bridge.hot to vol-bridge.2 yellow
            wire   vol-neck.3 to vol-bridge.3 to out.tip white
            wire   neck.ground to vol-neck.case black
            wire   bridge.ground to vol-bridge.case black
            wire   vol-neck.1 to vol-neck.case to vol-bridge.case bare
            wire   vol-bridge.1 to out.sleeve bare
            wire   vol-bridge.case to out.sleeve black
            """,
            Good: """
            pickup neck     single-coil
            pickup bridge   single-coil
            pot    vol-neck   250k linear
            pot    vol-bridge 250k linear
            cap    c-neck   1n from vol-neck.3 to vol-neck.2
            cap    c-bridge 1n from vol-bridge.3 to vol-bridge.2
            jack   out      mono
            wire   neck.hot to vol-neck.2 white
            wire   bridge.hot to vol-bridge.2 yellow
            wire   vol-neck.3 to vol-bridge.3 to out.tip white
            wire   neck.ground to vol-neck.case black
            wire   bridge.ground to vol-bridge.case black
            wire   vol-neck.1 to vol-neck.case to vol-bridge.case bare
            wire   vol-bridge.1 to out.sleeve bare
            wire   vol-bridge.case to out.sleeve black
            """,
            Mend: "Hang it across its own volume, as the other lies across its. Where they are meant to differ, allow it."
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        foreach (var alike in AlikeControls.Of(context))
        {
            var bled = alike.Select(one => BledBy(context.Circuit, one.Track)).ToList();
            var across = bled.SelectMany(one => one.Across).ToHashSet();
            foreach (var (track, own) in alike.Select((one, i) => (one.Track, bled[i])))
            {
                var missing = across.Select(ValueOf).Except(own.Across.Select(ValueOf)).ToHashSet();
                var astray = own.Beside.FirstOrDefault(element =>
                    !across.Contains(element) && missing.Contains(ValueOf(element))
                );
                if (astray is not null)
                {
                    yield return Report(context, astray, track);
                }
            }
        }
    }

    /// <summary>What kind an element is and its value in SI units.</summary>
    private static (bool IsCapacitor, double Value) ValueOf(Element element) =>
        element is Capacitor capacitor ? (true, capacitor.Farads) : (false, ((Resistor)element).Ohms);

    /// <summary>The capacitors and resistors with both ends between signal and wiper of a track, and those with one end there.</summary>
    private static Bled BledBy(Circuit circuit, Track track)
    {
        var nets = circuit.Nets.OneNet;
        var sleeve = nets[circuit.Outputs[0].Sleeve];
        var own = track.Ends.Select(end => nets[end]).Where(net => net != sleeve).ToHashSet();
        var near = circuit
            .Elements.Where(element => element is Capacitor or Resistor)
            .Select(element => (element, On: element.Ends.Count(end => own.Contains(nets[end]))))
            .ToList();
        return new Bled(
            [.. near.Where(one => one.On == 2).Select(one => one.element)],
            [.. near.Where(one => one.On == 1).Select(one => one.element)]
        );
    }

    private Finding Report(StudyContext context, Element element, Track track)
    {
        var circuit = context.Circuit;
        var part = circuit.Parts[element.Part];
        var grounded = circuit.Nets.OneNet[track.Low] == context.Study.Network.Sleeve;
        var signal = grounded ? track.High : track.Low;
        var mend = Advice.Hung(context, element, signal, track.Wiper) is { } line
            ? $"hang it there: {line}"
            : $"see to the wires of '{circuit.Parts[track.Part].Name}' first";
        return Description.At(
            part.NameAt,
            $"'{part.Name}' does not lie across '{circuit.Parts[track.Part].Name}' as its twin across the other volume does",
            $"{mend}, or write: allow {Description.Id} at {part.Name} \"why\"",
            Subject.Part(part.Name),
            Subject.Part(circuit.Parts[track.Part].Name)
        );
    }

    private sealed record Bled(ImmutableArray<Element> Across, ImmutableArray<Element> Beside);
}
