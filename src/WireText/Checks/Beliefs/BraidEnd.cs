using WireText.Text;

namespace WireText.Checks.Beliefs;

/// <summary>Remarks on a braid that is grounded at one end.</summary>
public sealed class BraidEnd : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "braid-end",
            Title: "a braid is grounded at one end",
            Severity: Severity.Note,
            Group: FindingGroup.Beliefs,
            Why: """
            A braid keeps electric fields out when it is grounded anywhere: one end is enough, and which of the two makes no
            difference on a run of a hand's length. Grounded at both ends it screens as well and is a second ground wire.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            cable  vol.2 to out.tip white  [|braid vol.case to cut|]
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            wire   vol.2 to out.tip white
            """,
            Mend: "Nothing is to be done."
        )
        {
            OnlyWhenAsked = true,
        };

    public IEnumerable<Finding> Find(CheckContext context) =>
        from cable in context.Circuit.Cables
        where cable.Braid is not null
        let braid = context.Circuit.Wires[cable.Braid!.Value]
        let end = Math.Max(braid.From, braid.To)
        where braid.From < 0 != braid.To < 0
        select Description.At(
            braid.DeclaredAt,
            $"one end of a braid is enough: '{context.Circuit.NameOf(end)}' grounds all of it",
            "nothing is to be done",
            context.Subject(end)
        );
}
