using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Text;

namespace WireText.Checks.Intent;

/// <summary>Finds claims that no circuit can fulfil together.</summary>
public sealed class ExpectConflict : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "expect-conflict",
            Title: "two claims about one state exclude each other",
            Severity: Severity.Error,
            Group: FindingGroup.Sound,
            Why: """
            No wiring makes both true, so one of the two lines is wrong, whatever the wires do. Until it is clear what is
            meant there, neither is held against the circuit.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to out.tip red
            wire   neck.ground to out.sleeve black
            wire   bridge.ground to out.sleeve black
            expect sel=1: neck
            expect sel=1: [|bridge|]
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to out.tip red
            wire   neck.ground to out.sleeve black
            wire   bridge.ground to out.sleeve black
            expect sel=1: neck
            expect sel=2: bridge
            """,
            Mend: """
            Keep the claim that is meant and take the other out, or name another position in one of the lines. A line
            with 'any' speaks of each position, also of one that another line names.
            """
        );

    public IEnumerable<Finding> Find(CheckContext context) =>
        context.Conflicts.Select(conflict =>
            Description.At(
                conflict.LaterClaim.DeclaredAt,
                $"'{conflict.LaterClaim.Text}' and '{conflict.EarlierClaim.Text}' are expected {WordsOf(context.Circuit, conflict)}: one excludes the other",
                "keep one of the two, or name another position"
            ) with
            {
                Related = [new RelatedPlace(conflict.EarlierClaim.DeclaredAt, "the other claim")],
            }
        );

    /// <summary>A state that both lines mean: what either of them names.</summary>
    private static string WordsOf(Circuit circuit, ExpectationConflict conflict)
    {
        var (a, b) = (conflict.Earlier.State, conflict.Later.State);
        var controls =
            from control in circuit.Controls
            where a.Names(control.Name) || b.Names(control.Name)
            let position = a[control.Index] ?? b[control.Index]
            where position is not null
            select StateText.Of(control, position.Value);
        var dials = a.Named.Where(named =>
            circuit.Dials.Any(dial => named.StartsWith(dial.Name + "=", StringComparison.OrdinalIgnoreCase))
        );
        var words = controls.Concat(dials).ToList();
        return words.Count > 0 ? $"at {string.Join(' ', words)}"
            : a.Named.IsEmpty && b.Named.IsEmpty ? "at rest"
            : "at once";
    }
}
