using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Text;

namespace WireText.Checks.Values;

/// <summary>Finds treble bleeds that lie across their volume in some positions of a switch only.</summary>
public sealed class BleedBehindContact : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "bleed-behind-contact",
            Title: "a treble bleed ends beyond a switch",
            Severity: Severity.Warning,
            Group: FindingGroup.Values,
            Why: """
            A treble bleed lies across its own volume, from the signal's end of the track to the wiper. With one lead on the
            other side of a selector it does so where that throw is chosen alone; elsewhere it leads the treble of one pickup
            to another. A bleed that a switch of its own puts in has a throw for itself, and is not meant here.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            pot    vol    250k audio
            cap    [|bright|] 1n from vol.3 to sel.A0
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   vol.2 to sel.A1 yellow
            wire   bridge.hot to sel.A2 white
            wire   sel.A0 to out.tip red
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            pot    vol    250k audio
            cap    bright 1n from vol.3 to vol.2
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   vol.2 to sel.A1 yellow
            wire   bridge.hot to sel.A2 white
            wire   sel.A0 to out.tip red
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            """,
            Mend: "Hang it from the wiper to the end of the track that carries the signal, on the volume itself."
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var circuit = context.Circuit;
        var contacts = NetJoins.ByContacts(context.Study.Network);
        return from capacitor in circuit.Elements.OfType<Capacitor>()
            where BleedValues.Holds(capacitor.Farads)
            from lead in capacitor.Ends
            let other = capacitor.A == lead ? capacitor.B : capacitor.A
            from track in circuit.Elements.OfType<Track>()
            let belongs = LugForTheOther(context.Study.Network, track, lead, other)
            where belongs >= 0
            where contacts.Find(circuit.Nets.OneNet[belongs]) == contacts.Find(circuit.Nets.OneNet[other])
            where IsAmongOthers(circuit, capacitor, other)
            select Report(context, capacitor, track, other, belongs);
    }

    /// <summary>The lug that a bleed's other lead belongs on, when one is on a volume and the other on none of its lugs; else -1.</summary>
    private static int LugForTheOther(Network network, Track track, int lead, int other)
    {
        var nets = network.Circuit.Nets.OneNet;
        var isGrounded = (Low: nets[track.Low] == network.Sleeve, High: nets[track.High] == network.Sleeve);
        if (isGrounded.Low == isGrounded.High || track.Ends.Any(end => nets[end] == nets[other]))
        {
            return -1;
        }

        var signal = isGrounded.Low ? track.High : track.Low;
        return nets[lead] == nets[signal] ? track.Wiper
            : nets[lead] == nets[track.Wiper] ? signal
            : -1;
    }

    /// <summary>True where a lead shares its net with more than one other part: a switched bleed has a throw alone.</summary>
    private static bool IsAmongOthers(Circuit circuit, Capacitor capacitor, int lead) =>
        circuit
            .Nets.Members[circuit.Nets.OneNet[lead]]
            .Select(lug => circuit.Lugs[lug].Part)
            .Where(part => part != capacitor.Part)
            .Distinct()
            .Count() > 1;

    private Finding Report(StudyContext context, Capacitor capacitor, Track track, int lead, int belongs)
    {
        var circuit = context.Circuit;
        var part = circuit.Parts[capacitor.Part];
        var on = PartLines.LugUnder(context, capacitor.A == lead ? capacitor.B : capacitor.A);
        var (from, to) = capacitor.A == lead ? (belongs, on) : (on, belongs);
        return Description.At(
            part.NameAt,
            $"'{part.Name}' ends at '{circuit.NameOf(PartLines.LugUnder(context, lead))}', beyond a switch: as a bleed it belongs on '{circuit.NameOf(belongs)}'",
            Advice.Hung(context, capacitor, from, to) is { } line
                ? $"hang it there: {line}"
                : $"see to the wires of '{circuit.Parts[track.Part].Name}' first",
            Subject.Part(part.Name),
            Subject.Part(circuit.Parts[track.Part].Name)
        );
    }
}
