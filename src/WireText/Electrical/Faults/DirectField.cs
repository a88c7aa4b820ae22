using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Faults;

/// <summary>What an ohmmeter shows between two points.</summary>
public enum ShownKind
{
    /// <summary>Metal joins them.</summary>
    Joined,

    /// <summary>Joined over the end of a track, which may have some ohms.</summary>
    NearZero,

    Value,

    /// <summary>No direct current can flow.</summary>
    Open,
}

/// <summary>A reading as it is computed, with every value as stated.</summary>
/// <param name="Ohms">0 where joined, infinite where open.</param>
public readonly record struct Shown(ShownKind Kind, double Ohms);

/// <summary>A stretch of resistance: an element, or one section of a track.</summary>
/// <param name="IsHigh">True for the section of a track above its wiper.</param>
internal readonly record struct Stretch(int Element, bool IsHigh, int From, int To, double Ohms);

/// <summary>All that a meter shows in one state of a circuit, batteries out, between any two of its lugs.</summary>
/// <remarks>
/// One inverse of the conductances of a connected piece answers every pair of its nodes: R = X_aa + X_bb − 2 X_ab, and the flow
/// through each stretch of 1 A from a to b with it. By Thomson's principle ∂R/∂r is the square of that flow.
/// </remarks>
internal sealed class DirectField
{
    private readonly Circuit circuit;
    private readonly int[] byContacts;
    private readonly int[] nodeOf;
    private readonly int[] placeOf;
    private readonly int[] pieceOf;
    private readonly List<Stretch> stretches = [];
    private readonly Dictionary<int, (double[,] Inverse, int Size)> inverses = [];

    public DirectField(Circuit circuit, State state)
    {
        this.circuit = circuit;
        var count = circuit.Nets.Count;
        var joins = new NetJoins(count);
        foreach (var (control, position) in state.Stated)
        {
            foreach (var pair in circuit.Controls[control].Positions[position].Closed)
            {
                for (var other = 1; other < pair.Length; other++)
                {
                    joins.Join(Net(pair[0]), Net(pair[other]));
                }
            }
        }

        byContacts = joins.ToNodes();
        foreach (var element in circuit.Elements)
        {
            if (element is Track track)
            {
                JoinAtTheEnd(joins, track, state);
            }
        }

        nodeOf = joins.ToNodes();
        foreach (var element in circuit.Elements)
        {
            AddStretches(element, state);
        }

        (placeOf, pieceOf) = Pieces(count);
    }

    /// <summary>The stretches of resistance that lead from one node to another.</summary>
    public IReadOnlyList<Stretch> Stretches => stretches;

    /// <summary>What a meter shows between two lugs.</summary>
    public Shown Between(int lug, int other)
    {
        var (a, b) = (nodeOf[Net(lug)], nodeOf[Net(other)]);
        if (a == b)
        {
            return byContacts[Net(lug)] == byContacts[Net(other)]
                ? new Shown(ShownKind.Joined, 0)
                : new Shown(ShownKind.NearZero, 0);
        }

        if (pieceOf[a] != pieceOf[b] || pieceOf[a] < 0)
        {
            return new Shown(ShownKind.Open, double.PositiveInfinity);
        }

        var inverse = InverseOf(pieceOf[a]);
        return new Shown(ShownKind.Value, At(inverse, a, a) + At(inverse, b, b) - (2 * At(inverse, a, b)));
    }

    /// <summary>For each stretch the part of 1 A from one lug to the other that flows through it; 0 outside of their piece.</summary>
    public double[] FlowsBetween(int lug, int other)
    {
        var flows = new double[stretches.Count];
        var (a, b) = (nodeOf[Net(lug)], nodeOf[Net(other)]);
        if (a == b || pieceOf[a] != pieceOf[b] || pieceOf[a] < 0)
        {
            return flows;
        }

        var inverse = InverseOf(pieceOf[a]);
        for (var i = 0; i < flows.Length; i++)
        {
            var stretch = stretches[i];
            if (pieceOf[stretch.From] == pieceOf[a])
            {
                var from = At(inverse, stretch.From, a) - At(inverse, stretch.From, b);
                var to = At(inverse, stretch.To, a) - At(inverse, stretch.To, b);
                flows[i] = (from - to) / stretch.Ohms;
            }
        }

        return flows;
    }

    private int Net(int lug) => circuit.Nets.OneNet[lug];

    private void JoinAtTheEnd(NetJoins joins, Track track, State state)
    {
        var travel = state.Travels[track.Dial];
        if (DialSetting.IsFree(track, travel))
        {
            joins.Join(Net(track.Wiper), Net(track.High));
            return;
        }

        var (low, high) = DialSetting.Sections(track, travel);
        if (low < DialSetting.JoinOhms)
        {
            joins.Join(Net(track.Low), Net(track.Wiper));
        }

        if (high < DialSetting.JoinOhms)
        {
            joins.Join(Net(track.Wiper), Net(track.High));
        }
    }

    private void AddStretches(Element element, State state)
    {
        switch (element)
        {
            case Coil coil:
                Add(coil.Index, false, coil.Start, coil.Finish, coil.Ohms);
                break;
            case Resistor resistor:
                Add(resistor.Index, false, resistor.A, resistor.B, resistor.Ohms);
                break;
            case Inductor inductor:
                Add(inductor.Index, false, inductor.A, inductor.B, inductor.Ohms);
                break;
            case Amplifier amplifier:
                Add(amplifier.Index, false, amplifier.In, amplifier.Common, amplifier.InputOhms);
                break;
            case Track track when !DialSetting.IsFree(track, state.Travels[track.Dial]):
                var (low, high) = DialSetting.Sections(track, state.Travels[track.Dial]);
                Add(track.Index, false, track.Low, track.Wiper, low);
                Add(track.Index, true, track.Wiper, track.High, high);
                break;
        }
    }

    private void Add(int element, bool isHigh, int from, int to, double ohms)
    {
        var (a, b) = (nodeOf[Net(from)], nodeOf[Net(to)]);
        if (a != b && ohms >= DialSetting.JoinOhms)
        {
            stretches.Add(new Stretch(element, isHigh, a, b, ohms));
        }
    }

    /// <summary>For each node its place in its piece and the number of the piece; -1 for one that no resistance reaches.</summary>
    private (int[] Places, int[] Pieces) Pieces(int count)
    {
        var joins = new NetJoins(count);
        foreach (var stretch in stretches)
        {
            joins.Join(stretch.From, stretch.To);
        }

        var (places, pieces, sizes) = (new int[count], new int[count], new int[count]);
        Array.Fill(pieces, -1);
        foreach (var stretch in stretches)
        {
            Place(stretch.From);
            Place(stretch.To);
        }

        return (places, pieces);

        void Place(int node)
        {
            if (pieces[node] < 0)
            {
                pieces[node] = joins.Find(node);
                places[node] = sizes[pieces[node]]++;
            }
        }
    }

    private double At((double[,] Inverse, int Size) inverse, int node, int other)
    {
        var (i, j) = (placeOf[node] - 1, placeOf[other] - 1);
        return i < 0 || j < 0 ? 0 : inverse.Inverse[i, j];
    }

    private (double[,] Inverse, int Size) InverseOf(int piece)
    {
        if (!inverses.TryGetValue(piece, out var known))
        {
            inverses.Add(piece, known = Invert(piece));
        }

        return known;
    }

    /// <summary>The inverse of the conductances of a piece against its first node. They are positive definite: no pivots.</summary>
    private (double[,] Inverse, int Size) Invert(int piece)
    {
        var size = 0;
        foreach (var stretch in stretches)
        {
            if (pieceOf[stretch.From] == piece)
            {
                size = Math.Max(size, Math.Max(placeOf[stretch.From], placeOf[stretch.To]));
            }
        }

        var matrix = new double[size, size];
        foreach (var stretch in stretches)
        {
            if (pieceOf[stretch.From] != piece)
            {
                continue;
            }

            var (i, j, siemens) = (placeOf[stretch.From] - 1, placeOf[stretch.To] - 1, 1 / stretch.Ohms);
            if (i >= 0)
            {
                matrix[i, i] += siemens;
            }

            if (j >= 0)
            {
                matrix[j, j] += siemens;
            }

            if (i >= 0 && j >= 0)
            {
                matrix[i, j] -= siemens;
                matrix[j, i] -= siemens;
            }
        }

        // Gauss and Jordan in place.
        for (var k = 0; k < size; k++)
        {
            var pivot = 1 / matrix[k, k];
            matrix[k, k] = 1;
            for (var j = 0; j < size; j++)
            {
                matrix[k, j] *= pivot;
            }

            for (var i = 0; i < size; i++)
            {
                if (i == k || matrix[i, k] == 0)
                {
                    continue;
                }

                var factor = matrix[i, k];
                matrix[i, k] = 0;
                for (var j = 0; j < size; j++)
                {
                    matrix[i, j] -= factor * matrix[k, j];
                }
            }
        }

        return (matrix, size);
    }
}
