namespace WireText.Drawing.Layout.Routing;

/// <summary>Closes the nodes of a lattice that lie in bodies, on words and at the border.</summary>
internal sealed class BodyZones(LatticeDraft draft)
{
    /// <summary>More air around words on a body than a wire takes up, in millimetres.</summary>
    private const double BesideText = 0.1;

    /// <summary>Makes a body and what is too near to it the part's own zone, closed until something is opened.</summary>
    public void Claim(int part)
    {
        var (nodes, pose) = (draft.Nodes, draft.PoseOf(part));
        foreach (var own in draft.Wiring.Parts[part].Body)
        {
            var outline = pose.OnPage(own);
            draft.Frame.Visit(
                outline.Bounds.Grown(LayoutScale.BodyClearance),
                (node, at) =>
                {
                    var depth = outline.Depth(at);
                    if (depth > -LayoutScale.BodyClearance + 1e-6)
                    {
                        // A node in two bodies at once is closed to everything, whatever is opened later.
                        draft.StaysClosed[node] |= nodes[node].Zone != 0 && nodes[node].Zone != part + 1;
                        nodes[node].IsInside = depth > 0 || (nodes[node].Zone == part + 1 && nodes[node].IsInside);
                        nodes[node].Zone = part + 1;
                        nodes[node].Access = 0;
                    }
                }
            );
        }

        if (draft.Wiring.Parts[part].TextBox is { } text)
        {
            var kept = pose.OnPage(text).Grown(LayoutScale.WireRadius + BesideText);
            draft.Frame.Visit(kept, (node, _) => draft.StaysClosed[node] = true);
        }
    }

    public void CloseLabels()
    {
        foreach (var label in draft.Labelled.Labels)
        {
            if (label is { } box)
            {
                draft.Frame.Visit(
                    box.Grown(LayoutScale.WireRadius + LayoutScale.LabelClearance),
                    (node, _) => draft.Nodes[node].Access = 0
                );
            }
        }
    }

    /// <summary>Closes the outermost nodes, so that no search has to look whether there is a next one.</summary>
    public void CloseBorder()
    {
        var (nodes, frame) = (draft.Nodes, draft.Frame);
        for (var x = 0; x < frame.Width; x++)
        {
            nodes[x].Access = nodes[nodes.Length - 1 - x].Access = 0;
        }

        for (var y = 0; y < frame.Height; y++)
        {
            nodes[y * frame.Width].Access = nodes[(y * frame.Width) + frame.Width - 1].Access = 0;
        }
    }
}
