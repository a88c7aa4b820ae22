using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>The nets that an edit must touch to change what is refuted.</summary>
internal static class MatteringNets
{
    /// <summary>
    /// For each net: whether it is live in the first state that fails, at the jack, at a coil that is claimed, or named by an
    /// open finding. What contacts and zero track sections join with such a net counts with it.
    /// </summary>
    public static bool[] Of(Network network, Refutation refuted, IEnumerable<Finding> open)
    {
        var state = refuted.Failing[0];
        var nodeOf = network.AtTheDials(state);
        var nodes = LiveNetwork
            .Of(network, state)
            .Branches.SelectMany(branch => new[] { branch.Source.From, branch.Source.To })
            .Concat(LugsNamed(network.Circuit, refuted, open).Select(lug => network.Circuit.Nets.OneNet[lug]))
            .Append(network.Tip)
            .Append(network.Sleeve)
            .Select(net => nodeOf[net])
            .ToHashSet();
        return [.. nodeOf.Select(nodes.Contains)];
    }

    private static IEnumerable<int> LugsNamed(Circuit circuit, Refutation refuted, IEnumerable<Finding> open) =>
        refuted
            .Expectation.Claims.OfType<CoilsClaim>()
            .SelectMany(claim => claim.Coils.All())
            .SelectMany(coil => circuit.Elements[coil].Ends)
            .Concat(open.SelectMany(finding => finding.Subjects).SelectMany(subject => LugsOf(circuit, subject)));

    private static IEnumerable<int> LugsOf(Circuit circuit, Subject subject) =>
        subject.Kind switch
        {
            SubjectKind.Lug when circuit.FindLug(subject.Name) is { } lug => [lug.Index],
            SubjectKind.Part when circuit.FindPart(subject.Name) is { } part => part.Lugs,
            _ => [],
        };
}
