using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds a wire with both ends on one lug.</summary>
public sealed class WireToItself : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "wire-to-itself",
            Title: "both ends of a wire are on one lug",
            Severity: Severity.Error,
            Group: FindingGroup.Connections,
            Why: """
            A wire from a lug to the same lug joins nothing. It is a slip of the pen: one of its ends belongs somewhere
            else, and what should be joined there is not.
            """,
            Bad: """
            pickup neck single-coil
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   [|out.sleeve to out.sleeve|] black
            wire   neck.ground to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            """,
            Mend: "Write the lug that the other end goes to, or take the line out."
        )
        {
            Silences =
            [
                new Silence("unconnected-lug", SilenceReach.SamePart),
                Silence.Everywhere("floating-ground"),
                Silence.Everywhere("hot-case"),
                Silence.Everywhere("no-supply"),
                .. Silence.AllThatIsRead(),
            ],
        };

    public IEnumerable<Finding> Find(CheckContext context) =>
        from wire in context.Circuit.Wires
        where wire.From == wire.To && wire.From >= 0
        let name = context.Circuit.NameOf(wire.From)
        select Description.At(
            wire.DeclaredAt,
            $"the wire goes from '{name}' to itself",
            $"write the lug that the other end goes to: wire {name} to …",
            context.Subject(wire.From)
        );
}
