using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Syntax.Nodes;

namespace WireText.Tests.Electrical.Forms;

/// <summary>Makes the form of a claim about coils.</summary>
internal static class ClaimReader
{
    public static FormNode Read(Circuit circuit, CoilsSyntax claim) =>
        claim switch
        {
            CoilSyntax coil => ReadCoil(circuit, coil),
            JoinedCoilsSyntax { Join: CoilJoin.Series } joined => FormNode.InSeries([
                .. joined.Coils.Select(part => Read(circuit, part)),
            ])!,
            JoinedCoilsSyntax joined => FormNode.InParallel([.. joined.Coils.Select(part => Read(circuit, part))])!,
            _ => throw new InvalidOperationException(claim.ToString()),
        };

    private static FormNode ReadCoil(Circuit circuit, CoilSyntax claim)
    {
        var node = claim.Group is { } group ? Read(circuit, group) : Named(circuit, claim.Coil!.FullName);
        if (claim.Through is { } through)
        {
            node = node with
            {
                Through = node.Through.Add(new PlainPart([circuit.FindPart(through.Text)!.Index], "", true)),
            };
        }

        return claim.IsReversed ? node.Reversed() : node;
    }

    private static FormNode Named(Circuit circuit, string name) =>
        circuit.FindPart(name) is { } part
            ? FormNode.InSeries([
                .. part
                    .Elements.Select(element => circuit.Elements[element])
                    .OfType<Coil>()
                    .Select(FormNode (coil) => new CoilForm(coil, 1)),
            ])!
            : new CoilForm(circuit.Elements.OfType<Coil>().Single(coil => coil.Name == name), 1);
}
