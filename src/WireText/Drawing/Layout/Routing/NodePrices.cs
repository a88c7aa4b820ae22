using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>Sets what a step onto each node of a lattice costs, whatever wire it is.</summary>
internal sealed class NodePrices
{
    private readonly LatticeDraft draft;
    private readonly Box extent;
    private readonly Outline?[] lines;

    /// <param name="extent">See <see cref="LabelledPlacement.Extent"/>.</param>
    public NodePrices(LatticeDraft draft, Box extent)
    {
        (this.draft, this.extent) = (draft, extent);
        lines = [.. draft.Wiring.Parts.Select((part, i) => LineOf(part, draft.PoseOf(i)))];
    }

    public void Set()
    {
        SetByPlace();
        foreach (var home in draft.NameHomes.SelectMany(homes => homes).OfType<Box>())
        {
            var kept = home.Grown(LayoutScale.WireRadius + Tokens.LabelTouch);
            draft.Frame.Visit(kept, (node, _) => draft.Nodes[node].StepCost += RouteCosts.OnName);
        }

        for (var part = 0; part < draft.Wiring.Parts.Length; part++)
        {
            SetTabs(draft.Wiring.Parts[part], draft.PoseOf(part));
        }
    }

    /// <summary>A tab that reaches out of a body is that lug's own: no wire should run across it.</summary>
    private void SetTabs(LayoutPart part, Pose pose)
    {
        if (part.Surfaces.IsEmpty || part.Body.IsEmpty)
        {
            return;
        }

        var body = pose.OnPage(part.Body[0]).Bounds;
        foreach (
            var lug in part.Lugs.Select(lug => pose.OnPage(lug.At)).Where(lug => !body.Contains(Box.Spanning(lug, lug)))
        )
        {
            var tab = Box.Spanning(body.NearestTo(lug), lug).Grown(LayoutScale.WireRadius + (Tokens.TabWidth / 2));
            draft.Frame.Visit(tab, (node, _) => draft.Nodes[node].StepCost += RouteCosts.OnName);
        }
    }

    private void SetByPlace()
    {
        for (var y = 1; y < draft.Frame.Height - 1; y++)
        {
            for (var x = 1; x < draft.Frame.Width - 1; x++)
            {
                draft.Nodes[(y * draft.Frame.Width) + x].StepCost = CostAt(x, y);
            }
        }
    }

    /// <summary>The line of a body that wires should not run along, on the page; null where there are surfaces, whose joints lie there.</summary>
    private static Outline? LineOf(LayoutPart part, Pose pose) =>
        part.Surfaces.IsEmpty && !part.Body.IsEmpty ? pose.OnPage(part.Body[0]) : null;

    private int CostAt(int x, int y)
    {
        var (nodes, width) = (draft.Nodes, draft.Frame.Width);
        var node = (y * width) + x;
        var cost = RouteCosts.Step;
        if (nodes[node].Zone != 0)
        {
            var isOnLine = IsOnLine(nodes[node].Zone - 1, draft.Frame.OnPage(x, y));
            return cost + RouteCosts.InsidePart + (isOnLine ? RouteCosts.OnOutline : 0);
        }

        if ((nodes[node - 1].Zone | nodes[node + 1].Zone | nodes[node - width].Zone | nodes[node + width].Zone) != 0)
        {
            cost += RouteCosts.NearBody;
        }

        return extent.Contains(draft.Frame.OnPage(x, y)) ? cost : cost + RouteCosts.OutsideParts;
    }

    private bool IsOnLine(int part, Point at) =>
        lines[part] is { } line && Math.Abs(line.Depth(at)) <= LayoutScale.Pitch / 2;
}
