using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>Lays the lattice over a labelled placement: which node belongs to what, and what a step onto it costs.</summary>
internal sealed class LatticeBuilder
{
    private const double Pitch = LayoutScale.Pitch;

    /// <summary>How far from the rim of a surface a joint may sit, in millimetres.</summary>
    private const double RimDepth = 6.6;

    /// <summary>A larger lattice than this is not built; see <see cref="IsTooLarge"/>.</summary>
    private const long MostNodes = 4_000_000;

    private readonly LabelledPlacement labelled;
    private readonly Wiring wiring;
    private readonly Box extent;
    private readonly int left;
    private readonly int top;
    private readonly int width;
    private readonly int height;
    private readonly LatticeNode[] nodes;
    private readonly bool[] isText;
    private readonly Outline?[] lines;
    private readonly int[] host;
    private readonly bool[] isInner;
    private readonly bool opensAllSides;

    private LatticeBuilder(LabelledPlacement labelled, bool opensAllSides)
    {
        this.opensAllSides = opensAllSides;
        this.labelled = labelled;
        wiring = labelled.Placement.Wiring;
        extent = ExtentOf(labelled);
        (left, top, width, height) = FrameOf(extent, MarginFor(wiring));
        nodes = new LatticeNode[width * height];
        isText = new bool[width * height];
        lines = [.. wiring.Parts.Select((part, i) => LineOf(part, labelled.Placement.Poses[i]))];
        host = new int[wiring.Terminals.Length];
        Array.Fill(host, -1);
        isInner = new bool[wiring.Terminals.Length];
    }

    /// <summary>True when parts were put so far apart that a lattice over them would fill the memory.</summary>
    public static bool IsTooLarge(LabelledPlacement labelled)
    {
        var extent = ExtentOf(labelled);
        return !(extent.Width / Pitch < 100_000)
            || !(extent.Height / Pitch < 100_000)
            || ((extent.Width / Pitch) + 40) * ((extent.Height / Pitch) + 40) > MostNodes;
    }

    /// <param name="opensAllSides">True to let wires of inner lugs out on every side, not only by the lugs' own exits.</param>
    public static Lattice Build(LabelledPlacement labelled, bool opensAllSides = false) =>
        new LatticeBuilder(labelled, opensAllSides).Build();

    /// <summary>The box around all bodies, lugs and part labels, in millimetres.</summary>
    public static Box ExtentOf(LabelledPlacement labelled)
    {
        var (wiring, poses) = (labelled.Placement.Wiring, labelled.Placement.Poses);
        Box? extent = null;
        void Add(Box box) => extent = extent is { } known ? Box.Union(known, box) : box;
        for (var part = 0; part < wiring.Parts.Length; part++)
        {
            foreach (var outline in wiring.Parts[part].Body)
            {
                Add(poses[part].OnPage(outline).Bounds);
            }

            foreach (var lug in wiring.Parts[part].Lugs)
            {
                Add(Box.Around(poses[part].OnPage(lug.At), 2 * LayoutScale.JointRadius, 2 * LayoutScale.JointRadius));
            }

            foreach (var surface in wiring.Parts[part].Surfaces)
            {
                Add(poses[part].OnPage(surface.Shape).Bounds);
            }

            if (labelled.Labels[part] is { } label)
            {
                Add(label);
            }
        }

        return extent ?? default;
    }

    private static int MarginFor(Wiring wiring) => 8 + Math.Min(32, wiring.Connections.Length / 8);

    private static (int Left, int Top, int Width, int Height) FrameOf(Box extent, int margin)
    {
        var left = (int)Math.Floor(extent.X / Pitch) - margin;
        var top = (int)Math.Floor(extent.Y / Pitch) - margin;
        var right = (int)Math.Ceiling(extent.Right / Pitch) + margin;
        var bottom = (int)Math.Ceiling(extent.Bottom / Pitch) + margin;
        return (left, top, right - left + 1, bottom - top + 1);
    }

    private Lattice Build()
    {
        var lugNodes = LugNodes.Assign(labelled.Placement);
        StartFree();
        for (var part = 0; part < wiring.Parts.Length; part++)
        {
            ClaimBodies(part);
        }

        for (var part = 0; part < wiring.Parts.Length; part++)
        {
            OpenRims(part);
            OpenCorridors(part, lugNodes);
        }

        BlockLabels();
        CloseBorder();
        SetStepCosts();
        var nodes = PlaceLugs(lugNodes);
        SetNearLugs(nodes);
        ClaimEdges(nodes);
        var landings = new int[wiring.Terminals.Length][];
        var boxes = new LatticeBox[wiring.Terminals.Length];
        for (var t = 0; t < landings.Length; t++)
        {
            landings[t] = wiring.Terminals[t].IsSurface ? LandingsOf(t) : [];
            boxes[t] = landings[t].Length > 0 ? BoxAround(landings[t]) : BoxAround([Math.Max(0, nodes[t])]);
        }

        return new Lattice(
            labelled,
            left,
            top,
            width,
            height,
            this.nodes,
            nodes,
            landings,
            boxes,
            ExitMasks(),
            host,
            isInner,
            [.. Enumerable.Range(0, wiring.Terminals.Length).Select(IsInside)]
        );
    }

    private bool IsInside(int terminal)
    {
        var (part, index, isSurface) = wiring.Terminals[terminal];
        return isSurface || wiring.Parts[part].Body.Any(body => body.Depth(wiring.Parts[part].Lugs[index].At) > 0);
    }

    private void StartFree()
    {
        for (var (node, y) = (0, 0); y < height; y++)
        {
            for (var x = 0; x < width; x++, node++)
            {
                nodes[node] = new LatticeNode
                {
                    X = x,
                    Y = y,
                    Access = ZoneAccess.Free,
                };
            }
        }
    }

    private Point OnPage(int x, int y) => new((x + left) * Pitch, (y + top) * Pitch);

    private int NodeAt((int X, int Y) inPitches) => ((inPitches.Y - top) * width) + inPitches.X - left;

    private LatticeBox NodesIn(Box box) =>
        new(
            Math.Max(0, (int)Math.Ceiling((box.X / Pitch) - 1e-9) - left),
            Math.Max(0, (int)Math.Ceiling((box.Y / Pitch) - 1e-9) - top),
            Math.Min(width - 1, (int)Math.Floor((box.Right / Pitch) + 1e-9) - left),
            Math.Min(height - 1, (int)Math.Floor((box.Bottom / Pitch) + 1e-9) - top)
        );

    private LatticeBox BoxAround(int[] nodes)
    {
        var box = new LatticeBox(int.MaxValue, int.MaxValue, int.MinValue, int.MinValue);
        foreach (var node in nodes)
        {
            var (x, y) = (node % width, node / width);
            box = box.Union(new LatticeBox(x, y, x, y));
        }

        return box;
    }

    private void ClaimBodies(int part)
    {
        var pose = labelled.Placement.Poses[part];
        foreach (var own in wiring.Parts[part].Body)
        {
            var outline = pose.OnPage(own);
            ForNodesIn(
                outline.Bounds.Grown(LayoutScale.BodyClearance),
                (node, at) =>
                {
                    var depth = outline.Depth(at);
                    if (depth > -LayoutScale.BodyClearance + 1e-6)
                    {
                        // A node in two bodies at once is closed to everything, whatever is opened later.
                        isText[node] |= nodes[node].Zone != 0 && nodes[node].Zone != part + 1;
                        nodes[node].IsInside = depth > 0 || (nodes[node].Zone == part + 1 && nodes[node].IsInside);
                        nodes[node].Zone = part + 1;
                        nodes[node].Access = 0;
                    }
                }
            );
        }

        if (wiring.Parts[part].TextBox is { } text)
        {
            var kept = pose.OnPage(text).Grown(LayoutScale.WireRadius + 0.1);
            ForNodesIn(kept, (node, _) => isText[node] = true);
        }
    }

    private void ForNodesIn(Box box, Action<int, Point> visit)
    {
        var nodes = NodesIn(box);
        for (var y = nodes.Y1; y <= nodes.Y2; y++)
        {
            for (var x = nodes.X1; x <= nodes.X2; x++)
            {
                visit((y * width) + x, OnPage(x, y));
            }
        }
    }

    private void OpenRims(int part)
    {
        foreach (var surface in wiring.Parts[part].Surfaces)
        {
            var shape = labelled.Placement.Poses[part].OnPage(surface.Shape);
            ForNodesIn(
                shape.Bounds.Grown(LayoutScale.BodyClearance),
                (node, at) =>
                {
                    var depth = shape.Depth(at);
                    if (depth > -LayoutScale.BodyClearance && depth <= RimDepth)
                    {
                        Open(node, part, ZoneAccess.Rim);
                    }
                }
            );
        }
    }

    private void Open(int node, int part, byte access)
    {
        if (nodes[node].Zone == part + 1 && !isText[node])
        {
            nodes[node].Access |= access;
        }
    }

    private void OpenCorridors(int part, (int X, int Y)[] lugNodes)
    {
        var lugs = wiring.Parts[part].Lugs;
        for (var lug = 0; lug < lugs.Length; lug++)
        {
            var node = NodeAt(lugNodes[wiring.LugTerminal(part, lug)]);
            if (nodes[node].Zone == part + 1)
            {
                isInner[wiring.LugTerminal(part, lug)] = true;
                foreach (var side in WaysOut(part, lug))
                {
                    OpenCorridor(part, node, DirectionOf(labelled.Placement.Poses[part].OnPage(side)));
                }
            }
            else if (nodes[node].Zone != 0)
            {
                host[wiring.LugTerminal(part, lug)] = nodes[node].Zone - 1;
                OpenToGuest(nodes[node].Zone - 1);
            }
        }

        OpenBetweenNeighbours(part, lugNodes);
    }

    private IEnumerable<Side> WaysOut(int part, int lug) =>
        opensAllSides
            ? AllSides.Where(side => !IsAcrossBody(part, lug, side))
            : wiring.Parts[part].Lugs[lug].Exits.DefaultIfEmpty(NearestSide(part, lug));

    /// <summary>True when the way out by that side leads from a lug outside the body, or on its line, through the body.</summary>
    private bool IsAcrossBody(int part, int lug, Side side)
    {
        var (body, at) = (wiring.Parts[part].Body[0], wiring.Parts[part].Lugs[lug].At);
        var (x, y) = side switch
        {
            Side.North => (0, -Pitch),
            Side.East => (Pitch, 0),
            Side.South => (0, Pitch),
            _ => (-Pitch, 0.0),
        };
        return body.Depth(at) <= 0 && body.Depth(new Point(at.X + x, at.Y + y)) > 0;
    }

    private void OpenToGuest(int host)
    {
        for (var node = 0; node < nodes.Length; node++)
        {
            Open(node, host, ZoneAccess.Guest);
        }
    }

    private Side NearestSide(int part, int lug)
    {
        var body = wiring.Parts[part].Body.Select(outline => outline.Bounds).Aggregate(Box.Union);
        var at = wiring.Parts[part].Lugs[lug].At;
        double[] depths = [at.Y - body.Y, body.Right - at.X, body.Bottom - at.Y, at.X - body.X];
        return (Side)Array.IndexOf(depths, depths.Min());
    }

    private static readonly Side[] AllSides = [Side.North, Side.East, Side.South, Side.West];

    private static int DirectionOf(Side side) => ((int)side + 3) % 4;

    /// <summary>Opens three lanes from a lug inside the body to the outside.</summary>
    private void OpenCorridor(int part, int lugNode, int direction)
    {
        var ahead = Step(direction);
        var across = Step((direction + 1) % 4);
        for (var node = lugNode; nodes[node].Zone == part + 1; node += ahead)
        {
            Open(node - across, part, ZoneAccess.Corridor);
            Open(node, part, ZoneAccess.Corridor);
            Open(node + across, part, ZoneAccess.Corridor);
        }
    }

    private int Step(int direction) =>
        direction switch
        {
            0 => 1,
            1 => width,
            2 => -1,
            _ => -width,
        };

    /// <summary>Opens the strip between two lugs of a row or a column that have none between them, for jumpers.</summary>
    private void OpenBetweenNeighbours(int part, (int X, int Y)[] lugNodes)
    {
        const double LongestJumper = 12.5;
        var lugs = wiring.Parts[part].Lugs;
        for (var a = 0; a < lugs.Length; a++)
        {
            for (var b = 0; b < lugs.Length; b++)
            {
                var (from, to) = (lugs[a].At, lugs[b].At);
                var isRow = Math.Abs(from.Y - to.Y) < 1 && to.X > from.X && to.X - from.X <= LongestJumper;
                var isColumn = Math.Abs(from.X - to.X) < 1 && to.Y > from.Y && to.Y - from.Y <= LongestJumper;
                var (one, two) = (wiring.LugTerminal(part, a), wiring.LugTerminal(part, b));
                if ((isRow || isColumn) && isInner[one] && isInner[two])
                {
                    var strip = BoxAround([NodeAt(lugNodes[one]), NodeAt(lugNodes[two])]);
                    OpenBox(strip.Grown(1, width, height), part);
                }
            }
        }
    }

    private void OpenBox(LatticeBox box, int part)
    {
        for (var y = box.Y1; y <= box.Y2; y++)
        {
            for (var x = box.X1; x <= box.X2; x++)
            {
                Open((y * width) + x, part, ZoneAccess.Corridor);
            }
        }
    }

    private void BlockLabels()
    {
        foreach (var label in labelled.Labels)
        {
            if (label is { } box)
            {
                ForNodesIn(
                    box.Grown(LayoutScale.WireRadius + LayoutScale.LabelClearance),
                    (node, _) => nodes[node].Access = 0
                );
            }
        }
    }

    private void CloseBorder()
    {
        for (var x = 0; x < width; x++)
        {
            nodes[x].Access = nodes[nodes.Length - 1 - x].Access = 0;
        }

        for (var y = 0; y < height; y++)
        {
            nodes[y * width].Access = nodes[(y * width) + width - 1].Access = 0;
        }
    }

    private void SetStepCosts()
    {
        for (var y = 1; y < height - 1; y++)
        {
            for (var x = 1; x < width - 1; x++)
            {
                nodes[(y * width) + x].StepCost = StepCost(x, y);
            }
        }
    }

    /// <summary>The line of a body that wires should not run along, on the page; null where there are surfaces, whose joints lie there.</summary>
    private static Outline? LineOf(LayoutPart part, Pose pose) =>
        part.Surfaces.IsEmpty && !part.Body.IsEmpty ? pose.OnPage(part.Body[0]) : null;

    private bool IsOnOutline(int part, Point at) => lines[part] is { } line && Math.Abs(line.Depth(at)) <= Pitch / 2;

    private int StepCost(int x, int y)
    {
        var node = (y * width) + x;
        var cost = RouteCosts.Step;
        if (nodes[node].Zone != 0)
        {
            return cost
                + RouteCosts.InsidePart
                + (IsOnOutline(nodes[node].Zone - 1, OnPage(x, y)) ? RouteCosts.OnOutline : 0);
        }

        if ((nodes[node - 1].Zone | nodes[node + 1].Zone | nodes[node - width].Zone | nodes[node + width].Zone) != 0)
        {
            cost += RouteCosts.NearBody;
        }

        if (!extent.Contains(OnPage(x, y)))
        {
            cost += RouteCosts.OutsideParts;
        }

        return cost;
    }

    private int[] PlaceLugs((int X, int Y)[] lugNodes)
    {
        var nodes = new int[wiring.Terminals.Length];
        for (var t = 0; t < nodes.Length; t++)
        {
            nodes[t] = -1;
            if (!wiring.Terminals[t].IsSurface)
            {
                nodes[t] = NodeAt(lugNodes[t]);
                this.nodes[nodes[t]].Zone = 1 + wiring.Parts.Length + t;
                this.nodes[nodes[t]].Access = ZoneAccess.Free;
                this.nodes[nodes[t]].StepCost = RouteCosts.Step;
            }
        }

        return nodes;
    }

    private void SetNearLugs(int[] lugNodes)
    {
        for (var t = 0; t < lugNodes.Length; t++)
        {
            for (var direction = 0; lugNodes[t] >= 0 && direction < 4; direction++)
            {
                nodes[lugNodes[t] + Step(direction)].NearLug = t + 1;
            }
        }
    }

    /// <summary>Keeps edges that pass a lug's true place too closely for that lug's own wires.</summary>
    private void ClaimEdges(int[] lugNodes)
    {
        for (var t = 0; t < lugNodes.Length; t++)
        {
            if (lugNodes[t] < 0)
            {
                continue;
            }

            var at = labelled.Placement.OnPage(t);
            var (x0, y0) = ((int)Math.Round(at.X / Pitch) - left, (int)Math.Round(at.Y / Pitch) - top);
            for (var y = Math.Max(0, y0 - 2); y <= Math.Min(height - 2, y0 + 2); y++)
            {
                for (var x = Math.Max(0, x0 - 2); x <= Math.Min(width - 2, x0 + 2); x++)
                {
                    ref var node = ref nodes[(y * width) + x];
                    ClaimEdge(ref node.EastEdgeLug, t, at, OnPage(x, y), OnPage(x + 1, y));
                    ClaimEdge(ref node.SouthEdgeLug, t, at, OnPage(x, y), OnPage(x, y + 1));
                }
            }
        }
    }

    private static void ClaimEdge(ref int owner, int terminal, Point lug, Point from, Point to)
    {
        if (Box.Spanning(from, to).DistanceTo(lug) < LayoutScale.LugClearance)
        {
            owner = owner == 0 ? terminal + 1 : -1;
        }
    }

    private int[] LandingsOf(int terminal)
    {
        var (part, index, _) = wiring.Terminals[terminal];
        var pose = labelled.Placement.Poses[part];
        var shape = pose.OnPage(wiring.Parts[part].Surfaces[index].Shape);
        var bounds = shape.Bounds;
        var inset = Math.Min(Pitch, Math.Min(bounds.Width, bounds.Height) / 4);
        var found = new List<int>();
        ForNodesIn(
            bounds,
            (node, at) =>
            {
                var depth = shape.Depth(at);
                if (depth >= inset - 1e-6 && depth <= RimDepth && IsLandable(node, part) && !IsNearLug(part, at))
                {
                    found.Add(node);
                }
            }
        );
        return [.. found];
    }

    private bool IsLandable(int node, int part) =>
        !isText[node] && (nodes[node].Zone == 0 ? nodes[node].Access != 0 : nodes[node].Zone == part + 1);

    /// <summary>True where a joint would seem to lie on a lug of the part, or of what lies on the part.</summary>
    private bool IsNearLug(int part, Point at)
    {
        for (var t = 0; t < wiring.Terminals.Length; t++)
        {
            var isThere = wiring.Terminals[t].Part == part || host[t] == part;
            if (
                isThere
                && !wiring.Terminals[t].IsSurface
                && Point.Distance(labelled.Placement.OnPage(t), at) < LayoutScale.LandingDistance
            )
            {
                return true;
            }
        }

        return false;
    }

    private int[] ExitMasks()
    {
        var masks = new int[wiring.Terminals.Length];
        for (var t = 0; t < masks.Length; t++)
        {
            var terminal = wiring.Terminals[t];
            if (!terminal.IsSurface)
            {
                foreach (var side in wiring.Parts[terminal.Part].Lugs[terminal.Index].Exits)
                {
                    masks[t] |= 1 << DirectionOf(labelled.Placement.Poses[terminal.Part].OnPage(side));
                }
            }
        }

        return masks;
    }
}
