using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Checks.Grounding;

/// <summary>Coils that are live in no situation, and where their ground ends lead.</summary>
/// <remarks>Empty when the situations could not be listed, or when tip and sleeve are one net.</remarks>
internal sealed class SilentCoils
{
    private readonly StudyContext context;
    private readonly Network network;
    private readonly ImmutableArray<(Coil Coil, int End, HashSet<int> Reached)> coils;

    public SilentCoils(StudyContext context, Network network)
    {
        this.context = context;
        this.network = network;
        var reach = new Reach(network);
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
                    || (one.Reached.Contains(net) && !one.Reached.Contains(network.Sleeve))
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
            where !one.Reached.Contains(network.Sleeve) && context.IsJointed(one.End) && !one.Reached.Overlaps(known)
            group one by one.Coil.Part into pickup
            let nearest = pickup.MinBy(one => one.Reached.Count)
            select (nearest.Coil, nearest.End);
    }

    private IEnumerable<Coil> Silent()
    {
        if (context.Study.Situations is not { IsComplete: true } tree || network.Tip == network.Sleeve)
        {
            return [];
        }

        var live = tree
            .Situations.SelectMany(situation => situation.Live)
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
