using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Checks.Grounding;

/// <summary>Coils that are live at no jack in any situation, and where their ground ends lead.</summary>
/// <remarks>Empty when the situations could not be listed, or when tip and sleeve are one net.</remarks>
internal sealed class SilentCoils
{
    private readonly StudyContext context;
    private readonly Network network;
    private readonly HashSet<int> sleeves;
    private readonly ImmutableArray<(Coil Coil, int End, HashSet<int> Reached)> coils;

    public SilentCoils(StudyContext context, Network network)
    {
        this.context = context;
        this.network = network;
        var reach = new Reach(network);
        sleeves = [.. context.Circuit.Outputs.Select(jack => NetOf(jack.Sleeve))];
        coils =
        [
            .. from coil in Silent()
            let end = GroundEnd(coil)
            select (coil, end, reach.From(NetOf(end), without: coil.Index)),
        ];
    }

    /// <summary>The pickups with a silent coil that ends on a net, or whose ground end leads there and not to the sleeve.</summary>
    public IReadOnlyList<Part> ReturningTo(int net) =>
        [
            .. coils
                .Where(one =>
                    one.Coil.Ends.Any(end => NetOf(end) == net)
                    || (one.Reached.Contains(net) && !one.Reached.Overlaps(sleeves))
                )
                .Select(one => context.Circuit.Parts[one.Coil.Part])
                .Distinct(),
        ];

    /// <summary>
    /// Silent coils whose ground end is soldered and reaches the sleeve over nothing; one a pickup, the nearest to ground.
    /// </summary>
    /// <param name="reported">Nets that are known to float: what leads to one of these is left out.</param>
    public IEnumerable<(Coil Coil, int End)> WithoutReturn(IEnumerable<int> reported)
    {
        var known = reported.ToHashSet();
        return from one in coils
            where !one.Reached.Overlaps(sleeves) && context.IsJointed(one.End) && !one.Reached.Overlaps(known)
            group one by one.Coil.Part into pickup
            let nearest = pickup.MinBy(one => one.Reached.Count)
            select (nearest.Coil, nearest.End);
    }

    private IEnumerable<Coil> Silent()
    {
        var trees = context.Study.Jacks.Select(jack => jack.Situations).ToList();
        if (trees.Exists(tree => !tree.IsComplete) || network.Tip == network.Sleeve)
        {
            return [];
        }

        var live = trees
            .SelectMany(tree => tree.Situations)
            .SelectMany(situation => situation.Live)
            .Select(branch => network.Branches[branch].Element)
            .ToHashSet();
        return context.Circuit.Elements.OfType<Coil>().Where(coil => !live.Contains(coil.Index));
    }

    /// <summary>The end of a coil that belongs to ground: one that is called so, else the start unless that is the hot one.</summary>
    private int GroundEnd(Coil coil) =>
        context.Sides.IsGroundLike(coil.Start) ? coil.Start
        : context.Sides.IsGroundLike(coil.Finish) || context.Sides.IsHotLike(coil.Start) ? coil.Finish
        : coil.Start;

    private int NetOf(int lug) => context.Circuit.Nets.OneNet[lug];
}
