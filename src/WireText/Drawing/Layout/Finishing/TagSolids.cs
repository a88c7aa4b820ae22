using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>What a tag lies on.</summary>
internal enum TagGround
{
    Paper,

    /// <summary>A part on which its wire ends, clear of the lugs and words there.</summary>
    OwnPart,

    /// <summary>Something that it must not touch.</summary>
    Taken,
}

/// <summary>All that tags may not touch, besides wires and hops, found by place.</summary>
internal sealed class TagSolids
{
    /// <summary>How far a tag on a part keeps from the middle of its lugs, along and across, so that their names find room. Chosen by eye.</summary>
    private const double RoomForLugNames = 2.7;

    /// <summary>Half of a joint on a case as it is drawn.</summary>
    private const double CaseJointRadius = 1.15;

    private readonly BoxGrid grid = new();
    private readonly List<Solid> solids = [];

    private readonly record struct Solid(Kind Kind, int Part, Box Box);

    private enum Kind
    {
        Body,

        /// <summary>A part's own text; on paper its body is in the way before.</summary>
        Text,

        /// <summary>A lug as wires pass it.</summary>
        Lug,

        /// <summary>A lug with room for its name, for a tag on the lug's own part.</summary>
        RoomyLug,

        /// <summary>The end of a wire, for a tag on a part: on a case the joints lie where wires end, lug or not.</summary>
        Joint,

        Label,
    }

    public TagSolids(LabelledPlacement labelled, Point[][] paths)
    {
        var (wiring, poses) = (labelled.Placement.Wiring, labelled.Placement.Poses);
        for (var part = 0; part < poses.Length; part++)
        {
            foreach (var box in wiring.Parts[part].Body.SelectMany(own => Covering(poses[part].OnPage(own))))
            {
                Add(Kind.Body, part, box);
            }

            if (wiring.Parts[part].TextBox is { } text)
            {
                Add(Kind.Text, part, poses[part].OnPage(text));
            }

            foreach (var lug in wiring.Parts[part].Lugs)
            {
                var at = poses[part].OnPage(lug.At);
                Add(Kind.Lug, part, Box.Around(at, 2 * LayoutScale.JointRadius, 2 * LayoutScale.JointRadius));
                Add(Kind.RoomyLug, part, Box.Around(at, 2 * RoomForLugNames, 2 * RoomForLugNames));
            }

            if (labelled.Labels[part] is { } label)
            {
                Add(Kind.Label, part, label);
            }
        }

        foreach (var end in paths.Where(path => path.Length > 0).SelectMany(path => new[] { path[0], path[^1] }))
        {
            Add(Kind.Joint, -1, Box.Around(end, 2 * CaseJointRadius, 2 * CaseJointRadius));
        }
    }

    /// <param name="ownParts">The parts on which the tag's wire ends.</param>
    public TagGround GroundOf(Box tag, int[] ownParts)
    {
        var near = grid.NearForNow(tag);
        if (!IsTaken(near, tag))
        {
            return TagGround.Paper;
        }

        foreach (var part in ownParts)
        {
            if (!IsInTheWayOn(part, near, tag))
            {
                return TagGround.OwnPart;
            }
        }

        return TagGround.Taken;
    }

    private bool IsTaken(ReadOnlySpan<int> near, Box tag)
    {
        foreach (var number in near)
        {
            var solid = solids[number];
            if (solid.Kind is Kind.Body or Kind.Lug or Kind.Label && solid.Box.Overlaps(tag))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsInTheWayOn(int part, ReadOnlySpan<int> near, Box tag)
    {
        foreach (var number in near)
        {
            var solid = solids[number];
            if (IsInTheWayOn(part, solid) && solid.Box.Overlaps(tag))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsInTheWayOn(int part, Solid solid) =>
        solid.Kind switch
        {
            Kind.Body or Kind.Lug => solid.Part != part,
            Kind.Text or Kind.RoomyLug => solid.Part == part,
            _ => true,
        };

    private void Add(Kind kind, int part, Box box)
    {
        grid.Add(box);
        solids.Add(new Solid(kind, part, box));
    }

    /// <summary>Boxes that cover an outline: of a circle a few strips, so that its corners stay free.</summary>
    private static IEnumerable<Box> Covering(Outline outline)
    {
        const int Strips = 8;
        if (outline is not Outline.Circle { Centre: var centre, Radius: var radius })
        {
            return [outline.Bounds];
        }

        var height = 2 * radius / Strips;
        return Enumerable
            .Range(0, Strips)
            .Select(strip =>
            {
                var top = (strip * height) - radius;
                var nearest = Math.Max(0, Math.Max(top, -top - height));
                var half = Math.Sqrt((radius * radius) - (nearest * nearest));
                return new Box(centre.X - half, centre.Y + top, 2 * half, height);
            });
    }
}
