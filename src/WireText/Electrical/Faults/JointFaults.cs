using WireText.Circuits;

namespace WireText.Electrical.Faults;

/// <summary>Joints that do not hold, and metal that does not touch metal.</summary>
internal static class JointFaults
{
    public static IEnumerable<Fault> Of(Instrument instrument) =>
        [.. Soldered(instrument, instrument.Right), .. Pressed(instrument, instrument.Right)];

    private static IEnumerable<Fault> Soldered(Instrument instrument, Circuit right) =>
        from joint in instrument.Joints
        let kind = right.Lugs[joint.Lug].IsMetal ? FaultKind.JointOnCase : FaultKind.Joint
        let words = $"{instrument.Runs[joint.Run].Words}: no joint at {right.NameOf(joint.Lug)}"
        select Fault.Of(kind, words, new FaultEdit.LeaveOut(joint.Join)) with
        {
            Joint = joint.Index,
        };

    private static IEnumerable<Fault> Pressed(Instrument instrument, Circuit right) =>
        from touch in instrument.Touches
        let pressed = right.Joins[touch]
        let words = $"{right.NameOf(pressed.From)} does not touch {right.NameOf(pressed.To)}"
        select Fault.Of(FaultKind.Touch, words, new FaultEdit.LeaveOut(touch)) with
        {
            Lugs = (pressed.From, pressed.To),
        };
}
