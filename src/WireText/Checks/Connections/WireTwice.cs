using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds two plain wires between the same two lugs.</summary>
public sealed class WireTwice : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "wire-twice",
            Title: "two wires run between the same lugs",
            Severity: Severity.Warning,
            Group: FindingGroup.Connections,
            Why: """
            A second wire between the same two lugs changes nothing in the circuit. Mostly one of the two was meant to go
            elsewhere, or a line was copied and not changed. A braid beside its own wire is no second wire.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            wire   [|out.sleeve to vol.case|] black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            cable  vol.2 to out.tip white  braid vol.case to out.sleeve
            """,
            Mend: "Take one of the two out, or write the lug that it was meant for."
        )
        {
            Silences =
            [
                new Silence("crowded-lug", SilenceReach.SamePart),
                new Silence("loop", SilenceReach.SamePart),
                .. Silence.AllThatIsRead(),
            ],
        };

    public IEnumerable<Finding> Find(CheckContext context)
    {
        var first = new Dictionary<NetPair, Wire>();
        foreach (var wire in context.Circuit.Wires)
        {
            if (
                wire.Kind != WireKind.Wire
                || wire.From == wire.To
                || first.TryAdd(NetPair.Of(wire.From, wire.To), wire)
            )
            {
                continue;
            }

            var earlier = first[NetPair.Of(wire.From, wire.To)];
            yield return Description.At(
                wire.DeclaredAt,
                $"a wire from {WireLines.Ends(context.Circuit, wire)} is there already",
                $"take out one: {WireLines.Line(context.Circuit, wire)}",
                context.Subject(wire.From),
                context.Subject(wire.To)
            ) with
            {
                Related = [new RelatedPlace(earlier.DeclaredAt, "the first one")],
            };
        }
    }
}
