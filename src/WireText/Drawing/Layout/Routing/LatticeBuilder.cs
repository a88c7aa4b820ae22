namespace WireText.Drawing.Layout.Routing;

/// <summary>Lays the lattice over a labelled placement: which node belongs to what, and what a step onto it costs.</summary>
internal static class LatticeBuilder
{
    private const double Pitch = LayoutScale.Pitch;

    /// <summary>A larger lattice than this is not built; see <see cref="IsTooLarge"/>.</summary>
    internal const long MostNodes = 4_000_000;

    /// <summary>Nor one with more columns or rows, whose numbers would no longer be told apart.</summary>
    private const double MostInARow = 100_000;

    /// <summary>True when parts were put so far apart that a lattice over them would fill the memory.</summary>
    public static bool IsTooLarge(LabelledPlacement labelled)
    {
        var extent = labelled.Extent();
        return !(extent.Width / Pitch < MostInARow)
            || !(extent.Height / Pitch < MostInARow)
            || ((extent.Width / Pitch) + 40) * ((extent.Height / Pitch) + 40) > MostNodes;
    }

    /// <param name="opensAllSides">See <see cref="PartOpenings"/>.</param>
    public static Lattice Build(LabelledPlacement labelled, bool opensAllSides = false)
    {
        var extent = labelled.Extent();
        var wiring = labelled.Placement.Wiring;
        var draft = new LatticeDraft(labelled, LatticeFrame.Around(extent, MarginFor(wiring)));
        var lugNodes = LugNodes.Assign(labelled.Placement);
        CloseAndOpen(draft, lugNodes, opensAllSides);
        new NodePrices(draft, extent).Set();
        var nodes = LugClaims.Claim(draft, lugNodes);
        var surfaces = new SurfaceLandings(draft);
        var landings = wiring.Terminals.Select((_, t) => surfaces.Of(t)).ToArray();
        return new Lattice(
            labelled,
            draft.Frame,
            draft.Nodes,
            nodes,
            landings,
            [.. landings.Select((some, t) => draft.Frame.BoxAround(some.Length > 0 ? some : [Math.Max(0, nodes[t])]))],
            [.. wiring.Terminals.Select(terminal => ExitMaskOf(labelled.Placement, terminal))],
            draft.Host,
            draft.IsInner,
            [.. wiring.Terminals.Select(terminal => IsInside(wiring, terminal))]
        )
        {
            OpensAllSides = opensAllSides,
        };
    }

    /// <summary>The lattice over a placement, made as another one was; that one itself, where the two placements lie alike.</summary>
    public static Lattice Over(LabelledPlacement labelled, Lattice before) =>
        LayoutTwins.LieAlike(labelled, before.Labelled)
            ? before with
            {
                Labelled = labelled,
            }
            : Build(labelled, before.OpensAllSides);

    private static void CloseAndOpen(LatticeDraft draft, (int X, int Y)[] lugNodes, bool opensAllSides)
    {
        var zones = new BodyZones(draft);
        for (var part = 0; part < draft.Wiring.Parts.Length; part++)
        {
            zones.Claim(part);
        }

        var openings = new PartOpenings(draft, lugNodes, opensAllSides);
        for (var part = 0; part < draft.Wiring.Parts.Length; part++)
        {
            openings.Open(part);
        }

        zones.CloseLabels();
        zones.CloseBorder();
    }

    /// <summary>How many lanes there are around the parts: more for many wires, which have to go round somewhere.</summary>
    private static int MarginFor(Wiring wiring) => 8 + Math.Min(32, wiring.Connections.Length / 8);

    private static bool IsInside(Wiring wiring, Terminal terminal)
    {
        var part = wiring.Parts[terminal.Part];
        return terminal.IsSurface || part.Body.Any(body => body.Depth(part.Lugs[terminal.Index].At) > 0);
    }

    private static int ExitMaskOf(PartPlacement placement, Terminal terminal)
    {
        var mask = 0;
        if (!terminal.IsSurface)
        {
            foreach (var side in placement.Wiring.Parts[terminal.Part].Lugs[terminal.Index].Exits)
            {
                mask |= 1 << Lattice.DirectionOf(placement.Poses[terminal.Part].OnPage(side));
            }
        }

        return mask;
    }
}
