using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Roles;

/// <summary>
/// What lies across a volume's track to keep the treble as it is turned down: a capacitor or a resistor, or one behind the other.
/// </summary>
internal static class Bleeds
{
    /// <param name="state">With the dial somewhere between its ends.</param>
    /// <param name="tracks">The sections of the tracks that one dial turns.</param>
    public static IEnumerable<Branch> Of(Network network, State state, IReadOnlyCollection<Branch> tracks)
    {
        var nodeOf = network.AtTheDials(state);
        var own = tracks.SelectMany(track => new[] { nodeOf[track.From], nodeOf[track.To] }).ToHashSet();
        own.Remove(nodeOf[network.Sleeve]);
        var beside = network
            .Branches.Where(branch => own.Contains(nodeOf[branch.From]) || own.Contains(nodeOf[branch.To]))
            .Where(branch => network.Circuit.Elements[branch.Element] is Capacitor or Resistor)
            .ToList();
        var ends = network
            .Branches.SelectMany(branch => new[] { nodeOf[branch.From], nodeOf[branch.To] })
            .CountBy(node => node)
            .ToDictionary();
        return beside.Where(branch => IsAcross(branch) || beside.Exists(next => AreAcross(branch, next)));

        bool IsAcross(Branch branch) => own.Contains(nodeOf[branch.From]) && own.Contains(nodeOf[branch.To]);

        // Two in series: they meet where nothing else does, and their other ends are the track's.
        bool AreAcross(Branch one, Branch next) =>
            one != next
            && new[] { nodeOf[one.From], nodeOf[one.To] }.Intersect([nodeOf[next.From], nodeOf[next.To]]).ToList()
                is [var between]
            && ends[between] == 2
            && own.Contains(Other(one, between))
            && own.Contains(Other(next, between));

        int Other(Branch branch, int node) => nodeOf[branch.From] == node ? nodeOf[branch.To] : nodeOf[branch.From];
    }
}
