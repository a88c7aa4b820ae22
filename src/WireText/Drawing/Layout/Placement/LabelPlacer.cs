using WireText.Geometry;

namespace WireText.Drawing.Layout.Placement;

/// <summary>
/// Reserves a box beside each part for its outside label, before any wire has a path: on a side without lugs if there is one,
/// off the ways by which wires leave lugs, touching no body, no lug and no other label.
/// </summary>
internal static class LabelPlacer
{
    /// <summary>Air between a body and its label, in millimetres. Chosen by eye.</summary>
    private const double Gap = 0.8;

    /// <summary>The same of a small part, whose label must be seen to be its own between parts close together.</summary>
    private const double SmallGap = 0.4;

    /// <summary>A small part's label is nearer to it than to any other part by this, where such a place is found; in millimetres.</summary>
    private const double Nearer = 1.2;

    /// <summary>Free places that are looked at for one that is nearer to no other part.</summary>
    private const int MostFree = 200;

    /// <summary>How many times farther out a place is looked for, half a lane each time.</summary>
    private const int MostRings = 40;

    private const int CloseRings = 8;

    /// <summary>How far a lug's ways out are kept free of labels, in millimetres.</summary>
    private const double WayOut = 3 * LayoutScale.Pitch;

    public static LabelledPlacement Place(PartPlacement placement)
    {
        var wiring = placement.Wiring;
        var taken = Obstacles(placement);
        var labels = new Box?[wiring.Parts.Length];
        foreach (var part in InOrder(placement, taken))
        {
            if (wiring.Parts[part].OutsideLabel is { } size)
            {
                var box = FirstFree(placement, part, size, taken);
                labels[part] = box;
                taken.Add(box.Grown(LayoutScale.LabelClearance));
            }
        }

        return new LabelledPlacement(placement, labels);
    }

    /// <summary>Big parts first; then of the small ones that with the fewest places of its own close by, so that no other takes its only one.</summary>
    private static IEnumerable<int> InOrder(PartPlacement placement, List<Box> taken)
    {
        var parts = placement.Wiring.Parts;
        return Enumerable
            .Range(0, parts.Length)
            .OrderBy(part =>
                parts[part] is { Zone: LayoutZone.Small, OutsideLabel: { } size } ? CloseBy(part, size) : -1
            )
            .ThenBy(part => part);

        int CloseBy(int part, Size size)
        {
            var others = BodiesBeside(placement, part);
            return Candidates(BodyBox(placement, part), size, SmallGap, CloseRings)
                .Count(box => IsOwn(placement, part, box, others) && !taken.Exists(other => other.Overlaps(box)));
        }
    }

    private static List<Box> Obstacles(PartPlacement placement)
    {
        var taken = new List<Box>();
        for (var part = 0; part < placement.Poses.Length; part++)
        {
            var pose = placement.Poses[part];
            foreach (var outline in placement.Wiring.Parts[part].Body)
            {
                taken.Add(pose.OnPage(outline).Bounds.Grown(LayoutScale.LabelClearance));
            }

            foreach (var lug in placement.Wiring.Parts[part].Lugs)
            {
                var at = pose.OnPage(lug.At);
                taken.Add(Box.Around(at, 2 * LayoutScale.Pitch, 2 * LayoutScale.Pitch));
                foreach (var exit in lug.Exits)
                {
                    taken.Add(WayOutOf(at, pose.OnPage(exit)));
                }
            }
        }

        return taken;
    }

    private static Box WayOutOf(Point at, Side side)
    {
        var end = side switch
        {
            Side.North => new Point(at.X, at.Y - WayOut),
            Side.East => new Point(at.X + WayOut, at.Y),
            Side.South => new Point(at.X, at.Y + WayOut),
            _ => new Point(at.X - WayOut, at.Y),
        };
        return Box.Spanning(at, end).Grown(LayoutScale.Pitch / 2);
    }

    private static Box FirstFree(PartPlacement placement, int part, Size size, List<Box> taken)
    {
        var body = BodyBox(placement, part);
        var isSmall = placement.Wiring.Parts[part].Zone == LayoutZone.Small;
        var free = Candidates(body, size, isSmall ? SmallGap : Gap)
            .Where(box => !taken.Exists(other => other.Overlaps(box)))
            .Take(MostFree);
        var others = isSmall ? BodiesBeside(placement, part) : [];
        Box? first = null;
        foreach (var box in free)
        {
            first ??= box;
            if (IsOwn(placement, part, box, others))
            {
                return box;
            }
        }

        return first ?? (size.Width <= 0 ? default : BelowAll(size, taken));
    }

    private static Box[] BodiesBeside(PartPlacement placement, int part) =>
        [
            .. Enumerable
                .Range(0, placement.Poses.Length)
                .Where(other => other != part)
                .Select(other => BodyBox(placement, other)),
        ];

    /// <summary>True for a place that is nearer to its part than to any of the others.</summary>
    private static bool IsOwn(PartPlacement placement, int part, Box box, Box[] others)
    {
        var own = Box.Distance(box, BodyBox(placement, part));
        return Array.TrueForAll(others, other => Box.Distance(box, other) >= own + Nearer);
    }

    private static Box BelowAll(Size size, List<Box> taken) =>
        new(taken.Min(box => box.X), taken.Max(box => box.Bottom) + Gap, size.Width, size.Height);

    private static Box BodyBox(PartPlacement placement, int part)
    {
        var (own, pose) = (placement.Wiring.Parts[part], placement.Poses[part]);
        return own.Body.Length == 0
            ? PartBounds.OnPage(own, pose)
            : own.Body.Select(outline => pose.OnPage(outline).Bounds).Aggregate(Box.Union);
    }

    /// <summary>Places around the body, nearest first; at each distance above, right, left, below, then shifted along the side.</summary>
    private static IEnumerable<Box> Candidates(Box body, Size size, double gap, int rings = MostRings)
    {
        for (var ring = 0; ring < rings; ring++)
        {
            var away = gap + (ring * LayoutScale.Pitch / 2);
            for (var shift = 0; shift <= ring + 2; shift++)
            {
                foreach (
                    var along in shift == 0 ? [0.0] : new[] { shift * LayoutScale.Pitch, -shift * LayoutScale.Pitch }
                )
                {
                    var x = body.Centre.X - (size.Width / 2) + along;
                    var y = body.Centre.Y - (size.Height / 2) + along;
                    yield return new Box(x, body.Y - away - size.Height, size.Width, size.Height);
                    yield return new Box(body.Right + away, y, size.Width, size.Height);
                    yield return new Box(body.X - away - size.Width, y, size.Width, size.Height);
                    yield return new Box(x, body.Bottom + away, size.Width, size.Height);
                }
            }
        }
    }
}
