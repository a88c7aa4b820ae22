using WireText.Geometry;

namespace WireText.Drawing.Layout.Placement;

/// <summary>
/// Two-lead parts that join the same two lugs, as the capacitor and resistor of a treble bleed do. Side by side the leads of one
/// would have to cross those of the other; they stand one behind the other, straight out of the lugs.
/// </summary>
internal sealed class ParallelParts
{
    /// <summary>From the middle of one to the middle of the next, in millimetres: a body, its name and two leads that pass.</summary>
    private const double Step = 16;

    private readonly Wiring wiring;
    private readonly List<int>?[] stackOf;
    private readonly List<(int Lug, List<int> Parts)> stacks = [];

    public ParallelParts(Wiring wiring)
    {
        this.wiring = wiring;
        stackOf = new List<int>?[wiring.Parts.Length];
        var ends = EndsOfSmallParts();
        foreach (
            var group in Enumerable
                .Range(0, wiring.Parts.Length)
                .Where(part => ends[part] is { Count: 2 })
                .GroupBy(part => (Math.Min(ends[part]![0], ends[part]![1]), Math.Max(ends[part]![0], ends[part]![1])))
                .Where(group => group.Count() > 1)
        )
        {
            var lug = wiring.Terminals[group.Key.Item1].IsSurface ? group.Key.Item2 : group.Key.Item1;
            if (!wiring.Terminals[lug].IsSurface && !LugOf(lug).Exits.IsDefaultOrEmpty)
            {
                List<int> stack = [.. group.OrderBy(part => wiring.Parts[part].Order).ThenBy(part => part)];
                stack.ForEach(part => stackOf[part] = stack);
                stacks.Add((lug, stack));
            }
        }
    }

    /// <summary>The place behind the parts that join the same lugs, and the turn of the last of them; null when there is none, or none has a place yet.</summary>
    public Pose? Behind(int part, Pose?[] poses)
    {
        if (
            stackOf[part] is not { } stack
            || stack.FindLast(other => poses[other] is not null) is var last && poses[last] is not { } before
        )
        {
            return null;
        }

        var lug = stacks.First(known => known.Parts == stack).Lug;
        if (poses[wiring.Terminals[lug].Part] is not { } host)
        {
            return null;
        }

        return before with
        {
            At = before.At + host.OnPage(LugOf(lug).Exits[0]).Towards(Step),
        };
    }

    /// <summary>How much more room a part needs on one side of the page for such stacks, in millimetres.</summary>
    public double DepthAt(int host, int turn, Side side) =>
        stacks
            .Where(stack => wiring.Terminals[stack.Lug].Part == host && LugOf(stack.Lug).Exits[0].Turned(turn) == side)
            .Select(stack => (stack.Parts.Count - 1) * Step)
            .DefaultIfEmpty(0)
            .Max();

    private LayoutLug LugOf(int terminal) =>
        wiring.Parts[wiring.Terminals[terminal].Part].Lugs[wiring.Terminals[terminal].Index];

    /// <summary>The terminals of other parts that each small part without a given place is joined to; null for all other parts.</summary>
    private List<int>?[] EndsOfSmallParts()
    {
        var ends = new List<int>?[wiring.Parts.Length];
        foreach (var connection in wiring.Connections.Where(connection => connection.CanRoute))
        {
            Add(connection.From, connection.To);
            Add(connection.To, connection.From);
        }

        return ends;

        void Add(int own, int other)
        {
            var part = wiring.Terminals[own].Part;
            if (wiring.Parts[part] is { Zone: LayoutZone.Small, GivenAt: null } && wiring.Terminals[other].Part != part)
            {
                (ends[part] ??= []).Add(other);
            }
        }
    }
}
