namespace WireText.Drawing.Layout.Routing;

/// <summary>Which zones of the lattice the wire that is routed just now may enter, and which lugs are not foreign to it.</summary>
internal sealed class ZonePasses
{
    private readonly Lattice lattice;
    private readonly List<int> opened = [];

    public ZonePasses(Lattice lattice)
    {
        this.lattice = lattice;
        Admitted = new byte[1 + lattice.Wiring.Parts.Length + lattice.Wiring.Terminals.Length];
        Admitted[0] = ZoneAccess.Free;
        NearLugCost = new int[1 + lattice.Wiring.Terminals.Length];
        Array.Fill(NearLugCost, RouteCosts.NearForeignLug);
        NearLugCost[0] = 0;
    }

    /// <summary>By zone: the bits of <see cref="ZoneAccess"/> that the wire has there.</summary>
    public byte[] Admitted { get; }

    /// <summary>By <see cref="LatticeNode.NearLug"/>: what a step beside that lug costs the wire.</summary>
    public int[] NearLugCost { get; }

    /// <summary>Lets a wire in where it ends.</summary>
    public void Admit(int terminal)
    {
        var part = lattice.Wiring.Terminals[terminal].Part;
        NearLugCost[terminal + 1] = 0;
        if (lattice.LugNode[terminal] < 0)
        {
            AdmitTo(1 + part, ZoneAccess.Rim);
            return;
        }

        if (lattice.IsInner[terminal])
        {
            AdmitTo(1 + part, ZoneAccess.Corridor);
        }

        AdmitTo(1 + lattice.Wiring.Parts.Length + terminal, ZoneAccess.Free);
        if (lattice.Host[terminal] >= 0)
        {
            AdmitTo(1 + lattice.Host[terminal], ZoneAccess.Guest);
        }
    }

    /// <summary>Takes back what a request's ends were admitted to.</summary>
    public void Revoke(RouteRequest request)
    {
        foreach (var zone in opened)
        {
            Admitted[zone] = 0;
        }

        opened.Clear();
        NearLugCost[request.To + 1] = RouteCosts.NearForeignLug;
        if (request.From >= 0)
        {
            NearLugCost[request.From + 1] = RouteCosts.NearForeignLug;
        }
    }

    private void AdmitTo(int zone, byte access)
    {
        Admitted[zone] |= access;
        opened.Add(zone);
    }
}
