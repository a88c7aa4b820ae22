namespace WireText.Electrical.Networks;

/// <summary>Two different nets, the lower number first, that a contact joins.</summary>
public readonly record struct NetPair(int Low, int High)
{
    public static NetPair Of(int a, int b) => a < b ? new(a, b) : new(b, a);

    public bool Holds(int net) => Low == net || High == net;

    /// <summary>The other net of the two.</summary>
    public int Beside(int net) => net == Low ? High : Low;
}
