using WireText.Geometry;

namespace WireText.Drawing.Layout;

/// <summary>A placement with a box for the outside label of each part that has one. No two boxes, bodies or lugs touch.</summary>
/// <param name="Labels">By the index of the part; null when it has no outside label.</param>
internal sealed record LabelledPlacement(PartPlacement Placement, Box?[] Labels)
{
    /// <summary>The box around all bodies, lugs and part labels, in millimetres.</summary>
    public Box Extent()
    {
        var (wiring, poses) = (Placement.Wiring, Placement.Poses);
        var boxes = new List<Box>();
        for (var part = 0; part < wiring.Parts.Length; part++)
        {
            var pose = poses[part];
            boxes.AddRange(wiring.Parts[part].Body.Select(outline => pose.OnPage(outline).Bounds));
            boxes.AddRange(
                wiring
                    .Parts[part]
                    .Lugs.Select(lug =>
                        Box.Around(pose.OnPage(lug.At), 2 * LayoutScale.JointRadius, 2 * LayoutScale.JointRadius)
                    )
            );
            boxes.AddRange(wiring.Parts[part].Surfaces.Select(surface => pose.OnPage(surface.Shape).Bounds));
            if (Labels[part] is { } label)
            {
                boxes.Add(label);
            }
        }

        return boxes.Count == 0 ? default : boxes.Aggregate(Box.Union);
    }
}
