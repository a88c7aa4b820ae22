using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Solving;
using WireText.Quantities;

namespace WireText.Electrical.Forms;

/// <summary>Writes what lies beside the coils as a person would: values, tracks left out.</summary>
internal sealed class PlainTexts(Circuit circuit, LiveNetwork live)
{
    public PlainPart Describe(JoinTree tree, bool isNamed) =>
        new([.. tree.Leaves().Select(leaf => ElementOf(leaf).Part).Distinct().Order()], TextOf(tree) ?? "", isNamed);

    public bool HasTrack(JoinTree tree) => tree.Leaves().Any(leaf => ElementOf(leaf) is Track);

    public bool HasCapacitor(JoinTree tree) => tree.Leaves().Any(leaf => ElementOf(leaf) is Capacitor);

    /// <summary>True when no direct current can pass.</summary>
    public bool BlocksDirectCurrent(JoinTree tree) =>
        tree switch
        {
            JoinTree.Leaf leaf => !live.Branches[leaf.Place].Inside.ConductsDirectCurrent,
            JoinTree.Series series => series.Parts.Any(BlocksDirectCurrent),
            JoinTree.Parallel parallel => parallel.Parts.All(BlocksDirectCurrent),
            _ => false,
        };

    private string? TextOf(JoinTree tree) =>
        tree switch
        {
            JoinTree.Leaf leaf => ElementOf(leaf) switch
            {
                Track => null,
                { Doubt: not null } unknown => unknown.Name,
                Resistor resistor => ValueText.Label(resistor.Ohms, Unit.Ohm),
                Capacitor capacitor => ValueText.Label(capacitor.Farads, Unit.Farad),
                Inductor inductor => ValueText.Label(inductor.Henries, Unit.Henry),
                var other => other.Name,
            },
            JoinTree.Series series => Joined(series.Parts, " + "),
            JoinTree.Parallel parallel => Joined(parallel.Parts, " ∥ "),
            _ => null,
        };

    private string? Joined(ImmutableArray<JoinTree> parts, string sign)
    {
        var texts = parts.OrderBy(FirstElement).Select(TextOf).OfType<string>().ToList();
        return texts.Count switch
        {
            0 => null,
            1 => texts[0],
            _ => string.Join(
                sign,
                texts.Select(text => text.Contains(' ', StringComparison.Ordinal) ? $"({text})" : text)
            ),
        };
    }

    private int FirstElement(JoinTree tree) => tree.Leaves().Min(leaf => ElementOf(leaf).Index);

    private Element ElementOf(JoinTree.Leaf leaf) => circuit.Elements[live.Branches[leaf.Place].Source.Element];
}
