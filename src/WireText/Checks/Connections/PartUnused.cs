using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds a part that nothing is soldered to.</summary>
public sealed class PartUnused : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "part-unused",
            Title: "nothing is soldered to a part",
            Severity: Severity.Warning,
            Group: FindingGroup.Connections,
            Why: """
            A part that no wire reaches is on the parts list and does nothing. Its wires are still to come, or it is left
            over.
            """,
            Bad: """
            pickup neck single-coil
            pot    [|tone|] 250k audio
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            """,
            Mend: "Wire the part, or take its line out."
        )
        {
            Silences = [Silence.OthersOfThePart()],
        };

    public IEnumerable<Finding> Find(CheckContext context) =>
        from part in context.Circuit.Parts
        where IsMeantToBeWired(context.Circuit, part) && !part.Lugs.Any(context.IsJointed)
        select Description.At(
            part.NameAt,
            $"nothing is soldered to '{part.Name}'",
            $"wire '{part.Name}', or take its line out",
            Subject.Part(part.Name)
        );

    /// <summary>Bare metal is for the grounding checks, a splice is a joint, and a jack without wires is an error of its own.</summary>
    private static bool IsMeantToBeWired(Circuit circuit, Part part) =>
        !circuit.Outputs.Any(output => output.Part == part.Index)
        && part.Lugs.Any(lug => !circuit.Lugs[lug].IsMetal)
        && !JointRules.IsSplice(part);
}
